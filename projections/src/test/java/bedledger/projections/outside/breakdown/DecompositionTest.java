package bedledger.projections.outside.breakdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.projections.breakdown.Decomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** USDA-ARS Wind Erosion Prediction System, src/lib_decomp/decomp_process_mod.f95 (github.com/dailyerosion/weps @947a7f70). */
class DecompositionTest {
    /** The function tc with an optimum of 32 °C, worked out from that source; zero again above 32 times the root of 2. */
    @ParameterizedTest
    @CsvSource({
        "-5, 0",
        "0, 0",
        "5, 0.04823",
        "10, 0.18578",
        "15, 0.39117",
        "18, 0.53270",
        "20, 0.62866",
        "25, 0.84817",
        "32, 1",
        "45.26, 0",
        "46, 0"
    })
    void temperatureFactor(double celsius, double expected) {
        assertThat(Decomposition.temperature(celsius)).isCloseTo(expected, within(1e-4));
    }

    /** The function iwcs: 3 mm on dry residue 0.75, the next dry days 0.30 and 0.12, and nothing from the fourth on. */
    @Test
    void standingResidueWetsAndDries() {
        double wet = Decomposition.standingWater(3, 0, 0);
        double next = Decomposition.standingWater(0, wet, 1);
        double third = Decomposition.standingWater(0, next, 2);
        assertThat(wet).isCloseTo(0.75, within(1e-6));
        assertThat(next).isCloseTo(0.30, within(1e-6));
        assertThat(third).isCloseTo(0.12, within(1e-6));
        assertThat(Decomposition.standingWater(0, third, 4)).isZero();
        assertThat(Decomposition.standingWater(20, 0, 0)).isEqualTo(1);
    }

    /** RUSLE cover equation; unit test of github.com/watem-sedem/cfactor: 5000 kg/ha at 5.53 m²/kg cover 93.70 %. */
    @Test
    void coverFromMass() {
        assertThat(100 * Decomposition.cover(5.53, 0.5)).isCloseTo(93.70, within(0.01));
    }

    /** Worked out from dry bean's 2.7 m²/kg for 784 and 122 g/m² and a fifth of each: 88, 35, 28 and 6 %. */
    @ParameterizedTest
    @CsvSource({"0.784, 88", "0.1568, 35", "0.122, 28", "0.0244, 6"})
    void coverOfVegetableResidue(double kilogramsPerSquareMetre, double percent) {
        assertThat(100 * Decomposition.cover(2.7, kilogramsPerSquareMetre)).isCloseTo(percent, within(0.5));
    }
}
