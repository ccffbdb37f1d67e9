package bedledger.projections.outside.breakdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Why the program has no decay by RUSLE: a published check of it rests on an error, which this shows.
 *
 * <p>Source of the equations: USDA Agriculture Handbook 703 (1997), eq. 5-6 and 5-7, constants To 37 °C, A 7.76 °C and R0 25.76 mm;
 * of the check (4.5 °C, 73.56 mm in the half-month, p 0.05: W 2.85559, F 0.58325, a 0.02916): the unit tests of the public
 * repository watem-sedem/cfactor. McCool's errata of 2001 (read in an excerpt of a copy) say that eq. 5-7 asks for degrees Celsius.
 * A rate p for vegetables is published nowhere that we found.
 */
class RusleErratumTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "as published: degrees and A turned into Fahrenheit, 40.1, 98.6, 45.968, 0.58325, 0.02916",
        "as the errata ask: degrees Celsius, 4.5, 37, 7.76, 0.14441, 0.00722"
    })
    void thePublishedFigureComesOutInFahrenheitOnly(
            String how, double temperature, double optimum, double a, double factor, double rate) {
        double rain = 73.56 / 25.76;
        double warmth = Math.pow((temperature + a) / (optimum + a), 2);
        double found = 2 * warmth - warmth * warmth;
        assertThat(rain).isCloseTo(2.85559, within(1e-4));
        assertThat(found).as(how).isCloseTo(factor, within(1e-4));
        assertThat(0.05 * Math.min(rain, found)).as(how).isCloseTo(rate, within(1e-4));
    }
}
