package bedledger.projections.tables;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One value of one crop, material or pack, with its range and where it comes from.
 *
 * <p>Value and range are in the unit of the quantity. No range means that none is known, not that the value is exact.
 */
public record Coefficient(
        String of,
        Quantity quantity,
        double value,
        @Nullable Range range,
        Citation citation,
        String note) {
    public Coefficient {
        if (!quantity.allows(value) || (range != null && !quantity.allows(range.high()))) {
            throw new IllegalArgumentException(key(of, quantity) + " " + value + " cannot be, in " + quantity.unit());
        }
        if (range != null && !range.holds(value)) {
            throw new IllegalArgumentException(
                    key(of, quantity) + " " + value + " lies outside its range " + range.low() + " to " + range.high());
        }
    }

    /** The name under which the value is doubted, such as "broccoli harvest index". */
    public String key() {
        return key(of, quantity);
    }

    public boolean rangeKnown() {
        return range != null;
    }

    /** Whether the value is itself the low end of its range, so that all doubt lies above it. */
    public boolean isLowEnd() {
        return range != null && value == range.low();
    }

    /** Whether the value is itself the high end of its range, so that all doubt lies below it. */
    public boolean isHighEnd() {
        return range != null && value == range.high();
    }

    /** One line for a report: value, range, unit, status, source, edition. */
    public String inWords() {
        String span = range == null ? "no range known" : number(range.low()) + " to " + number(range.high());
        return key() + " " + number(value) + " (" + span + "), " + quantity.unit() + "; " + citation;
    }

    /** What a one-sided range has to say for itself; empty otherwise. */
    public String sideInWords() {
        if (range == null || (!isLowEnd() && !isHighEnd())) {
            return "";
        }
        return key() + " " + number(value) + " is the " + (isLowEnd() ? "low" : "high") + " end of its range, "
                + number(range.low()) + " to " + number(range.high());
    }

    private static String key(String of, Quantity quantity) {
        return of + " " + quantity.words();
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.4f", value);
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
    }
}
