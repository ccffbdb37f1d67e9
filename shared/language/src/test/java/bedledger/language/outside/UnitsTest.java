package bedledger.language.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.Quantity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Factors of the units against published ones: UCUM (ucum-essence.xml, commit d060c6d3) for the customary units; the acre against its
 * 43,560 square international feet, because UCUM's own acre is the US survey acre; 131 °F and 170 °F as 7 CFR 205.203(c)(2) has them.
 */
class UnitsTest {
    @ParameterizedTest(name = "{0} is {1} in the base unit")
    @CsvSource({
        "1 in, 0.0254",
        "1 ft, 0.3048",
        "1 yd, 0.9144",
        "1 ft2, 0.09290304",
        "1 acre, 4046.8564224",
        "1 ha, 10000",
        "1 are, 100",
        "1 lb, 453.59237",
        "16 oz, 453.59237",
        "1 short-ton, 907184.74",
        "1 gal, 3.785411784",
        "4 qt, 3.785411784",
        "8 pt, 3.785411784",
        "16 cup, 3.785411784",
        "1 fl-oz, 0.0295735295625",
        "2 tbsp, 0.0295735295625",
        "6 tsp, 0.0295735295625",
        "1 bu, 35.23907016688",
        "1 yd3, 764.554857984",
        "131 F, 55.0",
        "170 F, 76.66666666666667"
    })
    void agreeWithPublishedFactors(String quantity, double base) {
        assertThat(Quantity.parse(quantity).inBase().doubleValue()).isCloseTo(base, within(base * 1e-9));
    }
}
