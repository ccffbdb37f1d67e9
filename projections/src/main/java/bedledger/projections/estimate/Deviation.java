package bedledger.projections.estimate;

import bedledger.projections.tables.Coefficient;
import bedledger.projections.tables.Range;

/**
 * By how much a figure moves when one cause of doubt sits at its low and at its high end, in the figure's unit.
 *
 * <p>Where no range is known the two are how it would move for a hundredth down and up: never shown as a band, only kept
 * to know whether the cause still matters. {@code side} says in words what makes a range one-sided; empty otherwise.
 */
public record Deviation(double atLow, double atHigh, boolean rangeKnown, String side) {
    private static final double PROBE = 0.01;

    static final Deviation NONE = new Deviation(0, 0, true, "");

    static Deviation of(Coefficient coefficient, double factor) {
        Range range = coefficient.range();
        double value = coefficient.value();
        if (range == null) {
            return new Deviation(-PROBE * value * factor, PROBE * value * factor, false, "");
        }
        return new Deviation(
                (range.low() - value) * factor, (range.high() - value) * factor, true, coefficient.sideInWords());
    }

    /** Its downward effects in proportion. */
    Deviation downTimes(double factor) {
        return new Deviation(
                atLow < 0 ? atLow * factor : atLow, atHigh < 0 ? atHigh * factor : atHigh, rangeKnown, side);
    }

    double down() {
        return rangeKnown ? Math.max(0, -Math.min(atLow, atHigh)) : 0;
    }

    double up() {
        return rangeKnown ? Math.max(0, Math.max(atLow, atHigh)) : 0;
    }

    boolean isNegligibleBeside(double best) {
        return Math.max(Math.abs(atLow), Math.abs(atHigh)) <= 1e-9 * Math.max(Math.abs(best), 1e-9);
    }
}
