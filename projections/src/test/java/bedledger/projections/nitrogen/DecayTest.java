package bedledger.projections.nitrogen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.projections.tables.Parameters;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.LongStream;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DecayTest {
    private static final Parameters TABLE = Parameters.of("residue-turnover");
    private static final Turnover WORKED_IN = new Turnover(TABLE, Placement.WORKED_IN);
    private static final Turnover ON_TOP = new Turnover(TABLE, Placement.ON_TOP);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    private static RandomGenerator random(long seed) {
        return RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    }

    /** The same three pools step by step: residue in contact decays, microbes feed on it and die into humus. */
    private record Pools(Decay decay, double contact) implements FirstOrderDifferentialEquations {
        @Override
        public int getDimension() {
            return 3;
        }

        @Override
        public void computeDerivatives(double time, double[] pool, double[] change) {
            double eaten = decay.k() * Math.min(pool[0], contact);
            change[0] = -eaten;
            change[1] = decay.assimilated() * eaten - decay.microbialDecay() * pool[1];
            change[2] = decay.h() * decay.microbialDecay() * pool[1];
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void closedFormAgreesWithNumericIntegration(long seed) {
        RandomGenerator random = random(seed);
        Turnover turnover = random.nextBoolean() ? WORKED_IN : ON_TOP;
        Decay decay = turnover.asPublished(random.nextDouble(8, 100));
        double contact = random.nextBoolean() ? 1 : random.nextDouble(0.02, 1);
        double days = random.nextDouble(1, 400);
        double[] pool = {1, 0, 0};
        new ClassicalRungeKuttaIntegrator(0.01).integrate(new Pools(decay, contact), 0, pool, days, pool);
        Decay.Pools closed = decay.after(days, contact);
        assertThat(closed.residue()).isCloseTo(pool[0], within(1e-5));
        assertThat(closed.microbes()).isCloseTo(pool[1], within(1e-5));
        assertThat(closed.humus()).isCloseTo(pool[2], within(1e-5));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void carbonIsNeitherMadeNorLost(long seed) {
        RandomGenerator random = random(seed);
        Decay decay = (random.nextBoolean() ? WORKED_IN : ON_TOP).asPublished(random.nextDouble(5, 120));
        Decay.Pools pools = decay.after(random.nextDouble(0, 2000), random.nextDouble(0.01, 1.2));
        assertThat(pools.residue()).isBetween(0.0, 1.0);
        assertThat(pools.microbes()).isGreaterThanOrEqualTo(0);
        assertThat(pools.humus()).isGreaterThanOrEqualTo(-1e-12);
        assertThat(pools.respired()).isGreaterThanOrEqualTo(-1e-12);
        assertThat(pools.residue() + pools.microbes() + pools.humus() + pools.respired())
                .isCloseTo(1, within(1e-12));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aWiderCarbonToNitrogenNeverFreesMore(long seed) {
        RandomGenerator random = random(seed);
        double narrow = random.nextDouble(12, 90);
        double wide = narrow + random.nextDouble(0.1, 10);
        double days = random.nextDouble(20, 1000);
        assertThat(WORKED_IN.of(wide).after(days).shareOfNitrogen())
                .isLessThan(WORKED_IN.of(narrow).after(days).shareOfNitrogen());
    }

    /** On top, decay and death of the microbes are equally fast at C:N 50: nothing over nothing in the printed form. */
    @Test
    void isSmoothWhereTheTwoRatesAreEqual() {
        Decay equal = ON_TOP.asPublished(50);
        assertThat(equal.k()).isCloseTo(equal.microbialDecay(), within(1e-12));
        double beside = ON_TOP.asPublished(50.001).after(80).microbes();
        assertThat(equal.after(80).microbes()).isCloseTo(beside, within(1e-4));
    }

    @Test
    void whatLiesThickOnTopWaitsItsTurn() {
        Decay decay = ON_TOP.of(16);
        assertThat(decay.after(40, 0.2).residue()).isGreaterThan(decay.after(40).residue());
        assertThat(decay.after(1e6, 0.2).shareOfNitrogen())
                .isCloseTo(decay.finallyLeft().shareOfNitrogen(), within(1e-9));
    }

    @Test
    void theJoinOfBothPlacementsIsSmoothAtItsEnds() {
        Course course = new Course(TABLE);
        assertThat(course.of(20).share(0, 60, 1, 1))
                .isCloseTo(WORKED_IN.of(20).after(60).shareOfNitrogen(), within(1e-12));
        assertThat(course.of(20).share(60, 0, 1, 0.3))
                .isCloseTo(ON_TOP.of(20).after(60, 0.3).shareOfNitrogen(), within(1e-12));
        assertThat(course.of(20).share(30, 30, 0, 0.3))
                .isCloseTo(ON_TOP.of(20).after(60, 0.3).shareOfNitrogen(), within(1e-12));
    }
}
