package bedledger.projections.returned;

import bedledger.language.BedWork;
import bedledger.language.Entry;
import bedledger.language.Unit;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.QuadratSample;
import bedledger.projections.estimate.Residue;
import bedledger.projections.estimate.SampleWarning;
import bedledger.projections.tables.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Works out what a group left standing, on the evidence chosen, and what the other evidence says. */
final class GrossResidue {
    private static final double ACRES_IN_A_SQUARE_METRE = 1 / Unit.ACRE.factor().doubleValue();
    private static final double KILOGRAMS_IN_A_POUND = Unit.LB.factor().doubleValue() / 1000;

    private static final double SQUARE_METRES_IN_A_HECTARE = 10_000;

    private final CropGroup group;
    private final Basis basis;
    private final List<Weighing> weighings;
    private final Working working;

    GrossResidue(CropGroup group, List<Weighing> weighings, Working working) {
        this.group = group;
        this.basis = group.basis();
        this.weighings = weighings;
        this.working = working;
    }

    Gross gross() {
        return switch (group.evidence()) {
            case QUADRATS -> quadrats(group.cases().get(0).quadrats().orElseThrow());
            case FROM_YIELD -> fromYield();
            case TYPICAL -> group.cover() ? typicalCover() : typical();
            case NONE, RECORDED_QUANTITY -> nothing();
        };
    }

    private double harvested() {
        return weighings.stream().mapToDouble(Weighing::kilograms).sum();
    }

    private boolean weighed() {
        return harvested() > 0 && weighings.stream().noneMatch(Weighing::isIncomplete);
    }

    private Gross fromYield() {
        if (!weighed()) {
            List<String> gap = weighings.stream().anyMatch(Weighing::isIncomplete)
                    ? List.of()
                    : List.of("a harvest of 0 kg says nothing of the crop's size");
            return unknown(gap);
        }
        working.remark(basis.unit.words(harvested()) + " fresh harvested");
        if (group.end().fact() instanceof BedWork) {
            working.remark("it was standing when #" + group.end().number()
                    + " ended it: what was not picked went back too and is not in the figure");
        }
        Residue residue = basis.residues.fromYield(group.crop(), harvested());
        aboutCriticalNitrogen();
        return new Gross(
                residue.shoots(),
                residue.roots(),
                Optional.empty(),
                gap(residue, residue.shoots()),
                gap(residue, residue.roots()),
                beside(residue.shoots(), Evidence.TYPICAL, typicalShoots()),
                CrossCheck.of(group.crop(), harvested(), group.squareMetres(), basis));
    }

    /** How much nitrogen a crop of that mass holds where it was not short of it; the residue cannot hold more. */
    private void aboutCriticalNitrogen() {
        double hectares = group.squareMetres() / SQUARE_METRES_IN_A_HECTARE;
        basis.tables
                .criticalNitrogen(group.crop())
                .filter(row -> hectares > 0)
                .ifPresent(row -> basis.residues
                        .wholeCrop(group.crop(), harvested())
                        .ifPresent(whole -> {
                            double percent = row.percent(whole.best() / 1000 / hectares);
                            working.remark(String.format(
                                    Locale.ROOT,
                                    "RB209, p. 41: a whole crop of %s dry on this area, not short of nitrogen, holds %.1f %% of it, %s"
                                            + " (a cross-check only; residue and product together)",
                                    basis.unit.words(whole.best()),
                                    percent,
                                    basis.unit.words(whole.best() * percent / 100)));
                        }));
    }

    private static List<String> gap(Residue residue, Optional<Estimate> part) {
        return part.isPresent() ? List.of() : residue.missing();
    }

    private Gross typical() {
        working.remark("a guess from a typical yield: nothing harvested is on record, and what was not harvested went "
                + "back too");
        Residue residue = basis.residues.fromYield(group.crop(), typicalYield().orElseThrow());
        return new Gross(
                residue.shoots().map(each -> each.by("typical yield of the area, then as from yield")),
                residue.roots().map(each -> each.by("typical yield of the area, then as from yield")),
                Optional.empty(),
                gap(residue, residue.shoots()),
                gap(residue, residue.roots()),
                List.of(),
                List.of());
    }

    private Gross typicalCover() {
        working.remark(
                "a guess from the typical mass of a full stand: no quadrats were cut before it was ended; one ended"
                        + " young or sown thin is lighter");
        Estimate shoots = typicalCover(group, working).orElseThrow().by("typical dry mass of the area");
        Optional<Estimate> roots = rootsUnder(shoots).map(each -> each.by("typical dry mass x root to shoot"));
        return new Gross(
                Optional.of(shoots),
                roots,
                Optional.empty(),
                List.of(),
                roots.isPresent() ? List.of() : List.of(group.crop() + " root to shoot"),
                List.of(),
                List.of());
    }

    /** Dry shoots of the planted area at the typical mass, kg. */
    private static Optional<Estimate> typicalCover(CropGroup group, Working working) {
        return perArea(group, Quantity.TYPICAL_COVER_MASS, working);
    }

    private Gross nothing() {
        return unknown(List.of(
                group.cover()
                        ? "its mass: no quadrats were cut before it was ended"
                        : "its size: no quadrats, no harvest, and no typical yield in the tables"));
    }

    private static Gross unknown(List<String> gap) {
        return new Gross(Optional.empty(), Optional.empty(), Optional.empty(), gap, gap, List.of(), List.of());
    }

    /** Fresh product of the planted area at the typical yield, kg. */
    private Optional<Estimate> typicalYield() {
        return typicalYield(group, working);
    }

    static Optional<Estimate> typicalYield(CropGroup group, Working working) {
        return perArea(group, Quantity.TYPICAL_YIELD, working);
    }

    private static Optional<Estimate> perArea(CropGroup group, Quantity poundsAnAcre, Working working) {
        return group.basis()
                .tables
                .coefficient(group.crop(), poundsAnAcre)
                .map(each -> Estimate.exact(
                                group.plantedSquareMetres(working) * ACRES_IN_A_SQUARE_METRE * KILOGRAMS_IN_A_POUND,
                                "kg")
                        .times(Estimate.share(each)));
    }

    private Optional<Estimate> typicalShoots() {
        return group.cover()
                ? typicalCover(group, new Working())
                : typicalYield(group, new Working())
                        .flatMap(fresh ->
                                basis.residues.fromYield(group.crop(), fresh).shoots());
    }

    private Gross quadrats(Entry cut) {
        QuadratSample sample = Cuts.sample(cut);
        double area = group.plantedSquareMetres(working);
        working.behind(cut);
        working.remarks(sample.warnings(group.crop(), area, basis.tables, basis.unit).stream()
                .map(SampleWarning::text)
                .toList());
        aboutTheDay(cut);
        Optional<Estimate> shoots = sample.dryOnBed(group.crop(), area, basis.tables);
        List<OtherEvidence> others = new ArrayList<>(beside(shoots, Evidence.FROM_YIELD, fromYieldShoots()));
        others.addAll(beside(shoots, Evidence.TYPICAL, typicalShoots()));
        others.addAll(earlierCuts(shoots, cut, area));
        Optional<Estimate> roots = shoots.flatMap(this::rootsUnder);
        return new Gross(
                shoots,
                roots,
                sample.dryShare().map(each -> 1 / each.value()),
                shoots.isPresent() ? List.of() : List.of(group.crop() + " residue dry share"),
                roots.isPresent() ? List.of() : List.of(group.crop() + " root to shoot"),
                others,
                weighed() ? CrossCheck.of(group.crop(), harvested(), group.squareMetres(), basis) : List.of());
    }

    private void aboutTheDay(Entry cut) {
        if (cut.head().doneOn().isBefore(group.end().head().doneOn())) {
            working.remark(
                    "quadrats #" + cut.number() + " were cut on " + cut.head().doneOn() + ", before the crop ended on "
                            + group.end().head().doneOn() + ": what grew or was picked after that is not in them");
        }
    }

    /** Root to shoot is per whole crop, so the harvested part is put back where it was weighed. */
    private Optional<Estimate> rootsUnder(Estimate shoots) {
        if (!group.cover() && !weighed()) {
            working.remark("roots: the harvested part is not known and not in the whole crop they are reckoned from");
        }
        Optional<Estimate> product = weighed()
                ? basis.tables
                        .coefficient(group.crop(), Quantity.PRODUCT_DRY_SHARE)
                        .map(each -> Estimate.exact(harvested(), "kg").times(Estimate.share(each)))
                : Optional.empty();
        Estimate whole = product.map(shoots::plus).orElse(shoots);
        return basis.tables
                .coefficient(group.crop(), Quantity.ROOT_TO_SHOOT)
                .map(ratio -> whole.times(Estimate.share(ratio)).by("quadrats: crop above ground x root to shoot"));
    }

    private Optional<Estimate> fromYieldShoots() {
        return weighed() ? basis.residues.fromYield(group.crop(), harvested()).shoots() : Optional.empty();
    }

    private List<OtherEvidence> earlierCuts(Optional<Estimate> used, Entry cut, double area) {
        return group.cases().get(0).cutBefore.stream()
                .filter(earlier -> earlier.number() != cut.number())
                .flatMap(earlier -> Cuts.sample(earlier).dryOnBed(group.crop(), area, basis.tables).stream()
                        .flatMap(other -> used.stream()
                                .map(each -> OtherEvidence.beside(
                                        each,
                                        Evidence.QUADRATS,
                                        other,
                                        "cut earlier, #" + earlier.number() + " on "
                                                + earlier.head().doneOn(),
                                        basis.unit))))
                .toList();
    }

    private List<OtherEvidence> beside(Optional<Estimate> used, Evidence evidence, Optional<Estimate> other) {
        return used.flatMap(one -> other.map(two -> OtherEvidence.beside(one, evidence, two, "", basis.unit))).stream()
                .toList();
    }
}
