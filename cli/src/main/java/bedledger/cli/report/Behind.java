package bedledger.cli.report;

import bedledger.projections.tables.Parameters;
import java.util.Collection;
import java.util.List;

/** The rows of a table of published equations that stand behind some figures. */
final class Behind {
    private Behind() {}

    /** Every row, where an equation uses all of them. */
    static List<CoefficientLine> all(String table) {
        return Parameters.of(table).all().stream().map(CoefficientLine::of).toList();
    }

    /** The rows of some sets. */
    static List<CoefficientLine> sets(String table, Collection<String> sets) {
        return Parameters.of(table).all().stream()
                .filter(row -> sets.contains(row.set()))
                .map(CoefficientLine::of)
                .toList();
    }

    /** The rows that are among the causes of doubt of some figures. */
    static List<CoefficientLine> moved(String table, Collection<String> causes) {
        return Parameters.of(table).all().stream()
                .filter(row -> causes.contains(row.key()))
                .map(CoefficientLine::of)
                .toList();
    }
}
