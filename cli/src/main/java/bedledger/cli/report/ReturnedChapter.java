package bedledger.cli.report;

import bedledger.cli.chart.Bar;
import bedledger.cli.chart.Key;
import bedledger.cli.chart.StackedBars;
import bedledger.cli.read.PerArea;
import bedledger.language.BedId;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Return;
import bedledger.projections.trends.Input;
import bedledger.projections.trends.Season;
import bedledger.projections.trends.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;

/** What went back, by source: all beds season by season, then each bed. */
final class ReturnedChapter {
    private static final int WIDE = 600;
    private static final int HIGH = 300;
    private static final int SMALL = 285;
    private static final int SMALL_HIGH = 190;

    private final SeasonsAsked asked;
    private final Measure measure;
    private final PerArea unit;
    private final Bars bars;
    private final SortedSet<Source> sources;

    ReturnedChapter(SeasonsAsked asked, Measure measure) {
        this.asked = asked;
        this.measure = measure;
        this.unit = asked.perArea(measure);
        this.bars = new Bars(measure, unit);
        this.sources = Bars.sources(
                asked.seasons().stream().map(asked.trends().inputs()::of).toList());
    }

    Chapter chapter() {
        return new Chapter(
                measure.words(),
                title(),
                sources.isEmpty() ? List.of(Block.text(nothing())) : blocks(),
                List.of(new Chapter.DataFile(
                        "returned-" + measure.words() + ".csv", new InputTable(measure, unit, sources).data(lines()))),
                asked.trends().returned().pieces().stream()
                        .map(Return::coefficients)
                        .flatMap(List::stream)
                        .map(CoefficientLine::of)
                        .distinct()
                        .toList());
    }

    private String title() {
        return switch (measure) {
            case DRY -> "Dry matter returned";
            case CARBON -> "Carbon returned";
            case NITROGEN -> "Nitrogen returned";
            default -> measure.words() + " returned";
        };
    }

    private String nothing() {
        return "Nothing went back to the soil up to " + asked.day()
                + ", as far as the book says; so there is no chart.";
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.text(intro()));
        blocks.add(Block.picture(
                new Picture(new Key("key-" + measure.words(), "Key: sources of " + name(), Bars.key(sources), 2), "")));
        blocks.add(Block.heading("All beds, season by season"));
        blocks.add(Block.picture(seasons()));
        blocks.add(Block.table(seasonTable()));
        blocks.add(Block.heading("Bed by bed"));
        blocks.add(Block.pictures(beds()));
        blocks.add(Block.table(bedTable()));
        return blocks;
    }

    private String name() {
        return measure == Measure.DRY ? "dry matter" : measure.words();
    }

    private String intro() {
        return "In " + unit.unit() + " of bed top, paths not counted. Solid: measured, or a quantity as written down."
                + " Hatched: estimated from the harvest. Guesses from typical yields are left out. A figure that ends with"
                + " “+ ?” has a part that is not known: there is more. The line in a bar reaches from low to high. † no"
                + " range is known for some coefficient in it; the true doubt is wider than shown.";
    }

    private Picture seasons() {
        List<Bar> all = asked.seasons().stream()
                .map(season -> bars.of(season.name(), asked.trends().inputs().of(season)))
                .toList();
        StackedBars chart = new StackedBars(
                "chart-" + measure.words() + "-seasons",
                title() + " to all beds, by season and source",
                "In " + unit.unit() + ": " + StackedBars.words(all, unit::words)
                        + ". The table below has every figure.",
                WIDE,
                HIGH,
                all,
                StackedBars.most(List.of(all)),
                unit.unit(),
                unit::words);
        return new Picture(chart, title() + " to all beds, by season and source, in " + unit.unit());
    }

    private List<Picture> beds() {
        List<List<Bar>> groups = asked.beds().stream().map(this::barsOf).toList();
        double most = StackedBars.most(groups);
        List<Picture> pictures = new ArrayList<>();
        for (int at = 0; at < groups.size(); at++) {
            String bed = asked.beds().get(at).name();
            pictures.add(new Picture(
                    new StackedBars(
                            "chart-" + measure.words() + "-bed-" + bed,
                            title() + " to bed " + bed,
                            "In " + unit.unit() + ": " + StackedBars.words(groups.get(at), unit::words) + ".",
                            SMALL,
                            SMALL_HIGH,
                            groups.get(at),
                            most,
                            unit.unit(),
                            unit::words),
                    "Bed " + bed));
        }
        return pictures;
    }

    private List<Bar> barsOf(BedId bed) {
        return asked.seasons().stream()
                .map(season -> bars.of(season.name(), asked.trends().inputs().of(bed, season)))
                .toList();
    }

    private Table seasonTable() {
        InputTable table = new InputTable(measure, unit, sources);
        return Table.of(
                        "table-" + measure.words() + "-seasons",
                        title() + " to all beds, in " + unit.unit() + " of bed top",
                        nothing(),
                        table.columns("season"),
                        asked.seasons().stream()
                                .map(season -> table.row(
                                        season.name(), asked.trends().inputs().of(season)))
                                .toList())
                .numbersIn(1, sources.size() + 4);
    }

    private Table bedTable() {
        InputTable table = new InputTable(measure, unit, sources);
        List<String> columns = table.columns("season");
        return Table.grouped(
                        "table-" + measure.words() + "-beds",
                        title() + " to each bed, in " + unit.unit() + " of bed top",
                        nothing(),
                        columns,
                        asked.beds().stream()
                                .map(bed -> new Table.Group("Bed " + bed, columns.size(), rows(table, bed)))
                                .toList())
                .numbersIn(1, columns.size() - 1);
    }

    private List<Row> rows(InputTable table, BedId bed) {
        return asked.seasons().stream()
                .map(season -> table.row(season.name(), asked.trends().inputs().of(bed, season)))
                .toList();
    }

    private List<InputTable.Line> lines() {
        List<InputTable.Line> lines = new ArrayList<>();
        for (Season season : asked.seasons()) {
            Input all = asked.trends().inputs().of(season);
            lines.add(new InputTable.Line("all beds", season.name(), all));
        }
        asked.beds()
                .forEach(bed -> asked.seasons()
                        .forEach(season -> lines.add(new InputTable.Line(
                                bed.name(),
                                season.name(),
                                asked.trends().inputs().of(bed, season)))));
        return lines;
    }
}
