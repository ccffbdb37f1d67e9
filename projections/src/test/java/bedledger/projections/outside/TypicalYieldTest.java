package bedledger.projections.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.projections.tables.Coefficient;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Tables;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Typical yields as printed, and what they come to on a bed of 100 ft at 4 ft centres (400 square feet of an acre of 43,560).
 *
 * <p>Pounds an acre: New England Vegetable Management Guide, Table 15 (low, good, excellent). Short tons an acre: Midwest
 * Vegetable Production Guide 2022 (average, good, excellent). Pounds on the bed were worked out apart from this program.
 */
class TypicalYieldTest {
    private static final double BED_OF_AN_ACRE = 400.0 / 43_560;

    @ParameterizedTest
    @CsvSource({
        "broccoli, 5000, 8000, 10000, 46, 73, 92",
        "carrot, 20000, 26000, 30000, 184, 239, 275",
        "kale, 10000, 12000, 18000, 92, 110, 165",
        "leek, 28000, 32000, 36000, 257, 294, 331",
        "garlic, 2000, 4000, 6000, 18, 37, 55",
        "onion, 26000, 36000, 46000, 239, 331, 422",
        "tomato, 22000, 26000, 30000, 202, 239, 275"
    })
    void asPrinted(String crop, double low, double good, double excellent, double lowBed, double goodBed, double best) {
        Coefficient yield =
                Tables.bundled().coefficient(crop, Quantity.TYPICAL_YIELD).orElseThrow();
        assertThat(yield.value()).isEqualTo(good);
        assertThat(yield.range()).isNotNull().satisfies(range -> {
            assertThat(range.low()).isEqualTo(low);
            assertThat(range.high()).isEqualTo(excellent);
            assertThat(range.low() * BED_OF_AN_ACRE).isCloseTo(lowBed, within(0.5));
            assertThat(range.high() * BED_OF_AN_ACRE).isCloseTo(best, within(0.5));
        });
        assertThat(yield.value() * BED_OF_AN_ACRE).isCloseTo(goodBed, within(0.5));
    }

    /** Managing Cover Crops Profitably, quoted at issuhub.com/view/index?id=3972&pageIndex=202. */
    @ParameterizedTest
    @CsvSource({
        "hairy vetch, before-flowering, 3.5, 4",
        "hairy vetch, flowering, 3, 3.5",
        "rye, before-flowering, 2, 3",
        "rye, flowering, 1.5, 2.5",
        "white mustard, flowering, 1.5, 2.5"
    })
    void nitrogenByStage(String crop, String stage, double low, double high) {
        Coefficient nitrogen = Tables.bundled().coverNitrogen(crop, stage).orElseThrow();
        assertThat(nitrogen.range()).isNotNull().satisfies(range -> {
            assertThat(range.low()).isEqualTo(low);
            assertThat(range.high()).isEqualTo(high);
        });
    }

    @ParameterizedTest
    @CsvSource({
        "rye and vetch, flowering",
        "buckwheat, flowering",
        "alfalfa, flowering",
        "rye, seed",
        "broccoli, flowering"
    })
    void nothingIsPrintedForThese(String crop, String stage) {
        assertThat(Tables.bundled().coverNitrogen(crop, stage)).isEmpty();
    }
}
