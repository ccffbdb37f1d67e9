package bedledger.projections.outside.compost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.Feedstock;
import bedledger.projections.compost.Addition;
import bedledger.projections.compost.Blend;
import bedledger.projections.compost.Goal;
import bedledger.projections.compost.Ingredient;
import bedledger.projections.compost.Ingredients;
import bedledger.projections.tables.Tables;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Source: Cornell Waste Management Institute, Cornell Composting, Science and Engineering. The two equations:
 * compost.css.cornell.edu/calc/2.html (structure read). Grass 77 % and leaves 35 % to 60 % water, 6.8 kg: the moisture page of the
 * series, read in a copy (jerrysplantsonline.com, calculating_moisture_content). C 45, N 2.4 and C 50, N 0.75, to C:N 30, 3.5 kg: the
 * C/N page, from memory; 3.474 is worked out from its equation. %C = %N x C/N: compost.css.cornell.edu/calc/cn_ratio.html (read).
 */
class CornellMixingTest {
    private static final Tables TABLES = Tables.bundled();
    private static final String GRASS = "grass 10kg 77% water 45% C 2.4% N";
    private static final String LEAVES = "leaves 35% water 50% C 0.75% N";

    @Test
    void leavesBringWetGrassToSixtyPercentWater() {
        Addition leaves = Addition.to(Goal.WATER, 0.60, blend(GRASS), ingredient(LEAVES));
        assertThat(leaves.kilograms().orElseThrow().best()).isCloseTo(6.80, within(0.01));
        assertThat(leaves.mix().orElseThrow().water().orElseThrow().best()).isCloseTo(0.60, within(1e-9));
        assertThat(leaves.mix().orElseThrow().carbonToNitrogen().orElseThrow().best())
                .isCloseTo(36.7, within(0.05));
    }

    @Test
    void leavesBringGrassToThirtyToOne() {
        Addition leaves = Addition.to(Goal.CARBON_TO_NITROGEN, 30, blend(GRASS), ingredient(LEAVES));
        assertThat(leaves.kilograms().orElseThrow().best()).isCloseTo(3.474, within(0.01));
        assertThat(leaves.mix().orElseThrow().carbonToNitrogen().orElseThrow().best())
                .isCloseTo(30.0, within(1e-9));
        assertThat(blend(GRASS, "leaves 3.474kg 35% water 50% C 0.75% N")
                        .carbonToNitrogen()
                        .orElseThrow()
                        .best())
                .isCloseTo(30.0, within(0.01));
    }

    @Test
    void carbonIsNitrogenTimesTheirRatio() {
        assertThat(ingredient("grass 2.4% N C:N 18.75").carbon().orElseThrow().best())
                .isCloseTo(0.45, within(1e-12));
    }

    @Test
    void theTableHoldsTheGrassAndLeavesOfTheExample() {
        assertThat(blend("grass clippings 10kg", "leaves 3.474kg")
                        .carbonToNitrogen()
                        .orElseThrow()
                        .best())
                .isCloseTo(30.0, within(0.01));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void agreesWithHalvingUntilTheMixFits(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        List<String> mix = new ArrayList<>();
        for (int at = random.nextInt(1, 4); at > 0; at--) {
            mix.add("one " + figure(random, 1, 500) + "kg " + shares(random, 60, 90, 8, 20));
        }
        String brown = "brown " + shares(random, 5, 40, 60, 400);
        double ratio = random.nextDouble(22, 55);
        double water = random.nextDouble(0.45, 0.58);
        agrees(
                Goal.CARBON_TO_NITROGEN,
                ratio,
                mix,
                brown,
                made -> made.carbonToNitrogen().orElseThrow().best());
        agrees(
                Goal.WATER,
                water,
                mix,
                brown,
                made -> -made.water().orElseThrow().best());
    }

    /** The mix rises with the amount in the figure looked at, from below the goal to above it; so halving finds the amount. */
    private static void agrees(
            Goal goal, double wanted, List<String> mix, String brown, ToDoubleFunction<Blend> rising) {
        double target = goal == Goal.WATER ? -wanted : wanted;
        double low = 0;
        double high = 1e6;
        for (int step = 0; step < 80; step++) {
            double middle = (low + high) / 2;
            List<String> all = new ArrayList<>(mix);
            all.add(brown.replaceFirst(" ", " " + String.format(Locale.ROOT, "%.9fkg ", middle)));
            if (rising.applyAsDouble(blend(all.toArray(String[]::new))) < target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double solved = Addition.to(goal, wanted, blend(mix.toArray(String[]::new)), ingredient(brown))
                .kilograms()
                .orElseThrow()
                .best();
        assertThat(solved).isCloseTo(low, within(1e-6 * Math.max(1, low)));
    }

    private static String shares(
            RandomGenerator random, double driest, double wettest, double lowRatio, double highRatio) {
        return figure(random, driest, wettest) + "% water " + figure(random, 35, 50) + "% C C:N "
                + figure(random, lowRatio, highRatio);
    }

    private static String figure(RandomGenerator random, double low, double high) {
        return String.format(Locale.ROOT, "%.3f", random.nextDouble(low, high));
    }

    private static Blend blend(String... feedstocks) {
        return Blend.of(List.of(feedstocks).stream().map(Feedstock::parse).toList(), TABLES);
    }

    private static Ingredient ingredient(String feedstock) {
        return Ingredients.of(Feedstock.parse(feedstock), TABLES);
    }
}
