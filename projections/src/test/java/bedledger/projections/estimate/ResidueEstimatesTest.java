package bedledger.projections.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bedledger.projections.tables.OwnValue;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Range;
import bedledger.projections.tables.Tables;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Invented harvests, worked by hand from the table's coefficients. */
class ResidueEstimatesTest {
    private static final ResidueEstimates RESIDUE = new ResidueEstimates(Tables.bundled());

    @Test
    void broccoliFromItsHeads() {
        Residue left = RESIDUE.fromYield("broccoli", 49.5);

        assertThat(left.isComplete()).isTrue();
        assertThat(left.shoots().orElseThrow().best()).isCloseTo(25.86, within(0.005));
        assertThat(left.carbon().orElseThrow().best()).isCloseTo(10.34, within(0.005));
        assertThat(left.nitrogen().orElseThrow().best()).isCloseTo(0.672, within(0.0005));
        assertThat(left.carbonToNitrogen().orElseThrow().best()).isCloseTo(15.4, within(0.05));
        assertThat(left.roots().orElseThrow().best()).isCloseTo(3.33, within(0.005));
        assertThat(RESIDUE.fromYield("calabrese", 67.5).shoots().orElseThrow().best())
                .isCloseTo(35.26, within(0.005));
    }

    @Test
    void theBandOfBroccoliIsOneSidedAndSaysSo() {
        Estimate shoots = RESIDUE.fromYield("broccoli", 49.5).shoots().orElseThrow();
        // 49.5 kg x 0.107 = 5.2965 kg dry product; at a harvest index of 0.5 as much is left.
        assertThat(shoots.low()).isCloseTo(5.2965, within(1e-9));
        assertThat(shoots.high()).isEqualTo(shoots.best());
        assertThat(shoots.remarks())
                .anyMatch(each -> each.startsWith("one-sided") && each.contains("0.17 is the low end"))
                .anyMatch(each -> each.contains("no range known for broccoli product dry share"));
    }

    @Test
    void carbonToNitrogenDoesNotHangOnTheHarvest() {
        Estimate ratio = RESIDUE.fromYield("broccoli", 49.5).carbonToNitrogen().orElseThrow();
        assertThat(ratio.deviations()).containsOnlyKeys("broccoli residue carbon", "broccoli residue nitrogen");
        assertThat(ratio.isOneSided()).isFalse();
    }

    @Test
    void tomatoVinesLessWhatWasHauled() {
        Residue left = RESIDUE.fromYield("tomato", 144.5);
        Estimate hauled = RESIDUE.dryOfFreshResidue("tomato", 45).orElseThrow();

        assertThat(left.shoots().orElseThrow().best()).isCloseTo(7.92, within(0.005));
        assertThat(left.roots().orElseThrow().best()).isCloseTo(2.2, within(0.05));
        assertThat(hauled.inWords()).isEqualTo("6.30 kg (5.40 to 9.00)");

        Estimate returned = left.shoots().orElseThrow().minus(hauled).clippedAtZero();
        assertThat(returned.best()).isCloseTo(1.6, within(0.05));
        assertThat(returned.low()).isZero();
        assertThat(returned.remarks()).contains("low end clipped at 0");
    }

    @Test
    void aCoverCropHasNoResidueFromYieldButCompositionFromItsShoots() {
        Residue fromYield = RESIDUE.fromYield("rye", 10);
        assertThat(fromYield.shoots()).isEmpty();
        assertThat(fromYield.carbon()).isEmpty();
        assertThat(fromYield.missing()).contains("rye harvest index", "rye product dry share");

        Residue fromShoots = RESIDUE.fromShoots("rye", Estimate.measured("quadrats A", 12, 3, "kg"));
        assertThat(fromShoots.isComplete()).isTrue();
        assertThat(fromShoots.carbon().orElseThrow().best()).isCloseTo(12 * 0.42, within(1e-9));
        assertThat(fromShoots.roots().orElseThrow().best()).isCloseTo(12 * 0.213, within(1e-9));
    }

    @Test
    void missingIsNotNothing() {
        Residue okra = RESIDUE.fromYield("okra", 10);
        assertThat(okra.shoots()).isEmpty();
        assertThat(okra.isComplete()).isFalse();
        assertThat(okra.missing()).hasSize(6);
    }

    @Test
    void anOwnHarvestIndexChangesTheResidueAndItsGrounds() {
        Tables own = Tables.bundled()
                .with(List.of(new OwnValue(
                        "broccoli", Quantity.HARVEST_INDEX, 0.25, new Range(0.2, 0.3), "ten plants weighed")));
        Estimate shoots =
                new ResidueEstimates(own).fromYield("broccoli", 49.5).shoots().orElseThrow();
        assertThat(shoots.best()).isCloseTo(5.2965 * 3, within(1e-9));
        assertThat(shoots.isOneSided()).isFalse();
        assertThat(shoots.grounds().citations())
                .anyMatch(each -> each.toString().contains("ten plants weighed"));
    }

    @Test
    void harvestIndexOfOneLeavesNothingAndACropNeverLeavesLessThanNothing() {
        Tables all = Tables.bundled()
                .with(List.of(
                        new OwnValue("chives", Quantity.HARVEST_INDEX, 1, null, "cut and gone"),
                        new OwnValue("chives", Quantity.PRODUCT_DRY_SHARE, 0.1, null, "oven")));
        Estimate shoots =
                new ResidueEstimates(all).fromYield("chives", 5).shoots().orElseThrow();
        assertThat(shoots.best()).isZero();
        for (String crop : List.of("carrot", "lettuce", "onion", "sweet corn", "tomato")) {
            assertThat(RESIDUE.fromYield(crop, 10).shoots().orElseThrow().low()).isNotNegative();
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesAHarvestThatCannotBe(double fresh) {
        assertThatThrownBy(() -> RESIDUE.fromYield("kale", fresh)).hasMessageContaining("refused");
    }
}
