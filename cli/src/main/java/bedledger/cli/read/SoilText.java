package bedledger.cli.read;

import bedledger.cli.Surroundings;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Sum;
import bedledger.projections.soil.BedSoil;
import bedledger.projections.soil.CarbonChange;
import bedledger.projections.soil.CarbonInput;
import bedledger.projections.soil.EquivalentMass;
import bedledger.projections.soil.Sampling;
import bedledger.projections.soil.Soil;
import bedledger.projections.soil.SoilBalance;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The soil page for people: the answer in one sentence, then the table, then one bed after the other if they were named. */
final class SoilText {
    private final Surroundings around;
    private final Soil soil;

    SoilText(Surroundings around, Soil soil) {
        this.around = around;
        this.soil = soil;
    }

    /** One sentence that answers: whether any change can be told at all. */
    String answer() {
        long sampled =
                soil.beds().stream().filter(bed -> !bed.samplings().isEmpty()).count();
        if (sampled == 0) {
            return "No soil sample is on record by " + soil.asOf()
                    + ", so nothing can be said of soil carbon; only what went back is known.";
        }
        List<BedSoil> twice =
                soil.beds().stream().filter(bed -> bed.change().isPresent()).toList();
        if (twice.isEmpty()) {
            return "No change of soil carbon can be told by " + soil.asOf() + ": " + sampled + " of "
                    + soil.beds().size() + " beds were sampled, none of them twice.";
        }
        long told = twice.stream()
                .map(bed -> bed.change().orElseThrow().says())
                .filter(says -> says == CarbonChange.Says.ROSE || says == CarbonChange.Says.FELL)
                .count();
        return told == 0
                ? "No change of soil carbon can be told by " + soil.asOf() + " on any of the " + twice.size()
                        + " beds sampled twice."
                : "A change of soil carbon can be told by " + soil.asOf() + " on " + told + " of the " + twice.size()
                        + " beds sampled twice.";
    }

    void print(boolean inFull) {
        paragraph(answer());
        if (soil.beds().isEmpty()) {
            return;
        }
        compositeNotice();
        around.out().println();
        around.out()
                .println("Carbon, t/ha: best (low–high); stock to the sampled depth, the rest in " + soil.years()
                        + " years");
        TextTable table = new TextTable("bed", "stock", "back a year", "AMGv2", "ICBM", "Henin-Dupuis");
        soil.beds()
                .forEach(bed -> table.row(
                        bed.bed(),
                        figure(bed.stock()),
                        figure(bed.yearly()) + (bed.unknownPieces() > 0 ? " *" : ""),
                        figure(bed.balances().get(0).after()),
                        figure(bed.balances().get(1).after()),
                        figure(bed.balances().get(2).after())));
        table.lines().forEach(around.out()::println);
        if (soil.beds().stream().anyMatch(bed -> bed.unknownPieces() > 0)) {
            paragraph("* incomplete: carbon is not known for every piece that went back; it was at least so much.");
        }
        paragraph("† no range is known for some coefficient in it; the true doubt is wider than shown.");
        if (inFull) {
            soil.beds().forEach(this::bed);
        } else {
            missingOfAll();
        }
        ground(inFull);
    }

    private void compositeNotice() {
        Set<String> composites = new LinkedHashSet<>();
        for (BedSoil bed : soil.beds()) {
            bed.latest()
                    .filter(Sampling::isCompositeOfBeds)
                    .ifPresent(
                            each -> composites.add("The sample of " + each.day() + " (" + numbers(each) + ") is one of "
                                    + each.beds().size()
                                    + " beds together: it says nothing of any one of them, and against another such sample no change"
                                    + " could be told, however large."));
        }
        composites.forEach(this::paragraph);
    }

    private static String numbers(Sampling sampling) {
        return sampling.entries().stream().map(number -> "#" + number).collect(Collectors.joining(" "));
    }

    private void missingOfAll() {
        Set<String> missing = new LinkedHashSet<>();
        soil.beds().forEach(bed -> bed.balances().get(0).missing().forEach(missing::add));
        if (!missing.isEmpty()) {
            around.out().println();
            paragraph("Missing or assumed for AMGv2, on one bed or more:");
            missing.forEach(each -> paragraph("- " + each));
        }
    }

    private void bed(BedSoil bed) {
        around.out().println();
        around.out().println(bed.bed() + ", " + Figure.short3(bed.squareMetres()) + " m2 of bed top");
        bed.missing().forEach(each -> paragraph("- incomplete: " + each));
        bed.samplings().forEach(this::sampling);
        bed.change().ifPresent(change -> paragraph(change.words()));
        bed.equivalent().ifPresent(this::equivalent);
        inputs(bed);
        bed.balances().forEach(this::balance);
        bed.words().forEach(each -> paragraph("- " + each));
    }

    private void sampling(Sampling sampling) {
        paragraph("Sampled " + sampling.day() + " (" + numbers(sampling) + "): "
                + sampling.layers().stream()
                        .map(layer -> String.format(Locale.ROOT, "%.0f to %.0f cm ", layer.from(), layer.to())
                                + layer.carbon().map(Estimate::inWords).orElse("carbon not known")
                                + (layer.samples() > 1 ? ", n = " + layer.samples() : ""))
                        .collect(Collectors.joining("; "))
                + sampling.stock().map(each -> "; stock " + each.inWords()).orElse("; no stock"));
        sampling.words().forEach(each -> paragraph("- " + each));
    }

    private void equivalent(EquivalentMass compared) {
        paragraph(String.format(
                Locale.ROOT,
                "Over the same %.0f t/ha of fine earth (Ellert & Bettany 1995): %.2f, then %.2f t C/ha, %+.2f; to the same"
                        + " depth it would seem %+.2f.%s",
                compared.reference(),
                compared.first(),
                compared.later(),
                compared.change(),
                compared.changeToDepth(),
                compared.reachesDepth()
                        ? ""
                        : " The later samples do not reach the mass of the first ones; sample a layer deeper."));
    }

    private void inputs(BedSoil bed) {
        if (bed.inputs().isEmpty()) {
            return;
        }
        TextTable table = new TextTable("season", "carbon back, kg", "from", "humus: AMGv2", "ICBM");
        for (CarbonInput input : bed.inputs()) {
            table.row(
                    input.season(),
                    sum(input.all()),
                    input.carbon().keySet().stream().map(kind -> kind.words()).collect(Collectors.joining(", ")),
                    sum(input.amg()),
                    sum(input.icbm()));
        }
        table.lines().forEach(around.out()::println);
    }

    private static String sum(Sum sum) {
        String known = sum.known().map(each -> Figure.band(each, 1)).orElse("not known");
        return sum.isComplete() || sum.known().isEmpty() ? known : known + " *";
    }

    private void balance(SoilBalance balance) {
        paragraph(balance.equation() + ": humus formed " + words(balance.formed()) + " a year; rate "
                + words(balance.rate()) + "; after " + soil.years() + " years " + words(balance.after())
                + "; in the end " + words(balance.limit()));
        balance.missing().forEach(each -> paragraph("- missing or assumed: " + each));
    }

    private static String words(Optional<Estimate> estimate) {
        return estimate.map(Estimate::inWords).orElse("not known");
    }

    private static String figure(Optional<Estimate> estimate) {
        return estimate.map(each -> Figure.band(each, 1)).orElse("not known");
    }

    private void ground(boolean inFull) {
        around.out().println();
        paragraph(
                "If every year were like the mean of those on record. AMGv2 (Clivot et al. 2019) first, ICBM (Andren &"
                        + " Katterer 1997) as a second opinion, Henin & Dupuis 1945 from memory. The share of returned carbon that"
                        + " becomes humus differs two- to threefold between AMG, Guzman et al. 2014 and ICBM; the band holds all of"
                        + " them, and often holds a rise and a fall alike. None was fitted on beds like these; none is evidence that"
                        + " carbon rose.");
        if (!inFull) {
            paragraph("One bed in full: bedledger soil BED");
        }
        paragraph(Estimate.RULE);
    }

    private void paragraph(String text) {
        TextTable.wrapped(text, 80).forEach(around.out()::println);
    }
}
