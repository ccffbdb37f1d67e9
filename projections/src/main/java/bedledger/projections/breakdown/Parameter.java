package bedledger.projections.breakdown;

import bedledger.projections.tables.Citation;
import bedledger.projections.tables.Range;
import bedledger.projections.tables.TableFile.Row;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One figure that the breakdown rests on, under the name it is doubted by.
 *
 * @param range null where none is known
 */
public record Parameter(String name, double value, @Nullable Range range, Citation citation, String note) {
    private static final double PROBE = 0.01;

    public Parameter {
        if (range != null && !range.holds(value)) {
            throw new IllegalArgumentException(name + " " + value + " lies outside its range");
        }
    }

    static Parameter of(Row row, String name) {
        return new Parameter(name, row.number("value"), row.range(), row.citation(), row.text("note"));
    }

    /** The value at one end; where no range is known, a hundredth away, to know whether it matters. */
    double at(End end) {
        return switch (end) {
            case BEST -> value;
            case LOW -> range == null ? value * (1 - PROBE) : range.low();
            case HIGH -> range == null ? value * (1 + PROBE) : range.high();
        };
    }

    /** One line for a report: value, range, status, source, edition. */
    public String inWords() {
        String span = range == null ? "no range known" : number(range.low()) + " to " + number(range.high());
        return name + " " + number(value) + " (" + span + "); " + citation + (note.isEmpty() ? "" : "; " + note);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.4f", value).replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    /** Where a figure may sit in its range. */
    enum End {
        LOW,
        BEST,
        HIGH
    }
}
