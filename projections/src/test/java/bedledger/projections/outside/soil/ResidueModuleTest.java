package bedledger.projections.outside.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.projections.nitrogen.Decay;
import bedledger.projections.nitrogen.Placement;
import bedledger.projections.nitrogen.Responses;
import bedledger.projections.nitrogen.Turnover;
import bedledger.projections.tables.Parameters;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Residue module of STICS v8 (Nicolardot et al. 2001; Brisson et al. 2009): equations and constants as read in
 * github.com/hisafe/hisafe, mineral.f90, ResiduParamDec.f90 and stics.par. Expected figures were computed from them outside
 * this program, unless a test names a measurement.
 */
class ResidueModuleTest {
    private static final Parameters TABLE = Parameters.of("residue-turnover");
    private static final Responses RESPONSES = new Responses(TABLE);
    private static final Turnover WORKED_IN = new Turnover(TABLE, Placement.WORKED_IN);
    private static final Turnover ON_TOP = new Turnover(TABLE, Placement.ON_TOP);

    /** FTEMr 0.103, FTEMra 12, TREFr 15. */
    @ParameterizedTest
    @CsvSource({"-4, 0", "0, 0", "5, 0.3772", "10, 0.6182", "15, 1", "18, 1.3222", "20, 1.5847", "25, 2.4355"})
    void warmthOfResidue(double celsius, double expected) {
        assertThat(RESPONSES.residueWarmth(celsius)).isCloseTo(expected, within(1e-4));
    }

    /** 25 / (1 + 24 exp(-0.12 (T - 15))), 1 at 15 C; 10.5 C as AMGv2 has the same curve (Clivot et al. 2019); the others by hand. */
    @ParameterizedTest
    @CsvSource({"15, 1", "10.5, 0.59264", "5, 0.30985", "25, 3.03816"})
    void warmthOfHumus(double celsius, double expected) {
        assertThat(RESPONSES.humusWarmth(celsius)).isCloseTo(expected, within(1e-5));
    }

    /** hminm 0.25, hoptm 0.90. */
    @ParameterizedTest
    @CsvSource({"0.20, 0.6410", "0.075, 0", "0.02, 0", "0.27, 1", "0.40, 1"})
    void moisture(double content, double expected) {
        assertThat(RESPONSES.water(content, 0.30)).isCloseTo(expected, within(1e-4));
    }

    @Test
    void ratiosAtTheCarbonToNitrogenOf15() {
        Decay decay = WORKED_IN.asPublished(15);
        assertThat(decay.k()).isCloseTo(0.15067, within(1e-5));
        assertThat(decay.h()).isCloseTo(0.5655, within(1e-4));
        assertThat(decay.after(60).residue()).isCloseTo(0.0001, within(1e-4));
        assertThat(decay.after(60).shareOfNitrogen()).isCloseTo(0.2408, within(1e-4));
    }

    /** Share of a residue's nitrogen set free, worked in, after 60 and 168 normalised days and in the end. */
    @ParameterizedTest
    @CsvSource({
        "8, 0.483, , 0.646",
        "10, 0.364, 0.509, 0.584",
        "12, 0.321, 0.457, 0.527",
        "15, 0.241, 0.378, 0.448",
        "20, 0.090, 0.247, 0.327",
        "25, -0.066, 0.120, 0.216",
        "30, -0.224, , 0.111",
        "35, -0.382, , 0.009",
        "40, -0.541, -0.243, -0.089",
        "60, -1.173, , -0.469",
        "90, -2.119, , -1.017"
    })
    void nitrogenByCarbonToNitrogen(double ratio, double after60, Double after168, double inTheEnd) {
        Decay decay = WORKED_IN.asPublished(ratio);
        assertThat(decay.after(60).shareOfNitrogen()).isCloseTo(after60, within(6e-4));
        assertThat(decay.finallyLeft().shareOfNitrogen()).isCloseTo(inTheEnd, within(6e-4));
        if (after168 != null) {
            assertThat(decay.after(168).shareOfNitrogen()).isCloseTo(after168, within(6e-4));
        }
    }

    @Test
    void locksUpInTheEndFromACarbonToNitrogenOfAbout35() {
        assertThat(WORKED_IN.asPublished(34).finallyLeft().shareOfNitrogen()).isCloseTo(0.030, within(1e-3));
        assertThat(WORKED_IN.asPublished(35.3).finallyLeft().shareOfNitrogen()).isPositive();
        assertThat(WORKED_IN.asPublished(35.7).finallyLeft().shareOfNitrogen()).isNegative();
        assertThat(WORKED_IN.asPublished(40).finallyLeft().shareOfNitrogen()).isCloseTo(-0.089, within(1e-3));
    }

    /** Justes, Mary and Nicolardot 2009 (abstract): 25 catch crops, 168 d: 59 to 68 % of the carbon breathed out. */
    @ParameterizedTest
    @ValueSource(doubles = {15, 20, 25, 30, 34})
    void carbonLiesWithinWhatJustesMeasured(double ratio) {
        assertThat(WORKED_IN.asPublished(ratio).after(168).respired()).isBetween(0.59, 0.68);
    }

    /** The same: -4.9 to +38.0 mg N per g of carbon. The module alone misses it by half at C:N 9.5; taken as 12 it does not. */
    @Test
    void nitrogenBelow12IsKnownToBeTooHighAndIsTakenAs12() {
        assertThat(WORKED_IN.asPublished(9.5).after(168).nitrogenFreed() * 1000).isCloseTo(55.7, within(0.1));
        assertThat(WORKED_IN.of(9.5).after(168).nitrogenFreed() * 1000).isCloseTo(38.1, within(0.1));
        assertThat(WORKED_IN.of(34).after(168).nitrogenFreed() * 1000).isBetween(-4.9, 38.0);
    }

    /** Lettuce, C:N 12.5, chopped and harrowed in, 18 C, 21 d, at field capacity. */
    @Test
    void lettuceHarrowedIn() {
        double days = 21 * RESPONSES.residueWarmth(18);
        Decay decay = WORKED_IN.asPublished(12.5);
        assertThat(days).isCloseTo(27.77, within(0.01));
        assertThat(decay.k()).isCloseTo(0.1608, within(1e-4));
        assertThat(decay.after(days).residue()).isCloseTo(0.012, within(5e-4));
        assertThat(decay.after(days).shareOfNitrogen()).isCloseTo(0.23, within(5e-3));
        assertThat(decay.finallyLeft().shareOfNitrogen()).isCloseTo(0.51, within(5e-3));
    }

    /** Brussels-sprout stalks, C:N 16, 42 d at 12 C: shredded on top and drying; the same under a tarp; harrowed in. */
    @ParameterizedTest
    @CsvSource({
        "ON_TOP, 12, 0.6, 18.9, 0.49, 0.13",
        "ON_TOP, 14, 1.0, 38.2, 0.24, 0.21",
        "WORKED_IN, 12, 0.8, 25.2, 0.024, 0.12"
    })
    void sproutStalks(Placement placement, double celsius, double water, double days, double left, double freed) {
        double tau = 42 * RESPONSES.residueWarmth(celsius) * water;
        Decay.Pools pools = (placement == Placement.ON_TOP ? ON_TOP : WORKED_IN)
                .asPublished(16)
                .after(tau);
        assertThat(tau).isCloseTo(days, within(0.05));
        assertThat(pools.residue()).isCloseTo(left, within(5e-3));
        assertThat(pools.shareOfNitrogen()).isCloseTo(freed, within(6e-3));
    }

    /** Rye, 70 d at 15 C, moist, worked in: about nothing at C:N 25, half its own nitrogen again locked up at 40. */
    @ParameterizedTest
    @CsvSource({"25, -0.04", "40, -0.50"})
    void rye(double ratio, double freed) {
        assertThat(WORKED_IN.asPublished(ratio).after(70).shareOfNitrogen()).isCloseTo(freed, within(6e-3));
    }
}
