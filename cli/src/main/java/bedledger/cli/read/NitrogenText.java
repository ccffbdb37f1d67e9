package bedledger.cli.read;

import bedledger.cli.Surroundings;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.nitrogen.Following;
import bedledger.projections.nitrogen.Nitrogen;
import bedledger.projections.nitrogen.NitrogenTotal;
import bedledger.projections.nitrogen.Release;
import bedledger.projections.nitrogen.Verdict;
import bedledger.projections.returned.Sum;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The nitrogen page for people: the answer in one sentence, then the table, then what it rests on. */
final class NitrogenText {
    private static final double SQUARE_METRES_IN_A_HECTARE = 10_000;

    private record Column(String name, Function<NitrogenTotal, Sum> sum, boolean band) {}

    private static final List<Column> COLUMNS = List.of(
            new Column("in it", NitrogenTotal::nitrogen, false),
            new Column("set free", NitrogenTotal::freed, true),
            new Column("not caught", NitrogenTotal::onLeakyDays, false),
            new Column("in the end", NitrogenTotal::inTheEnd, true),
            new Column("PNW 636", NitrogenTotal::coverCropLine, true),
            new Column("RB209", NitrogenTotal::amendments, false));

    private final Surroundings around;
    private final String unit;
    private final double kilograms;
    private final Nitrogen nitrogen;
    private final NitrogenTotal all;

    NitrogenText(Surroundings around, boolean pounds, Nitrogen nitrogen, NitrogenTotal all) {
        this.around = around;
        NitrogenUnit chosen = NitrogenUnit.of(pounds, all.nitrogen().known());
        this.unit = chosen.name();
        this.kilograms = chosen.kilograms();
        this.nitrogen = nitrogen;
        this.all = all;
    }

    /** One sentence that answers, or two. */
    String answer() {
        if (all.nitrogen().pieces() == 0) {
            return "Nothing went back by " + nitrogen.asOf() + ", so there is no nitrogen to tell of.";
        }
        String inTheEnd = all.inTheEnd()
                .known()
                .map(each -> " In the end, decades on, residues would set free " + amount(each) + " of nitrogen.")
                .orElse("");
        if (all.freed().known().isEmpty()) {
            return "How much nitrogen is free by " + nitrogen.asOf() + " cannot be told: "
                    + (all.inTheEnd().known().isEmpty()
                            ? "of no residue are both nitrogen and C:N known."
                            : "no temperatures are on record for the time." + inTheEnd);
        }
        return "By " + nitrogen.asOf() + " residues set free " + figure(all.freed()) + " of nitrogen"
                + all.onLeakyDays()
                        .known()
                        .filter(each -> each.best() > 0)
                        .map(each -> ", " + amount(each) + " of it on days when nothing grew to catch it")
                        .orElse("")
                + ".";
    }

    private String figure(Sum sum) {
        String known = sum.known().map(this::amount).orElse("not known");
        return sum.isComplete()
                ? known
                : known + " (incomplete: not known for " + sum.unknown() + " of " + sum.pieces() + " pieces)";
    }

    private String amount(Estimate estimate) {
        String band = Figure.band(estimate, kilograms);
        int space = band.indexOf(' ');
        return space < 0 ? band + " " + unit : band.substring(0, space) + " " + unit + band.substring(space);
    }

    void print(
            List<NitrogenTotal> totals,
            List<Release> releases,
            List<NitrogenView.PhosphorusView> phosphorus,
            String by,
            boolean everyPiece) {
        paragraph(answer());
        if (totals.isEmpty() && phosphorus.isEmpty()) {
            return;
        }
        next(releases).forEach(this::paragraph);
        if (!totals.isEmpty()) {
            around.out().println();
            around.out().println("Nitrogen, " + unit + ": best (low–high); below 0 is locked up");
            table(totals).lines().forEach(around.out()::println);
            legend(totals);
        }
        if (everyPiece) {
            releases.forEach(this::piece);
        }
        autumn(releases);
        phosphorus(phosphorus);
        ground(by, everyPiece);
    }

    /** Each next crop once: fed, robbed or neither by what went back before it. */
    private List<String> next(List<Release> releases) {
        List<String> said = new ArrayList<>();
        releases.stream()
                .filter(each -> each.following().isPresent() && !each.isAmendment())
                .collect(Collectors.groupingBy(
                        each -> each.bed() + "|"
                                + each.following().orElseThrow().planted(),
                        java.util.LinkedHashMap::new,
                        Collectors.toList()))
                .values()
                .forEach(some -> fed(some).ifPresent(said::add));
        return said;
    }

    private Optional<String> fed(List<Release> some) {
        Following next = some.get(0).following().orElseThrow();
        Sum during = Sum.of(some.stream()
                .map(each -> each.following().orElseThrow().during())
                .toList());
        Sum before = Sum.of(some.stream()
                .map(each -> each.following().orElseThrow().before())
                .toList());
        if (during.known().isEmpty()) {
            return Optional.empty();
        }
        Verdict verdict = Verdict.of(during.known().get());
        String from = some.stream()
                .filter(each -> each.freed().isPresent())
                .map(each -> each.piece().what())
                .distinct()
                .collect(Collectors.joining(", "));
        return Optional.of(some.get(0).bed() + ": " + from + " " + verdict.words() + " the " + next.crop() + " of "
                + next.planted() + ": " + figure(during)
                + perHectare(some.get(0), during.known().get()) + (next.ended() ? " while it stood" : " so far") + ", "
                + before.known().map(this::amount).orElse("not known") + " before it was planted.");
    }

    /** Columns of which no row knows anything are left out, so that the others have room. */
    private TextTable table(List<NitrogenTotal> totals) {
        List<Column> columns = COLUMNS.stream()
                .filter(column -> totals.stream()
                        .anyMatch(total -> column.sum().apply(total).known().isPresent()))
                .toList();
        TextTable table =
                new TextTable(Stream.concat(Stream.of("of"), columns.stream().map(Column::name))
                        .toArray(String[]::new));
        totals.forEach(total -> table.row(Stream.concat(
                        Stream.of(total.of()),
                        columns.stream().map(column -> cell(column.sum().apply(total), column.band())))
                .toArray()));
        return table;
    }

    private String cell(Sum sum, boolean band) {
        if (sum.pieces() == 0) {
            return "–";
        }
        String known = sum.known()
                .map(each -> band ? Figure.band(each, kilograms) : Figure.short3(each.best() / kilograms))
                .orElse("not known");
        return sum.isComplete() || sum.known().isEmpty() ? known : known + " *";
    }

    private void legend(List<NitrogenTotal> totals) {
        boolean incomplete = totals.stream()
                .anyMatch(total -> COLUMNS.stream()
                        .anyMatch(column -> !column.sum().apply(total).isComplete()));
        if (incomplete) {
            paragraph("* incomplete: not known for every piece; the sum is of what is known.");
        }
        paragraph("† no range is known for some coefficient in it; the true doubt is wider than shown.");
        if (totals.stream().anyMatch(total -> total.onLeakyDays().known().isPresent())) {
            paragraph(
                    "Not caught: set free within a year of its return on days when nothing grew on the bed and no tarp"
                            + " kept the rain off.");
        }
    }

    private void piece(Release release) {
        around.out().println();
        paragraph(release.bed() + ", " + release.piece().what() + ", "
                + release.piece().kind().words() + ", " + release.piece().day() + " (entries "
                + release.piece().entries().stream().map(number -> "#" + number).collect(Collectors.joining(" "))
                + "): "
                + release.nitrogen()
                        .map(each -> amount(each) + " N in it" + perHectare(release, each))
                        .orElse("its nitrogen is not known")
                + release.freed().map(each -> ", " + amount(each) + " set free").orElse("")
                + release.inTheEnd()
                        .map(each -> ", " + amount(each) + " in the end")
                        .orElse("")
                + release.otherWay()
                        .map(each -> "; by " + each.rule() + " " + amount(each.kilograms()) + " to the next crop")
                        .orElse("")
                + ".");
        release.both()
                .ifPresent(band -> paragraph("- both ways together: " + Figure.short3(band.low() / kilograms) + " to "
                        + Figure.short3(band.high() / kilograms) + " " + unit));
        release.normalisedDays()
                .ifPresent(days -> paragraph("- " + Figure.band(days, 1) + " normalised days (15 C, moist) so far"));
        release.uncaught()
                .ifPresent(each -> paragraph("- within a year: " + each.leakyDays()
                        + " days with nothing growing and the rain on it, " + each.tarpedDays() + " under a tarp"
                        + each.underTarp()
                                .filter(under -> under.best() > 0)
                                .map(under -> " (" + amount(under)
                                        + " set free there: it stands as nitrate when the tarp comes off)")
                                .orElse("")));
        release.words().forEach(word -> paragraph("- " + word));
        release.missing().forEach(gap -> paragraph("- incomplete: " + gap));
    }

    private static String perHectare(Release release, Estimate nitrogen) {
        double each = nitrogen.best() * SQUARE_METRES_IN_A_HECTARE / release.squareMetres();
        return release.squareMetres() > 0 ? ", " + Math.round(each) + " kg/ha" : "";
    }

    private void autumn(List<Release> releases) {
        List<Release> rich =
                releases.stream().filter(Release::highNitrogenInAutumn).toList();
        if (!rich.isEmpty()) {
            around.out().println();
            paragraph("Worked in rich in autumn with nothing sown soon after, at risk of leaching over winter: "
                    + rich.stream()
                            .map(each -> each.bed() + " " + each.piece().what() + " "
                                    + each.workedIn().orElseThrow())
                            .distinct()
                            .collect(Collectors.joining(", "))
                    + " (Agneessens & De Neve 2014).");
        }
    }

    private void phosphorus(List<NitrogenView.PhosphorusView> balances) {
        if (balances.isEmpty()) {
            return;
        }
        around.out().println();
        around.out().println("Phosphorus (P, not P2O5), " + unit + ": brought in less sold, by season of harvest");
        TextTable table = new TextTable("bed", "season", "in", "sold", "surplus", "missing");
        balances.forEach(each -> table.row(
                each.bed(),
                each.season(),
                cell(each.broughtIn()),
                cell(each.sold()),
                each.surplus() == null
                        ? "not known"
                        : Figure.short3(each.surplus().best() / kilograms),
                each.missing().isEmpty() ? "–" : String.join("; ", each.missing())));
        table.lines().forEach(around.out()::println);
        paragraph(
                "What was harvested and has no outlet on record is not counted as sold; what a crop's own residue brought"
                        + " back was there before.");
        balances.stream()
                .filter(each -> each.soilTest() != null)
                .map(each -> "Soil test of " + each.bed() + ", " + each.soilTest())
                .distinct()
                .forEach(this::paragraph);
    }

    private String cell(NitrogenView.SumView sum) {
        if (sum.pieces() == 0) {
            return "0";
        }
        Sourced figure = sum.figure();
        String known = figure == null ? "not known" : Figure.short3(figure.best() / kilograms);
        return sum.unknown() == 0 || figure == null ? known : known + " *";
    }

    private void ground(String by, boolean everyPiece) {
        around.out().println();
        paragraph("Temperatures: " + nitrogen.weather() + ".");
        paragraph(
                "Set free, in the end: residue module of STICS v8 (Nicolardot et al. 2001; Brisson et al. 2009), C:N below 12"
                        + " taken as 12. PNW 636: Sullivan & Andrews 2012, to the next crop; made for cover crops, stretched to"
                        + " vegetable leaves. RB209: share of manure and compost to the next crop. Neither way knows this bed: where"
                        + " they differ, the truth may lie anywhere between.");
        if (!everyPiece) {
            paragraph("Every piece with its evidence and gaps: bedledger nitrogen BED"
                    + (by.equals("flip") ? "" : " --by " + by));
        }
        paragraph(Estimate.RULE);
    }

    private void paragraph(String text) {
        TextTable.wrapped(text, 80).forEach(around.out()::println);
    }
}
