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
import java.util.Optional;

/** Works out what a group left standing, on the evidence chosen, and what the other evidence says. */
final class GrossResidue {
    private static final double ACRES_IN_A_SQUARE_METRE = 1 / Unit.ACRE.factor().doubleValue();
    private static final double KILOGRAMS_IN_A_POUND = Unit.LB.factor().doubleValue() / 1000;

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
            case TYPICAL -> typical();
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
        return new Gross(
                residue.shoots(),
                residue.roots(),
                Optional.empty(),
                gap(residue, residue.shoots()),
                gap(residue, residue.roots()),
                beside(residue.shoots(), Evidence.TYPICAL, typicalShoots()),
                CrossCheck.of(group.crop(), harvested(), group.squareMetres(), basis));
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
        return group.basis()
                .tables
                .coefficient(group.crop(), Quantity.TYPICAL_YIELD)
                .map(each -> Estimate.exact(
                                group.plantedSquareMetres(working) * ACRES_IN_A_SQUARE_METRE * KILOGRAMS_IN_A_POUND,
                                "kg")
                        .times(Estimate.share(each)));
    }

    private Optional<Estimate> typicalShoots() {
        return group.cover()
                ? Optional.empty()
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
