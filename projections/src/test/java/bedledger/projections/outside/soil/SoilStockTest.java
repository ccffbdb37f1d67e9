package bedledger.projections.outside.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.projections.soil.Detection;
import bedledger.projections.soil.EquivalentMass;
import bedledger.projections.soil.Layer;
import bedledger.projections.soil.OrganicMatter;
import bedledger.projections.soil.Profile;
import bedledger.projections.tables.Parameters;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SoilStockTest {
    private static final Parameters TABLE = Parameters.of("soil-carbon");

    /**
     * Stock by definition, as in Batjes 1996: % x g/cm³ x cm, the factor is exactly 1. The second row is printed as 2.83 at
     * lalitrolaniya.github.io/wefnexus/reference/soil_carbon_stock.html, which multiplies by a stray 0.1.
     */
    @ParameterizedTest
    @CsvSource({"1.5, 1.30, 30, 0.05, 55.575", "0.65, 1.45, 30, 0, 28.275", "1.9, 1.28, 20, 0.04, 46.694"})
    void stock(double carbon, double density, double depth, double stones, double expected) {
        assertThat(new Layer(0, depth, density, carbon, stones).stock()).isCloseTo(expected, within(1e-3));
    }

    /** Pribyl 2010, Geoderma 156:75-83: 2 % carbon is 3.448, 3.80 or 4.00 % organic matter. */
    @Test
    void organicMatterByThreeFactors() {
        assertThat(new OrganicMatter(TABLE).factors().values())
                .extracting(factor -> Math.round(2000 * factor) / 1000.0)
                .containsExactly(3.448, 3.80, 4.00);
    }

    /** Ball 1964, Journal of Soil Science 15:84-92, 375 C, 16 h: from memory. */
    @Test
    void lossOnIgnition() {
        OrganicMatter matter = new OrganicMatter(TABLE);
        assertThat(matter.carbonFromIgnition(5)).isCloseTo(1.89, within(1e-9));
        assertThat(matter.carbonFromIgnition(0.5)).isZero();
    }

    /** Method of Ellert and Bettany 1995, Canadian Journal of Soil Science 75:529 (from memory); the numbers are constructed. */
    @Test
    void equivalentSoilMass() {
        Profile first = new Profile(List.of(new Layer(0, 30, 1.30, 1.50, 0)));
        Profile later = new Profile(List.of(new Layer(0, 30, 1.15, 1.70, 0), new Layer(30, 45, 1.35, 0.90, 0)));
        EquivalentMass compared = EquivalentMass.of(first, later);
        assertThat(compared.reference()).isCloseTo(3900, within(1e-9));
        assertThat(compared.first()).isCloseTo(58.500, within(1e-9));
        assertThat(compared.later()).isCloseTo(62.700, within(1e-9));
        assertThat(compared.change()).isCloseTo(4.20, within(1e-9));
        assertThat(compared.laterToDepth()).isCloseTo(58.650, within(1e-9));
        assertThat(compared.changeToDepth()).isCloseTo(0.15, within(1e-9));
    }

    /** Two-sample power formula (Zar): s 0.15 % C, 5 and 5 samples, 0.05 two-sided, power 0.85; quantiles 2.306 and 1.108. */
    @Test
    void leastDifference() {
        double least = new Detection(TABLE).leastDifference(0.15, 5, 5).orElseThrow();
        assertThat(least).isCloseTo(0.3239, within(1e-4));
        assertThat(least / Math.sqrt(2 * 0.15 * 0.15 / 5)).isCloseTo(2.306 + 1.108, within(1e-3));
    }

    /** 1 % organic matter in 0 to 15 cm at 1.3 g/cm³ is 19.5 t/ha, 45 kg on a bed of 23.2 m²: arithmetic. */
    @Test
    void onePercentOfOrganicMatter() {
        double tonnes = new Layer(0, 15, 1.3, 1, 0).stock();
        assertThat(tonnes).isCloseTo(19.5, within(1e-9));
        assertThat(tonnes / 10 * 23.2).isCloseTo(45, within(0.5));
    }
}
