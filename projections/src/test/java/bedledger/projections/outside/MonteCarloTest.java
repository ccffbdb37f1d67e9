package bedledger.projections.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.projections.estimate.Estimate;
import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;

/**
 * The combining rule against drawing at random, worked out apart from it: each coefficient normal about its value, half its
 * band one unit of deviation. That sum of squares is the deviation of a sum of independent causes is in every textbook of
 * measurement (JCGM 100:2008, Evaluation of measurement data, 5.1 and 5.2, from memory); here it is only drawn.
 *
 * <p>Bands are small beside the values, so that the first order holds to some hundredths.
 */
class MonteCarloTest {
    private static final long SEED = 20_251_125;
    private static final int DRAWS = 200_000;

    private record Drawn(double mean, double deviation) {}

    /** Three causes: a of 100 ± 6, b of 40 ± 4, c of 0.5 ± 0.03. */
    private static Drawn drawn(ToDoubleFunction<double[]> figure) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(SEED);
        double[] results = new double[DRAWS];
        for (int at = 0; at < DRAWS; at++) {
            results[at] = figure.applyAsDouble(new double[] {
                random.nextGaussian(100, 6), random.nextGaussian(40, 4), random.nextGaussian(0.5, 0.03)
            });
        }
        double mean = Arrays.stream(results).average().orElseThrow();
        double squares = Arrays.stream(results)
                .map(each -> (each - mean) * (each - mean))
                .sum();
        return new Drawn(mean, Math.sqrt(squares / (DRAWS - 1)));
    }

    private static final Estimate A = Estimate.measured("a", 100, 6, "kg");
    private static final Estimate B = Estimate.measured("b", 40, 4, "kg");
    private static final Estimate C = Estimate.measured("c", 0.5, 0.03, "kg/kg");

    private static void meets(Estimate ours, Drawn drawn) {
        assertThat(ours.best()).isCloseTo(drawn.mean(), within(0.01 * Math.abs(drawn.mean()) + 0.05));
        assertThat((ours.high() - ours.low()) / 2).isCloseTo(drawn.deviation(), within(0.03 * drawn.deviation()));
    }

    @Test
    void independentCausesAddInSquares() {
        meets(A.plus(B), drawn(x -> x[0] + x[1]));
        meets(A.times(C), drawn(x -> x[0] * x[2]));
    }

    @Test
    void theSameCauseTwiceAddsUp() {
        meets(A.times(C).plus(B.times(C)), drawn(x -> x[0] * x[2] + x[1] * x[2]));
        Estimate twice = B.plus(B);
        assertThat((twice.high() - twice.low()) / 2).isCloseTo(8, within(1e-9));
        meets(twice, drawn(x -> x[1] + x[1]));
    }

    @Test
    void theSameCauseCancelsInADifferenceAndInARatio() {
        meets(A.minus(A.times(C)), drawn(x -> x[0] - x[0] * x[2]));
        meets(A.times(C).ratioTo(B.times(C), ""), drawn(x -> x[0] * x[2] / (x[1] * x[2])));
        Estimate nothing = A.minus(A);
        assertThat(nothing.high() - nothing.low()).isZero();
    }

    /** The same sum with the coefficient of each part drawn by itself: what taking them for independent would give. */
    @Test
    void takingTheSameCauseForTwoWouldBeFoundOut() {
        Estimate apart = A.times(C).plus(B.times(Estimate.measured("another c", 0.5, 0.03, "kg/kg")));
        Drawn together = drawn(x -> x[0] * x[2] + x[1] * x[2]);

        assertThat((apart.high() - apart.low()) / 2).isLessThan(together.deviation() * 0.97);
    }
}
