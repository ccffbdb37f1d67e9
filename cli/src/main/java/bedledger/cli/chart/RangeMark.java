package bedledger.cli.chart;

import bedledger.projections.estimate.Estimate;
import java.util.OptionalDouble;

/**
 * A figure with its range: a dot where it was measured, a box where it was estimated.
 *
 * @param swatch its letter, and how a box is filled
 * @param measured whether it is a dot
 * @param low empty where no range is known
 * @param high empty where no range is known
 * @param incomplete whether there is more that is not known
 */
public record RangeMark(
        Swatch swatch, boolean measured, double best, OptionalDouble low, OptionalDouble high, boolean incomplete) {
    /** An estimate in another unit, so many of it to one of its own. */
    public static RangeMark of(Swatch swatch, boolean measured, Estimate estimate, double times, boolean incomplete) {
        boolean band = estimate.hasBand();
        return new RangeMark(
                swatch,
                measured,
                estimate.best() * times,
                band ? OptionalDouble.of(estimate.low() * times) : OptionalDouble.empty(),
                band ? OptionalDouble.of(estimate.high() * times) : OptionalDouble.empty(),
                incomplete);
    }

    double bottom() {
        return Math.min(best, low.orElse(best));
    }

    double top() {
        return Math.max(best, high.orElse(best));
    }
}
