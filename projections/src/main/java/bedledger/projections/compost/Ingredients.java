package bedledger.projections.compost;

import bedledger.language.Amount;
import bedledger.language.Dimension;
import bedledger.language.Feedstock;
import bedledger.language.Share;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.tables.Coefficient;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Tables;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads an ingredient: the figures said of it first, then those of its material, or of the residue of its crop, in the tables. */
public final class Ingredients {
    private static final double LITRES_IN_CUBIC_METRE = 1000;

    private final Tables tables;
    private final Feedstock feedstock;
    private final List<Coefficient> from = new ArrayList<>();

    private Ingredients(Tables tables, Feedstock feedstock) {
        this.tables = tables;
        this.feedstock = feedstock;
    }

    /** The ingredient; what nobody says and no table holds is empty. */
    public static Ingredient of(Feedstock feedstock, Tables tables) {
        return new Ingredients(tables, feedstock).read();
    }

    private Ingredient read() {
        Optional<Estimate> kilograms = kilograms(feedstock.quantity());
        Optional<Estimate> water = said(feedstock.water()).or(this::tabledWater);
        Optional<Estimate> carbon = carbon();
        Optional<Estimate> nitrogen = nitrogen(carbon);
        return new Ingredient(feedstock.name(), feedstock.toString(), kilograms, water, carbon, nitrogen, from);
    }

    private Optional<Estimate> kilograms(@Nullable Amount amount) {
        if (amount == null) {
            return Optional.empty();
        }
        if (amount.isWeight()) {
            return Optional.of(Estimate.exact(amount.kilograms(), "kg").by("weight as said"));
        }
        if (amount.quantity().unit().dimension() != Dimension.VOLUME) {
            return Optional.empty();
        }
        double cubicMetres = amount.quantity().inBase().doubleValue() / LITRES_IN_CUBIC_METRE;
        return tabled(Quantity.BULK_DENSITY)
                .map(density -> Estimate.exact(cubicMetres, "kg").times(density).by("volume x bulk density"));
    }

    private static Optional<Estimate> said(@Nullable Share share) {
        return Optional.ofNullable(share).map(each -> Estimate.exact(each.percent() / 100, "kg/kg"));
    }

    private Optional<Estimate> tabledWater() {
        return tabled(isCrop() ? Quantity.RESIDUE_DRY_SHARE : Quantity.DRY_SHARE)
                .map(dry -> Estimate.exact(1, "kg/kg").minus(dry));
    }

    /** %C = %N x C/N, where N and C:N are said (Cornell Waste Management Institute). */
    private Optional<Estimate> carbon() {
        Optional<Estimate> byRatio = said(feedstock.nitrogen())
                .flatMap(nitrogen -> ratio().map(ratio -> nitrogen.times(ratio).by("%C = %N x C/N")));
        return said(feedstock.carbon())
                .or(() -> byRatio)
                .or(() -> tabled(isCrop() ? Quantity.RESIDUE_CARBON : Quantity.CARBON_OF_DRY));
    }

    private Optional<Estimate> nitrogen(Optional<Estimate> carbon) {
        Optional<Estimate> byRatio = carbon.flatMap(
                each -> ratio().map(ratio -> each.times(1 / ratio).by("%N = %C / (C/N)")));
        return said(feedstock.nitrogen()).or(() -> byRatio).or(this::tabledNitrogen);
    }

    private Optional<Double> ratio() {
        return Optional.ofNullable(feedstock.carbonToNitrogen()).map(ratio -> ratio.value());
    }

    /** Manures stand in the tables with their nitrogen per tonne fresh, at the dry share given there. */
    private Optional<Estimate> tabledNitrogen() {
        if (isCrop()) {
            return tabled(Quantity.RESIDUE_NITROGEN);
        }
        return tabled(Quantity.NITROGEN_OF_DRY)
                .or(() -> tabled(Quantity.NITROGEN_PER_TONNE_FRESH)
                        .flatMap(fresh -> tabled(Quantity.DRY_SHARE)
                                .filter(dry -> dry.best() > 0)
                                .map(fresh::dividedBy)));
    }

    private boolean isCrop() {
        return tables.crop(feedstock.name()).isPresent();
    }

    private Optional<Estimate> tabled(Quantity quantity) {
        return tables.coefficient(feedstock.name(), quantity).map(coefficient -> {
            if (!from.contains(coefficient)) {
                from.add(coefficient);
            }
            return Estimate.share(coefficient);
        });
    }
}
