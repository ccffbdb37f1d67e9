package bedledger.cli.report;

import bedledger.cli.chart.Bar;
import bedledger.cli.chart.Key;
import bedledger.cli.chart.StackedBars;
import bedledger.cli.chart.Swatch;
import bedledger.cli.read.Output;
import bedledger.cli.read.PerArea;
import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Hauled;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Sum;
import bedledger.projections.trends.Carted;
import bedledger.projections.trends.Input;
import bedledger.projections.trends.Season;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How much of what went back was measured, and what was hauled off instead. */
final class EvidenceChapter {
    private static final int PERCENT = 100;
    private static final int WIDE = 600;
    private static final int HIGH = 230;
    private static final Swatch MEASURED =
            new Swatch("m", "measured or written down", new Color(0x55504a), Swatch.Pattern.SOLID);
    private static final Swatch ESTIMATED = new Swatch("n", "estimated", new Color(0x55504a), Swatch.Pattern.HATCHED);

    private final SeasonsAsked asked;
    private final PerArea unit;

    EvidenceChapter(SeasonsAsked asked) {
        this.asked = asked;
        this.unit = asked.perArea(Measure.DRY);
    }

    Chapter chapter() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                Block.text("Measured is what was weighed in quadrats or written down as a quantity and turned into dry"
                        + " matter; estimated is what was inferred from the weight of the harvest, and roots always. Both rest on"
                        + " coefficients. The charts above show the first solid, the second hatched."));
        if (asked.seasons().stream()
                .anyMatch(season -> !asked.trends().inputs().of(season).isNothing())) {
            blocks.add(Block.picture(
                    new Picture(new Key("key-evidence", "Key: evidence", List.of(MEASURED, ESTIMATED), 2), "")));
            blocks.add(Block.picture(picture()));
        }
        blocks.add(Block.table(shares()));
        blocks.add(Block.text(
                "What was hauled off is the shoots alone; roots pulled with them are not counted, and neither"
                        + " is the harvest itself. “Went back” is the crop and cover-crop shoots of the same season."));
        blocks.add(Block.table(hauled()));
        blocks.add(Block.table(hauls()));
        return Chapter.of(
                "evidence", "Measured, estimated, hauled off", blocks, new Chapter.DataFile("evidence.csv", data()));
    }

    /** The measured and the estimated part of what is known of each season. */
    private Picture picture() {
        List<Bar> bars = asked.seasons().stream()
                .map(season -> bar(season.name(), asked.trends().inputs().of(season)))
                .toList();
        String title = "Measured and estimated share of the dry matter returned to all beds, by season";
        StackedBars chart = new StackedBars(
                "chart-evidence",
                title,
                "In per cent of what is known. The table below has every figure.",
                WIDE,
                HIGH,
                bars,
                PERCENT,
                "%",
                total -> "");
        return new Picture(chart, title + ", in per cent of what is known");
    }

    private static Bar bar(String label, Input input) {
        Sum all = input.total(Measure.DRY);
        double whole = all.known().map(Estimate::best).orElse(0.0);
        List<Bar.Segment> segments = whole <= 0
                ? List.of()
                : List.of(
                        segment(MEASURED, input.measured(true, Measure.DRY), whole),
                        segment(ESTIMATED, input.measured(false, Measure.DRY), whole));
        return new Bar(label, segments, OptionalDouble.empty(), OptionalDouble.empty(), !all.isComplete());
    }

    private static Bar.Segment segment(Swatch swatch, Sum part, double whole) {
        return new Bar.Segment(
                swatch, PERCENT * part.known().map(Estimate::best).orElse(0.0) / whole);
    }

    private Table shares() {
        List<String> columns = List.of("season", "measured", "estimated", "measured share", "not known");
        List<Table.Group> groups = new ArrayList<>();
        groups.add(new Table.Group(
                "All beds",
                columns.size(),
                asked.seasons().stream()
                        .map(season ->
                                share(season.name(), asked.trends().inputs().of(season)))
                        .toList()));
        asked.beds()
                .forEach(bed -> groups.add(new Table.Group(
                        "Bed " + bed,
                        columns.size(),
                        asked.seasons().stream()
                                .map(season -> share(
                                        season.name(), asked.trends().inputs().of(bed, season)))
                                .toList())));
        return Table.grouped(
                        "table-evidence",
                        "Dry matter returned by evidence, in " + unit.unit() + " of bed top",
                        "Nothing went back.",
                        columns,
                        groups)
                .numbersIn(1, 4);
    }

    private Row share(String name, Input input) {
        Sum measured = input.measured(true, Measure.DRY);
        Sum estimated = input.measured(false, Measure.DRY);
        Sum all = input.total(Measure.DRY);
        return Row.of(
                Cell.whole(name).asHeader(),
                Cell.number(figure(input, measured)),
                Cell.number(figure(input, estimated)),
                Cell.number(percent(measured, all)),
                Cell.of(all.isComplete() ? "" : all.unknown() + " of " + all.pieces() + " pieces"));
    }

    private String figure(Input input, Sum sum) {
        return sum.pieces() == 0 ? unit.words(0) : unit.best(input.perSquareMetre(sum));
    }

    private static String percent(Sum part, Sum all) {
        double whole = all.known().map(each -> each.best()).orElse(0.0);
        return whole <= 0
                ? "–"
                : Math.round(PERCENT * part.known().map(each -> each.best()).orElse(0.0) / whole) + " %";
    }

    private Table hauled() {
        List<Row> rows = new ArrayList<>();
        for (BedId bed : asked.beds()) {
            for (Season season : asked.seasons()) {
                asked.trends().carted(bed, season).ifPresent(carted -> rows.add(row(carted)));
            }
        }
        return Table.of(
                        "table-hauled",
                        "Shoots hauled off and shoots that went back, dry, in " + unit.unit() + " of bed top",
                        "No residue was hauled off, as far as the book says.",
                        List.of("bed", "season", "hauled off", "went back", "hauled off of both", "entries"),
                        rows)
                .numbersIn(2, 5);
    }

    private Row row(Carted carted) {
        Input input = asked.trends().inputs().of(carted.bed(), carted.season());
        Sum back = shoots(input);
        String off = carted.dry().known().isEmpty() ? "not known" : figure(input, carted.dry());
        String more = carted.dry().isComplete() ? "" : " + ?";
        return Row.of(
                Cell.whole(carted.bed().name()).asHeader(),
                Cell.whole(carted.season().name()),
                Cell.number(off + more),
                Cell.number(figure(input, back) + (back.isComplete() ? "" : " + ?")),
                Cell.number(ratio(carted.dry(), back)),
                Cell.of(SeasonsAsked.entries(carted.entries())));
    }

    private static Sum shoots(Input input) {
        List<Optional<Estimate>> parts = new ArrayList<>();
        int unknown = 0;
        int pieces = 0;
        for (var source : input.sources()) {
            if (source.kind().isShoots()) {
                Sum sum = input.from(source, Measure.DRY);
                parts.add(sum.known());
                unknown += sum.unknown();
                pieces += sum.pieces();
            }
        }
        return new Sum(Sum.of(parts).known(), pieces, unknown);
    }

    private static String ratio(Sum off, Sum back) {
        if (!off.isComplete() || !back.isComplete() || off.known().isEmpty()) {
            return "–";
        }
        double both =
                off.known().get().best() + back.known().map(each -> each.best()).orElse(0.0);
        return both <= 0 ? "–" : Math.round(PERCENT * off.known().get().best() / both) + " %";
    }

    private Table hauls() {
        List<Row> rows = new ArrayList<>();
        for (Hauled haul : asked.trends().returned().hauled()) {
            rows.add(Row.of(
                    Cell.whole(haul.entry().head().doneOn().toString()).asHeader(),
                    Cell.of(String.join(
                            " ",
                            haul.beds().stream()
                                    .map(share -> share.bed().name())
                                    .toList())),
                    Cell.of(haul.what()),
                    Cell.number(haul.dry().map(each -> each.inWords()).orElse("not known")),
                    Cell.of(where(haul)),
                    Cell.whole("#" + haul.entry().number())));
        }
        return Table.of(
                        "table-hauls",
                        "Each haul, dry shoots with low and high, and where it went",
                        "No residue was hauled off, as far as the book says.",
                        List.of("day", "beds", "crop", "dry", "to", "entry"),
                        rows)
                .numbersIn(3, 4);
    }

    private static String where(Hauled haul) {
        return haul.entry().fact() instanceof bedledger.language.BedWork.ResidueHauledOff off && off.to() != null
                ? off.to()
                : "not recorded";
    }

    private Output.Table data() {
        List<List<String>> rows = new ArrayList<>();
        for (BedId bed : asked.beds()) {
            for (Season season : asked.seasons()) {
                Input input = asked.trends().inputs().of(bed, season);
                List<String> row = new ArrayList<>(List.of(bed.name(), season.name()));
                row.addAll(Data.figure(input.measured(true, Measure.DRY).known()));
                row.addAll(Data.figure(input.measured(false, Measure.DRY).known()));
                Optional<Carted> carted = asked.trends().carted(bed, season);
                row.addAll(Data.figure(carted.flatMap(each -> each.dry().known())));
                row.add(carted.map(each -> Data.entries(each.entries())).orElse(""));
                rows.add(row);
            }
        }
        return new Output.Table(
                List.of(
                        "bed",
                        "season",
                        "measured_dry_kg_low",
                        "measured_dry_kg_best",
                        "measured_dry_kg_high",
                        "estimated_dry_kg_low",
                        "estimated_dry_kg_best",
                        "estimated_dry_kg_high",
                        "hauled_off_dry_kg_low",
                        "hauled_off_dry_kg_best",
                        "hauled_off_dry_kg_high",
                        "haul_entries"),
                rows);
    }
}
