package bedledger.cli.report;

import bedledger.cli.chart.Strip;
import bedledger.cli.read.Figure;
import bedledger.cli.read.Output;
import bedledger.language.BedId;
import bedledger.language.Length;
import bedledger.projections.trends.Season;
import bedledger.projections.trends.SoilPass;
import java.util.List;
import java.util.Optional;

/** How often and how deep each bed was worked. */
final class SoilWorkChapter {
    private static final int WIDE = 600;
    private static final int CENTIMETRES = 100;
    private final SeasonsAsked asked;
    private final List<SoilPass> passes;

    SoilWorkChapter(SeasonsAsked asked) {
        this.asked = asked;
        this.passes = asked.trends().passes();
    }

    Chapter chapter() {
        return Chapter.of(
                "soil-work",
                "Working of the soil",
                passes.isEmpty()
                        ? List.of(Block.text("No working of the soil is on record, so there is no chart."))
                        : blocks(),
                new Chapter.DataFile("soil-work.csv", data()));
    }

    private List<Block> blocks() {
        double deepest = deepest();
        String depth = deepest > 0
                ? " The deepest line is " + Figure.short3(deepest * CENTIMETRES) + " cm."
                : " No depth is on record.";
        return List.of(
                Block.text(
                        "Each line down from a bed’s level is one pass, as long as it went deep: thick where the soil was"
                                + " mixed (tilled, harrowed, worked in, shaped), thin where it was only loosened with the broadfork."
                                + " A ring is a pass whose depth is not on record." + depth),
                Block.pictures(pictures(deepest)),
                Block.table(table()));
    }

    private double deepest() {
        return passes.stream()
                .flatMap(pass -> pass.depth().stream())
                .mapToDouble(Length::metres)
                .max()
                .orElse(0);
    }

    private List<Picture> pictures(double deepest) {
        return CoverChapter.inParts(asked.strips(), (part, seasons) -> {
            String years = CoverChapter.years(seasons);
            Strip strip = new Strip(
                    "chart-soil-work-" + part,
                    "Working of the soil, " + years,
                    "A line for each bed; each stroke is a pass, as long as it went deep. The table below counts them.",
                    WIDE,
                    asked.beds().stream().map(BedId::name).toList(),
                    seasons,
                    List.of(),
                    strokes(seasons, deepest),
                    true);
            return new Picture(strip, "Passes and their depth, " + years);
        });
    }

    private List<Strip.Stroke> strokes(List<Strip.Season> seasons, double deepest) {
        return passes.stream()
                .filter(pass -> seasons.stream()
                        .anyMatch(season -> !pass.day().isBefore(season.from())
                                && !pass.day().isAfter(season.to())))
                .map(pass -> new Strip.Stroke(
                        asked.beds().indexOf(pass.bed()),
                        pass.day(),
                        pass.depth().map(each -> each.metres() / deepest).orElse(-1.0),
                        pass.passes().orElse(1),
                        pass.mixes()))
                .toList();
    }

    private Table table() {
        List<String> columns = List.of(
                "season", "passes that mix", "deepest", "depth not recorded", "passes with the broadfork", "entries");
        return Table.grouped(
                        "table-soil-work",
                        "Passes over each bed; where the number was not recorded, one is counted and the sum marked “at least”",
                        "No working of the soil is on record.",
                        columns,
                        asked.beds().stream()
                                .map(bed -> new Table.Group(
                                        "Bed " + bed,
                                        columns.size(),
                                        asked.seasons().stream()
                                                .map(season -> row(bed, season))
                                                .toList()))
                                .toList())
                .numbersIn(1, 5);
    }

    private Row row(BedId bed, Season season) {
        List<SoilPass> all = asked.trends().passes(bed, season);
        List<SoilPass> mixing = all.stream().filter(SoilPass::mixes).toList();
        List<SoilPass> forked = all.stream().filter(pass -> !pass.mixes()).toList();
        Optional<Length> deepest = mixing.stream()
                .flatMap(pass -> pass.depth().stream())
                .max(java.util.Comparator.comparingDouble(Length::metres));
        long unknown = mixing.stream().filter(pass -> pass.depth().isEmpty()).count();
        return Row.of(
                Cell.whole(season.name()).asHeader(),
                Cell.number(count(mixing)),
                Cell.number(deepest.map(Length::toString).orElse("")),
                Cell.number(unknown == 0 ? "" : unknown + " of " + mixing.size()),
                Cell.number(forked.isEmpty() ? "" : count(forked)),
                Cell.of(SeasonsAsked.entries(
                        all.stream().map(pass -> pass.entry().number()).toList())));
    }

    private static String count(List<SoilPass> passes) {
        int sum = passes.stream().mapToInt(pass -> pass.passes().orElse(1)).sum();
        boolean least = passes.stream().anyMatch(pass -> pass.passes().isEmpty());
        return (least ? "at least " : "") + sum;
    }

    private Output.Table data() {
        return new Output.Table(
                List.of("bed", "day", "work", "implement", "passes", "depth_m", "mixes", "entry"),
                passes.stream()
                        .map(pass -> List.of(
                                pass.bed().name(),
                                pass.day().toString(),
                                pass.work(),
                                pass.implement().orElse(""),
                                pass.passes().isPresent()
                                        ? Integer.toString(pass.passes().getAsInt())
                                        : "",
                                pass.depth()
                                        .map(each -> Double.toString(each.metres()))
                                        .orElse(""),
                                Boolean.toString(pass.mixes()),
                                Long.toString(pass.entry().number())))
                        .toList());
    }
}
