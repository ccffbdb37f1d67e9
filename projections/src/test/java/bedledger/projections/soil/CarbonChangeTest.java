package bedledger.projections.soil;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.projections.tables.Parameters;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CarbonChangeTest {
    private static final Detection DETECTION = new Detection(Parameters.of("soil-carbon"));

    @ParameterizedTest
    @CsvSource({
        "0.33, ROSE",
        "0.3240, ROSE",
        "0.3238, TOO_SMALL",
        "0.01, TOO_SMALL",
        "0, TOO_SMALL",
        "-0.3238, TOO_SMALL",
        "-0.3240, FELL",
        "-1.2, FELL"
    })
    void saysThatCarbonRoseOrFellOnlyPastTheLeastDifference(double change, CarbonChange.Says says) {
        OptionalDouble least = DETECTION.leastDifference(0.15, 5, 5);
        CarbonChange judged = new CarbonChange(change, least, true, false);
        assertThat(judged.says()).isEqualTo(says);
        boolean claims = judged.words().contains(" rose:") || judged.words().contains(" fell:");
        assertThat(claims).isEqualTo(says == CarbonChange.Says.ROSE || says == CarbonChange.Says.FELL);
    }

    @Test
    void saysNothingOfTwoCompositesHoweverFarApart() {
        CarbonChange judged = new CarbonChange(2.5, DETECTION.leastDifference(0, 1, 1), true, true);
        assertThat(judged.says()).isEqualTo(CarbonChange.Says.CANNOT_BE_KNOWN);
        assertThat(judged.words()).startsWith("No change can be told").contains("one composite of several beds");
    }

    @Test
    void saysNothingWhereTheLaboratoryWasAnother() {
        CarbonChange judged = new CarbonChange(2.5, OptionalDouble.of(0.3), false, false);
        assertThat(judged.says()).isEqualTo(CarbonChange.Says.NOT_COMPARABLE);
        assertThat(judged.words()).doesNotContain("rose");
    }

    @Test
    void noRepeatedSamplesNoLeastDifference() {
        assertThat(DETECTION.leastDifference(0.2, 1, 1)).isEmpty();
        assertThat(DETECTION.leastDifference(0, 5, 5)).isEmpty();
        assertThat(DETECTION.leastDifference(0.2, 1, 2)).isPresent();
    }

    @Test
    void moreSamplesDetectLess() {
        assertThat(DETECTION.leastDifference(0.15, 10, 10).orElseThrow())
                .isLessThan(DETECTION.leastDifference(0.15, 5, 5).orElseThrow());
    }
}
