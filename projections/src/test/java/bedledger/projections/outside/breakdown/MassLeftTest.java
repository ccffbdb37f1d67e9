package bedledger.projections.outside.breakdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Mass left after so many wet days at one temperature, worked out from the WEPS temperature function, its leaf factor of 3 and its
 * crop records (winter wheat 0.0133, dry bean 0.02, alfalfa 0.0536) apart from this program, and asked of a whole book here.
 */
class MassLeftTest {
    /** 28 days at 18 °C: 14.9156 decomposition days. */
    @ParameterizedTest
    @CsvSource({
        "wheat, 28, 18, 0.8195, 0.5480",
        "alfalfa, 28, 18, 0.4444, 0.0815",
        "wheat, 28, 10, 0.93, 0.81",
        "alfalfa, 28, 10, 0.76, 0.43"
    })
    void stalksAndLeaves(String crop, int days, double celsius, double stalks, double leaves) {
        double tolerance = celsius == 18 ? 1e-3 : 6e-3;
        assertThat(new WetPlot(celsius).mown(crop, false).shareLeft(days)).isCloseTo(stalks, within(tolerance));
        assertThat(new WetPlot(celsius).mown(crop, true).shareLeft(days)).isCloseTo(leaves, within(tolerance));
    }

    /** The day on which four fifths are gone. */
    @ParameterizedTest
    @CsvSource({
        "wheat, 10, 651, 217",
        "wheat, 12, 463, 154",
        "wheat, 15, 309, 103",
        "wheat, 18, 227, 76",
        "wheat, 20, 192, 64",
        "alfalfa, 10, 161, 54",
        "alfalfa, 12, 115, 38",
        "alfalfa, 15, 76, 25",
        "alfalfa, 18, 56, 19",
        "alfalfa, 20, 47, 16"
    })
    void daysToLoseFourFifths(String crop, double celsius, int stalks, int leaves) {
        WetPlot stalky = new WetPlot(celsius).mown(crop, false);
        assertThat(stalky.shareLeft(stalks - 2)).isGreaterThan(0.2);
        assertThat(stalky.shareLeft(stalks + 2)).isLessThan(0.2);
        WetPlot leafy = new WetPlot(celsius).mown(crop, true);
        assertThat(leafy.shareLeft(leaves - 2)).isGreaterThan(0.2);
        assertThat(leafy.shareLeft(leaves + 2)).isLessThan(0.2);
    }

    /** Brussels-sprout stalks, wet, 42 days at 12 °C at the dry bean rate: about 80 % is still there. */
    @Test
    void sproutStalksAreStillThereAfterSixWeeks() {
        double dryBean = 1 - 0.02 * 0.2611;
        assertThat(Math.pow(dryBean, 42)).isCloseTo(0.80, within(0.005));
        double wheat = new WetPlot(12).mown("wheat", false).shareLeft(42);
        assertThat(Math.pow(wheat, 0.02 / 0.0133)).isCloseTo(0.80, within(0.005));
    }

    /** Under a tarp 2 °C warmer, WEPS: 1.41 times as fast at 10 °C and 1.24 times at 15 °C. */
    @ParameterizedTest
    @CsvSource({"10, 1.41", "15, 1.24"})
    void tarpHastens(double celsius, double times) {
        double bare = -Math.log(new WetPlot(celsius).mown("wheat", false).shareLeft(60));
        double tarped = -Math.log(new WetPlot(celsius)
                .mown("wheat", false)
                .then("tarp", "beds=P1")
                .shareLeft(60));
        assertThat(tarped / bare).isCloseTo(times, within(0.01));
    }
}
