package bedledger.cli.report;

import bedledger.cli.chart.Bar;
import bedledger.cli.chart.Key;
import bedledger.cli.chart.StackedBars;
import bedledger.cli.read.PerArea;
import bedledger.language.BedId;
import bedledger.language.FieldId;
import bedledger.projections.returned.Measure;
import bedledger.projections.trends.Input;
import bedledger.projections.trends.Inputs;
import bedledger.projections.trends.Season;
import bedledger.projections.trends.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;

/** What has come together since the first season, field by field, and bed by bed in the table. */
final class RunningTotalChapter {
    private static final int SMALL = 285;
    private static final int HIGH = 240;
    private static final Measure MEASURE = Measure.DRY;

    private final SeasonsAsked asked;
    private final Inputs inputs;
    private final PerArea unit;
    private final List<FieldId> fields;
    private final SortedSet<Source> sources;

    RunningTotalChapter(SeasonsAsked asked) {
        this.asked = asked;
        this.inputs = asked.trends().inputs();
        this.unit = asked.perArea(MEASURE);
        this.fields = inputs.fields(asked.day());
        this.sources = Bars.sources(asked.seasons().stream().map(inputs::of).toList());
    }

    Chapter chapter() {
        return Chapter.of(
                "running-total",
                "Running total of dry matter",
                sources.isEmpty()
                        ? List.of(Block.text("Nothing went back, so nothing came together; there is no chart."))
                        : blocks(),
                new Chapter.DataFile("running-total.csv", new InputTable(MEASURE, unit, sources).data(lines())));
    }

    private List<Block> blocks() {
        return List.of(
                Block.text(
                        "Everything since " + asked.seasons().get(0).name() + ", season upon season, in " + unit.unit()
                                + " of bed top. It is what was put in, not what is still there: most of it is gone within a year or two."),
                Block.picture(new Picture(
                        new Key("key-running-total", "Key to the running total", Bars.key(sources), 2), "")),
                Block.pictures(pictures()),
                Block.table(table()));
    }

    private List<Picture> pictures() {
        Bars bars = new Bars(MEASURE, unit);
        List<List<Bar>> groups = fields.stream()
                .map(field -> asked.seasons().stream()
                        .map(season -> bars.of(season.name(), inputs.upTo(field, season)))
                        .toList())
                .toList();
        double most = StackedBars.most(groups);
        List<Picture> pictures = new ArrayList<>();
        for (int at = 0; at < fields.size(); at++) {
            String field = fields.get(at).name();
            pictures.add(new Picture(
                    new StackedBars(
                            "chart-running-total-" + at,
                            "Dry matter returned to field " + field + " since the first season",
                            "In " + unit.unit() + ": " + StackedBars.words(groups.get(at), unit::words) + ".",
                            SMALL,
                            HIGH,
                            groups.get(at),
                            most,
                            unit.unit(),
                            unit::words),
                    "Field " + field));
        }
        return pictures;
    }

    private Table table() {
        InputTable table = new InputTable(MEASURE, unit, sources);
        List<String> columns = table.columns("up to the end of");
        List<Table.Group> groups = new ArrayList<>();
        fields.forEach(field -> groups.add(new Table.Group(
                "Field " + field,
                columns.size(),
                asked.seasons().stream()
                        .map(season -> table.row(season.name(), inputs.upTo(field, season)))
                        .toList())));
        asked.beds().forEach(bed -> groups.add(new Table.Group("Bed " + bed, columns.size(), rows(table, bed))));
        return Table.grouped(
                        "table-running-total",
                        "Dry matter returned since the first season, in " + unit.unit() + " of bed top",
                        "Nothing went back.",
                        columns,
                        groups)
                .numbersIn(1, columns.size() - 1);
    }

    private List<Row> rows(InputTable table, BedId bed) {
        return asked.seasons().stream()
                .map(season -> table.row(season.name(), inputs.upTo(bed, season)))
                .toList();
    }

    private List<InputTable.Line> lines() {
        List<InputTable.Line> lines = new ArrayList<>();
        for (Season season : asked.seasons()) {
            fields.forEach(field -> lines.add(line("field " + field, season, inputs.upTo(field, season))));
            asked.beds().forEach(bed -> lines.add(line(bed.name(), season, inputs.upTo(bed, season))));
        }
        return lines;
    }

    private static InputTable.Line line(String of, Season season, Input input) {
        return new InputTable.Line(of, season.name(), input);
    }
}
