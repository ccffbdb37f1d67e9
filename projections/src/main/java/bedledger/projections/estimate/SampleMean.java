package bedledger.projections.estimate;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * The mean of a few measurements with Student's t interval, two-sided.
 *
 * <p>With one measurement there is a mean and nothing else. Quantiles from Apache Commons Statistics.
 */
public record SampleMean(int count, double mean, OptionalDouble standardDeviation, double confidence) {
    public SampleMean {
        if (count < 1) {
            throw new IllegalArgumentException("A mean was refused: nothing was measured.");
        }
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("a confidence lies between 0 and 1, not at " + confidence);
        }
    }

    public static SampleMean of(List<Double> measured, double confidence) {
        double mean =
                measured.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        if (measured.size() < 2) {
            return new SampleMean(measured.size(), mean, OptionalDouble.empty(), confidence);
        }
        double squares = measured.stream()
                .mapToDouble(each -> (each - mean) * (each - mean))
                .sum();
        double deviation = Math.sqrt(squares / (measured.size() - 1));
        return new SampleMean(measured.size(), mean, OptionalDouble.of(deviation), confidence);
    }

    /** Standard error of the mean; empty for one measurement. */
    public OptionalDouble standardError() {
        return standardDeviation.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(standardDeviation.getAsDouble() / Math.sqrt(count));
    }

    /** The t quantile of the interval; empty for one measurement. */
    public OptionalDouble t() {
        return count < 2
                ? OptionalDouble.empty()
                : OptionalDouble.of(TDistribution.of(count - 1.0).inverseSurvivalProbability((1 - confidence) / 2));
    }

    /** Half the width of the interval; empty for one measurement. */
    public OptionalDouble halfWidth() {
        return count < 2
                ? OptionalDouble.empty()
                : OptionalDouble.of(t().orElseThrow() * standardError().orElseThrow());
    }

    /** Standard deviation over mean; empty for one measurement or a mean of nothing. */
    public OptionalDouble coefficientOfVariation() {
        return standardDeviation.isEmpty() || mean == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(standardDeviation.getAsDouble() / mean);
    }
}
