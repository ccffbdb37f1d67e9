package bedledger.projections.returned;

import bedledger.language.Planting.CoverEnded;
import bedledger.language.Stage;
import bedledger.language.Words;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.Residue;
import bedledger.projections.tables.Coefficient;
import bedledger.projections.tables.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Fresh mass, carbon and nitrogen of shoots, a cover crop's nitrogen by its stage where the tables have one. */
final class Composing {
    private final CropGroup group;
    private final Basis basis;
    private final Optional<Coefficient> nitrogenByStage;

    Composing(CropGroup group) {
        this.group = group;
        this.basis = group.basis();
        this.nitrogenByStage = stage().flatMap(each -> basis.tables.coverNitrogen(group.crop(), Words.of(each)));
    }

    private Optional<Stage> stage() {
        return group.end().fact() instanceof CoverEnded ended ? Optional.ofNullable(ended.stage()) : Optional.empty();
    }

    Matter shoots(Estimate dry, Optional<Double> freshPerDry, Working working) {
        Residue residue = basis.residues.fromShoots(group.crop(), dry);
        residue.missing().stream()
                .filter(gap -> !gap.endsWith(Quantity.ROOT_TO_SHOOT.words()))
                .filter(gap -> freshPerDry.isEmpty() || !gap.endsWith(Quantity.RESIDUE_DRY_SHARE.words()))
                .forEach(working::missing);
        if (group.cover()) {
            aboutTheStage(working);
        }
        Optional<Estimate> fresh = freshPerDry.map(dry::times).or(residue::shootsFresh);
        Optional<Estimate> nitrogenShare = nitrogenByStage.map(Estimate::share);
        return new Matter(
                fresh,
                Optional.of(dry),
                residue.carbon(),
                nitrogenShare.map(dry::times).or(residue::nitrogen),
                Optional.empty(),
                dry.best() > 0 ? nitrogenShare.flatMap(this::ratio).or(residue::carbonToNitrogen) : Optional.empty());
    }

    /** Carbon and nitrogen of roots, by the group of crops they belong to. */
    Matter roots(Estimate dry, Working working) {
        Optional<Estimate> carbon = share(Quantity.ROOT_CARBON, working);
        Optional<Estimate> nitrogen = share(Quantity.ROOT_NITROGEN, working);
        return new Matter(
                Optional.empty(),
                Optional.of(dry),
                carbon.map(dry::times),
                nitrogen.map(dry::times),
                Optional.empty(),
                dry.best() > 0
                        ? carbon.flatMap(over -> nitrogen.map(under -> over.ratioTo(under, "")))
                        : Optional.empty());
    }

    private Optional<Estimate> share(Quantity quantity, Working working) {
        Optional<Coefficient> found = basis.tables.coefficient(group.crop(), quantity);
        if (found.isEmpty()) {
            working.missing(group.crop() + " " + quantity.words());
        }
        return found.map(Estimate::share);
    }

    private Optional<Estimate> ratio(Estimate nitrogenShare) {
        return basis.tables
                .coefficient(group.crop(), Quantity.RESIDUE_CARBON)
                .map(each -> Estimate.share(each).ratioTo(nitrogenShare, ""));
    }

    private void aboutTheStage(Working working) {
        String stage = stage().map(Words::of).orElse("not on record");
        working.remark(
                nitrogenByStage.isPresent()
                        ? "nitrogen by stage of growth: " + stage
                        : "nitrogen over all stages of growth (stage: " + stage + "; no figure for it alone)");
    }

    /** The coefficients that moved any of the figures. */
    List<Coefficient> used(Stream<Estimate> estimates) {
        Set<String> causes = new TreeSet<>();
        estimates.forEach(each -> causes.addAll(each.deviations().keySet()));
        return Arrays.stream(Quantity.values())
                .flatMap(quantity -> coefficient(quantity).stream())
                .filter(each -> causes.contains(each.key()))
                .toList();
    }

    private Optional<Coefficient> coefficient(Quantity quantity) {
        return quantity == Quantity.RESIDUE_NITROGEN && nitrogenByStage.isPresent()
                ? nitrogenByStage
                : basis.tables.coefficient(group.crop(), quantity);
    }
}
