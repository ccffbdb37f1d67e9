package bedledger.cli.report;

import bedledger.projections.tables.Citation;
import bedledger.projections.tables.Coefficient;
import bedledger.projections.tables.Parameter;
import bedledger.projections.tables.Range;
import org.jspecify.annotations.Nullable;

/**
 * One figure of a table that the report rests on.
 *
 * @param of the crop, material or equation it belongs to
 * @param range null where none is known
 */
record CoefficientLine(
        String of,
        String coefficient,
        double value,
        @Nullable Range range,
        String unit,
        Citation citation,
        String note) {
    static CoefficientLine of(Coefficient each) {
        return new CoefficientLine(
                each.of(),
                each.quantity().words(),
                each.value(),
                each.range(),
                each.quantity().unit(),
                each.citation(),
                each.note());
    }

    static CoefficientLine of(Parameter each) {
        return new CoefficientLine(
                each.set(),
                each.name(),
                each.value(),
                each.range(),
                each.unit().equals("-") ? "" : each.unit(),
                each.citation(),
                each.note());
    }

    /** Of the breakdown, whose tables say the unit in the note. */
    static CoefficientLine of(bedledger.projections.breakdown.Parameter each) {
        return new CoefficientLine(
                "breakdown", each.name(), each.value(), each.range(), "", each.citation(), each.note());
    }

    /** By what it belongs to, then by its name. */
    String key() {
        return of + " " + coefficient;
    }
}
