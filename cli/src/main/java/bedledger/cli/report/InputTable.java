package bedledger.cli.report;

import bedledger.cli.chart.Palette;
import bedledger.cli.read.Output;
import bedledger.cli.read.PerArea;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Sum;
import bedledger.projections.trends.Input;
import bedledger.projections.trends.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/** The table behind bars: a column for each source, and the whole with low and high. */
record InputTable(Measure measure, PerArea unit, SortedSet<Source> sources) {
    /** A row of data: its bed or field, its season, and what went back. */
    record Line(String of, String season, Input input) {}

    List<String> columns(String first) {
        List<String> columns = new ArrayList<>(List.of(first));
        sources.forEach(source ->
                columns.add(Palette.of(source).letter() + " " + (source.measured() ? "measured" : "estimated")));
        columns.addAll(List.of("all, low", "best", "high", "pieces not known"));
        return columns;
    }

    Row row(String name, Input input) {
        List<Cell> cells = new ArrayList<>(List.of(Cell.whole(name).asHeader()));
        for (Source source : sources) {
            Sum sum = input.from(source, measure);
            cells.add(sum.pieces() == 0 ? Cell.of("") : Cell.number(unit.best(input.perSquareMetre(sum))));
        }
        Sum total = input.total(measure);
        Optional<Estimate> whole = input.perSquareMetre(total);
        cells.add(whole.map(each -> Cell.number(unit.low(each))).orElse(Cell.of("")));
        cells.add(
                total.pieces() == 0
                        ? Cell.number(input.typicalLeftOut() > 0 ? "–" : unit.words(0))
                        : Cell.number(unit.best(whole)));
        cells.add(whole.map(each -> Cell.number(unit.high(each) + Masses.dagger(each)))
                .orElse(Cell.of("")));
        cells.add(Cell.of(missing(input, total)));
        return Row.of(cells);
    }

    private static String missing(Input input, Sum total) {
        List<String> said = new ArrayList<>();
        if (total.unknown() > 0) {
            said.add(total.unknown() + " of " + total.pieces());
        }
        if (input.typicalLeftOut() > 0) {
            said.add(input.typicalLeftOut() + " guessed, left out");
        }
        return String.join("; ", said);
    }

    /** The same in kg, source by source: a line for each, and one for the whole. */
    Output.Table data(List<Line> lines) {
        List<List<String>> rows = new ArrayList<>();
        for (Line line : lines) {
            for (Source source : line.input().sources()) {
                rows.add(line(line, source.kind().words(), source.measured() ? "measured" : "estimated", source));
            }
            rows.add(line(line, "all", "", null));
        }
        return new Output.Table(
                List.of(
                        "of",
                        "season",
                        "square_metres",
                        "source",
                        "evidence",
                        measure.words() + "_kg_low",
                        measure.words() + "_kg_best",
                        measure.words() + "_kg_high",
                        "pieces",
                        "pieces_not_known",
                        "guesses_left_out",
                        "entries"),
                rows);
    }

    private List<String> line(
            Line line, String kind, String evidence, @org.jspecify.annotations.Nullable Source source) {
        Input input = line.input();
        Sum sum = source == null ? input.total(measure) : input.from(source, measure);
        List<String> cells = new ArrayList<>(
                List.of(line.of(), line.season(), Double.toString(input.squareMetres()), kind, evidence));
        cells.addAll(Data.figure(sum.known()));
        cells.addAll(List.of(
                Integer.toString(sum.pieces()),
                Integer.toString(sum.unknown()),
                source == null ? Integer.toString(input.typicalLeftOut()) : "",
                source == null ? Data.entries(input.entries()) : ""));
        return cells;
    }
}
