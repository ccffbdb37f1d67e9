package bedledger.projections.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.projections.tables.Parameters;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.LongStream;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each balance in closed form against numeric integration of its own equations, which carry the loss along as a pool. */
class BalancesTest {
    private static final Parameters TABLE = Parameters.of("soil-carbon");

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    private static RandomGenerator random(long seed) {
        return RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    }

    private interface Change {
        void of(double[] pool, double[] change);
    }

    private static double[] integrated(double[] start, double years, Change equations) {
        double[] end = start.clone();
        new DormandPrince853Integrator(1e-8, 0.5, 1e-11, 1e-11)
                .integrate(
                        new FirstOrderDifferentialEquations() {
                            @Override
                            public int getDimension() {
                                return start.length;
                            }

                            @Override
                            public void computeDerivatives(double time, double[] pool, double[] change) {
                                equations.of(pool, change);
                            }
                        },
                        0,
                        start,
                        years,
                        end);
        return end;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void amgKeepsItsCarbonAndAgreesWithIntegration(long seed) {
        RandomGenerator random = random(seed);
        Amg amg = new Amg(TABLE);
        double initial = random.nextDouble(10, 120);
        double humified = random.nextDouble(0, 8);
        double rate = random.nextDouble(0.01, 0.3);
        double years = random.nextDouble(0.5, 60);
        double stable = amg.stable(initial);
        double[] end = integrated(new double[] {initial - stable, 0}, years, (pool, change) -> {
            change[0] = humified - rate * pool[0];
            change[1] = rate * pool[0];
        });
        double stock = amg.stock(initial, humified, rate, years);
        assertThat(stock).isCloseTo(stable + end[0], within(1e-6));
        assertThat(stock + amg.mineralised(initial, humified, rate, years))
                .isCloseTo(initial + humified * years, within(1e-9 * initial + 1e-9));
        assertThat(amg.mineralised(initial, humified, rate, years)).isCloseTo(end[1], within(1e-6));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void icbmKeepsItsCarbonAndAgreesWithIntegration(long seed) {
        RandomGenerator random = random(seed);
        Icbm icbm = new Icbm(TABLE);
        double young = TABLE.value("ICBM", "young decay");
        double old = TABLE.value("ICBM", "old decay");
        Icbm.Setting setting =
                new Icbm.Setting(random.nextDouble(0, 1.5), random.nextDouble(0.05, 0.5), random.nextDouble(0.5, 2.5));
        Icbm.Pools start = new Icbm.Pools(random.nextDouble(0, 1), random.nextDouble(1, 12));
        double years = random.nextDouble(0.5, 60);
        double r = setting.climate();
        double[] end = integrated(new double[] {start.young(), start.old(), 0}, years, (pool, change) -> {
            change[0] = setting.input() - young * r * pool[0];
            change[1] = setting.humified() * young * r * pool[0] - old * r * pool[1];
            change[2] = (1 - setting.humified()) * young * r * pool[0] + old * r * pool[1];
        });
        Icbm.Pools pools = icbm.after(start, setting, years);
        assertThat(pools.young()).isCloseTo(end[0], within(1e-7));
        assertThat(pools.old()).isCloseTo(end[1], within(1e-7));
        assertThat(pools.total() + end[2]).isCloseTo(start.total() + setting.input() * years, within(1e-7));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void heninDupuisKeepsItsMatterAndAgreesWithIntegration(long seed) {
        RandomGenerator random = random(seed);
        HeninDupuis henin = new HeninDupuis(TABLE);
        double initial = random.nextDouble(10, 200);
        double formed = random.nextDouble(0, 5);
        double rate = random.nextDouble(0.002, 0.05);
        double years = random.nextDouble(0.5, 80);
        double[] end = integrated(new double[] {initial, 0}, years, (pool, change) -> {
            change[0] = formed - rate * pool[0];
            change[1] = rate * pool[0];
        });
        assertThat(henin.matter(initial, formed, rate, years)).isCloseTo(end[0], within(1e-6));
        assertThat(end[0] + end[1]).isCloseTo(initial + formed * years, within(1e-6));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void equalMassIsEqualDepthWhereTheSoilIsAsDenseAsBefore(long seed) {
        RandomGenerator random = random(seed);
        double density = random.nextDouble(0.8, 1.6);
        double stones = random.nextDouble(0, 0.3);
        double depth = random.nextDouble(10, 40);
        Profile first = new Profile(List.of(new Layer(0, depth, density, random.nextDouble(0.5, 4), stones)));
        Profile later = new Profile(List.of(
                new Layer(0, depth / 2, density, random.nextDouble(0.5, 4), stones),
                new Layer(depth / 2, depth, density, random.nextDouble(0.5, 4), stones)));
        EquivalentMass compared = EquivalentMass.of(first, later);
        assertThat(compared.reachesDepth()).isTrue();
        assertThat(compared.change()).isCloseTo(compared.changeToDepth(), within(1e-9));
    }
}
