package bedledger.projections.compost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.Feedstock;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.tables.OwnValue;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Tables;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class BlendTest {
    private static final Tables TABLES = Tables.bundled();

    @Test
    void whatIsSaidOutranksTheFarmsOwnValueAndThatTheTable() {
        OwnValue own = new OwnValue("straw", Quantity.NITROGEN_OF_DRY, 0.45, null, "laboratory, two samples");
        Tables farms = TABLES.with(List.of(own));
        assertThat(nitrogen("straw 10kg 0.9% N", farms)).isCloseTo(0.009, within(1e-12));
        assertThat(nitrogen("straw 10kg", farms)).isCloseTo(0.0045, within(1e-12));
        assertThat(nitrogen("straw 10kg", TABLES)).isNotCloseTo(0.0045, within(1e-6));
    }

    @Test
    void anUnknownIngredientLeavesTheMixIncompleteAndIsNeverTakenForNothing() {
        Blend blend = blend("grass clippings 10kg", "spent hops 5kg 80% water");
        assertThat(blend.water()).isEmpty();
        assertThat(blend.carbonToNitrogen()).isEmpty();
        assertThat(blend.missing()).containsExactly("carbon of spent hops", "nitrogen of spent hops");
    }

    @Test
    void aVolumeIsWeighedByBulkDensityWhereThereIsOneAndACountNever() {
        Estimate leaves = blend("leaves 2m3").kilograms().orElseThrow();
        assertThat(leaves.low()).isLessThan(leaves.best());
        assertThat(leaves.best()).isLessThan(leaves.high());
        assertThat(leaves.rangeUnknownFor()).isEmpty();
        assertThat(blend("leaves 3crates").missing()).containsExactly("weight of leaves");
        assertThat(blend("coffee grounds 20L").missing()).containsExactly("weight of coffee grounds");
    }

    @Test
    void waterChangesTheWaterAndLeavesTheRatio() {
        Blend dry = blend("straw 20kg", "horse manure 30kg");
        Blend wet = blend("straw 20kg", "horse manure 30kg", "water 40L");
        assertThat(wet.water().orElseThrow().best())
                .isGreaterThan(dry.water().orElseThrow().best());
        assertThat(wet.carbonToNitrogen().orElseThrow().best())
                .isCloseTo(dry.carbonToNitrogen().orElseThrow().best(), within(1e-9));
    }

    @Test
    void theDryShareOfAManureDoesNotDoubtItsNitrogenTwice() {
        Estimate ratio = blend("horse manure 100kg").carbonToNitrogen().orElseThrow();
        Estimate wetter =
                blend("horse manure 100kg 80% water").carbonToNitrogen().orElseThrow();
        assertThat(ratio.best()).isCloseTo(wetter.best(), within(1e-9));
    }

    @Test
    void theResidueOfACropIsKnownByTheCropsName() {
        assertThat(blend("tomato 40kg").carbonToNitrogen()).isPresent();
    }

    @Test
    void saysWhyNoAmountDoesIt() {
        Addition straw = Addition.to(
                Goal.CARBON_TO_NITROGEN, 15, blend("leaves 10kg"), Ingredients.of(Feedstock.parse("straw"), TABLES));
        assertThat(straw.kilograms()).isEmpty();
        assertThat(straw.none().orElseThrow()).contains("does not lie between");
    }

    @Test
    void whatIsAlreadyAtTheGoalNeedsNoMore() {
        Blend even = blend("one 10kg 60% water 45% C 1.5% N");
        Ingredient leaves = Ingredients.of(Feedstock.parse("leaves"), TABLES);
        assertThat(Addition.to(Goal.CARBON_TO_NITROGEN, 30, even, leaves)
                        .kilograms()
                        .orElseThrow()
                        .best())
                .isCloseTo(0, within(1e-9));
    }

    @Test
    void theBandHoldsWhatTheMixComesToAtEachEndOfEachFigure() {
        Estimate ratio =
                blend("grass clippings 10kg", "leaves 6kg").carbonToNitrogen().orElseThrow();
        for (String grass : List.of("1.5", "4")) {
            Blend moved = blend("grass clippings 10kg " + grass + "% N", "leaves 6kg");
            assertThat(moved.carbonToNitrogen().orElseThrow().best()).isBetween(ratio.low(), ratio.high());
        }
    }

    private static double nitrogen(String feedstock, Tables tables) {
        return Ingredients.of(Feedstock.parse(feedstock), tables)
                .nitrogen()
                .orElseThrow()
                .best();
    }

    private static Blend blend(String... feedstocks) {
        return Blend.of(Stream.of(feedstocks).map(Feedstock::parse).toList(), TABLES);
    }
}
