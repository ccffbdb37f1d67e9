package bedledger.cli.report;

import bedledger.cli.read.Output;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.Returned;
import bedledger.projections.tables.Citation;
import bedledger.projections.tables.Source;
import bedledger.projections.tables.Tables;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The coefficients that moved a figure of this report, with status, edition and source, and the sources themselves. */
final class CoefficientsPart {
    private static final MathContext DIGITS = new MathContext(6);

    private final Tables tables;
    private final List<CoefficientLine> used;
    private final Map<String, Integer> sources = new LinkedHashMap<>();
    private final List<Row> sourceRows = new ArrayList<>();

    CoefficientsPart(Tables tables, Returned returned) {
        this(
                tables,
                returned.pieces().stream()
                        .map(Return::coefficients)
                        .flatMap(List::stream)
                        .map(CoefficientLine::of)
                        .toList());
    }

    CoefficientsPart(Tables tables, List<CoefficientLine> coefficients) {
        this.tables = tables;
        this.used = coefficients.stream()
                .distinct()
                .sorted(Comparator.comparing(CoefficientLine::key))
                .toList();
        used.forEach(coefficient -> number(coefficient.citation()));
    }

    private void number(Citation citation) {
        if (sources.containsKey(citation.source())) {
            return;
        }
        int number = sources.size() + 1;
        sources.put(citation.source(), number);
        Optional<Source> source = tables.source(citation);
        sourceRows.add(Row.of(
                        Cell.of(citation.source()).asHeader(),
                        Cell.of(source.map(Source::citation).orElse("this farm's own measurement")),
                        Cell.of(source.map(Source::whereRead)
                                .filter(read -> !read.equals("-"))
                                .orElse("no copy read")))
                .anchored(anchor(number)));
    }

    private static String anchor(int number) {
        return "source-" + number;
    }

    Table coefficients() {
        return Table.of(
                "table-coefficients",
                "Coefficients behind the figures of this report",
                "No figure of this report rests on a coefficient.",
                List.of(
                        "of what",
                        "coefficient",
                        "value",
                        "low",
                        "high",
                        "unit",
                        "status",
                        "source",
                        "edition",
                        "note"),
                used.stream().map(this::row).toList());
    }

    private Row row(CoefficientLine coefficient) {
        Citation citation = coefficient.citation();
        String low = "no range known";
        String high = "no range known";
        if (coefficient.range() != null) {
            low = number(coefficient.range().low());
            high = number(coefficient.range().high());
        }
        return Row.of(
                Cell.of(coefficient.of()).asHeader(),
                Cell.of(coefficient.coefficient()),
                Cell.number(number(coefficient.value())),
                Cell.number(low),
                Cell.number(high),
                Cell.of(coefficient.unit()),
                Cell.of(citation.status().words()),
                Cell.of(Phrase.link(citation.source(), anchor(sources.getOrDefault(citation.source(), 1)))),
                Cell.of((citation.table() + " " + citation.edition()).strip()),
                Cell.of(coefficient.note()));
    }

    private static String number(double value) {
        return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
    }

    /** The same as data. */
    Output.Table data() {
        return new Output.Table(
                List.of(
                        "of",
                        "coefficient",
                        "value",
                        "low",
                        "high",
                        "unit",
                        "status",
                        "source",
                        "table",
                        "edition",
                        "note"),
                used.stream()
                        .map(each -> List.of(
                                each.of(),
                                each.coefficient(),
                                number(each.value()),
                                each.range() == null ? "" : number(each.range().low()),
                                each.range() == null ? "" : number(each.range().high()),
                                each.unit(),
                                each.citation().status().words(),
                                each.citation().source(),
                                each.citation().table(),
                                each.citation().edition(),
                                each.note()))
                        .toList());
    }

    Table sources() {
        return Table.of(
                "table-sources",
                "Publications behind the coefficients",
                "No figure of this report rests on a publication.",
                List.of("source", "title, edition, table", "copy read"),
                sourceRows);
    }
}
