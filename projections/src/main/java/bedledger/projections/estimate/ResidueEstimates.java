package bedledger.projections.estimate;

import bedledger.projections.tables.Coefficient;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Tables;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;

/** Residue of a crop from what was harvested, or from a dry mass of shoots already known. */
public final class ResidueEstimates {
    private static final String FROM_YIELD =
            "from yield: fresh product x dry share / harvest index = whole crop; the part not harvested is residue"
                    + " (form of RB209 Section 6, p. 41)";

    private final Tables tables;

    public ResidueEstimates(Tables tables) {
        this.tables = tables;
    }

    /**
     * Shoots and roots left by a harvest, by the harvest-index form of RB209.
     *
     * @param crop a crop in any spelling
     * @param freshKilograms the product as weighed, over the whole crop; nothing harvested leaves the question open
     */
    public Residue fromYield(String crop, double freshKilograms) {
        if (!(freshKilograms >= 0) || Double.isInfinite(freshKilograms)) {
            throw new IllegalArgumentException("A residue from yield was refused: entered " + freshKilograms + " kg of "
                    + crop + ". A harvest is a mass of 0 or more.");
        }
        return fromYield(crop, Estimate.exact(freshKilograms, "kg"));
    }

    /** The same from a product that is itself doubted, such as a typical yield; kg fresh. */
    public Residue fromYield(String crop, Estimate fresh) {
        List<String> missing = new ArrayList<>();
        Optional<Estimate> dryShare = share(crop, Quantity.PRODUCT_DRY_SHARE, missing);
        Optional<Estimate> index = share(crop, Quantity.HARVEST_INDEX, missing);
        Optional<Estimate> whole = both(dryShare, index, (dry, hi) -> HarvestIndexForm.wholeCrop(fresh, dry, hi));
        Optional<Estimate> shoots =
                both(whole, index, HarvestIndexForm::residue).map(each -> each.by(FROM_YIELD));
        Optional<Estimate> ratio = share(crop, Quantity.ROOT_TO_SHOOT, missing);
        Optional<Estimate> roots = both(whole, ratio, Estimate::times)
                .map(each -> each.by("from yield: whole crop above ground x root to shoot"));
        return composed(crop, shoots, roots, missing);
    }

    /** The whole crop above ground, kg dry; empty where the tables lack a coefficient. */
    public Optional<Estimate> wholeCrop(String crop, double freshKilograms) {
        List<String> missing = new ArrayList<>();
        Optional<Estimate> dryShare = share(crop, Quantity.PRODUCT_DRY_SHARE, missing);
        return both(
                dryShare,
                share(crop, Quantity.HARVEST_INDEX, missing),
                (dry, hi) -> HarvestIndexForm.wholeCrop(Estimate.exact(freshKilograms, "kg"), dry, hi));
    }

    /** Carbon, nitrogen and roots of shoots whose dry mass is known otherwise, such as a cover crop cut in quadrats. */
    public Residue fromShoots(String crop, Estimate shoots) {
        List<String> missing = new ArrayList<>();
        Optional<Estimate> roots = share(crop, Quantity.ROOT_TO_SHOOT, missing)
                .map(each -> shoots.times(each).by("shoots x root to shoot"));
        return composed(crop, Optional.of(shoots), roots, missing);
    }

    /** Dry mass of fresh residue at the crop's residue dry share; empty when the table has none. */
    public Optional<Estimate> dryOfFreshResidue(String crop, double freshKilograms) {
        return share(crop, Quantity.RESIDUE_DRY_SHARE, new ArrayList<>())
                .map(each -> Estimate.exact(freshKilograms, "kg").times(each).by("fresh mass x residue dry share"));
    }

    private Residue composed(String crop, Optional<Estimate> shoots, Optional<Estimate> roots, List<String> missing) {
        Optional<Estimate> dryShare = share(crop, Quantity.RESIDUE_DRY_SHARE, missing);
        Optional<Estimate> carbonShare = share(crop, Quantity.RESIDUE_CARBON, missing);
        Optional<Estimate> nitrogenShare = share(crop, Quantity.RESIDUE_NITROGEN, missing);
        return new Residue(
                shoots,
                both(shoots, dryShare, Estimate::dividedBy),
                roots,
                both(shoots, carbonShare, Estimate::times),
                both(shoots, nitrogenShare, Estimate::times),
                both(carbonShare, nitrogenShare, (carbon, nitrogen) -> carbon.ratioTo(nitrogen, "")),
                missing);
    }

    private Optional<Estimate> share(String crop, Quantity quantity, List<String> missing) {
        Optional<Coefficient> found = tables.coefficient(crop, quantity);
        if (found.isEmpty()) {
            missing.add(crop + " " + quantity.words());
        }
        return found.map(Estimate::share);
    }

    private static Optional<Estimate> both(
            Optional<Estimate> one, Optional<Estimate> two, BinaryOperator<Estimate> together) {
        return one.flatMap(first -> two.map(second -> together.apply(first, second)));
    }
}
