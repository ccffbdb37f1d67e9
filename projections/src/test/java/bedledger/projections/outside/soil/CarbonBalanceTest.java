package bedledger.projections.outside.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.projections.soil.Amg;
import bedledger.projections.soil.HeninDupuis;
import bedledger.projections.soil.Icbm;
import bedledger.projections.tables.Parameter;
import bedledger.projections.tables.Parameters;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class CarbonBalanceTest {
    private static final Parameters TABLE = Parameters.of("soil-carbon");
    private static final Parameters HUMIFIED = Parameters.of("humified-share");
    private static final Amg AMG = new Amg(TABLE);
    private static final Icbm ICBM = new Icbm(TABLE);
    private static final HeninDupuis HENIN = new HeninDupuis(TABLE);

    /** Andrén and Kätterer 1997; see SOURCES.md beside the file. Without years: the steady state. */
    @ParameterizedTest
    @CsvFileSource(resources = "/bedledger/projections/outside/soil/icbm.csv", numLinesToSkip = 1)
    void icbm(
            String treatment,
            double input,
            double humified,
            double climate,
            Double young,
            Double old,
            Double years,
            double youngThen,
            double oldThen,
            Double total) {
        Icbm.Setting setting = new Icbm.Setting(input, humified, climate);
        Icbm.Pools pools = years == null
                ? ICBM.steady(setting)
                : ICBM.after(
                        new Icbm.Pools(Objects.requireNonNull(young), Objects.requireNonNull(old)), setting, years);
        assertThat(pools.young()).as(treatment).isCloseTo(youngThen, within(1e-4));
        assertThat(pools.old()).as(treatment).isCloseTo(oldThen, within(1e-4));
        if (total != null) {
            assertThat(pools.total()).as(treatment).isCloseTo(total, within(1e-4));
        }
    }

    /** AMGv2, Clivot et al. 2019, Environmental Modelling & Software 118:99-113; equations and constants in github.com/inrae/AMG_base. */
    @Test
    void amgRate() {
        assertThat(AMG.warmth(10.5)).isCloseTo(0.592639, within(1e-6));
        assertThat(AMG.water(100)).isCloseTo(0.982558, within(1e-6));
        assertThat(AMG.clay(180)).isCloseTo(0.635451, within(1e-6));
        assertThat(AMG.carbonate(0)).isEqualTo(1);
        assertThat(AMG.acidity(6.8)).isCloseTo(0.723482, within(1e-6));
        assertThat(AMG.ratio(10)).isCloseTo(0.953412, within(1e-6));
        assertThat(AMG.rate(new Amg.Site(10.5, 100, 180, 0, 6.8, 10))).isCloseTo(0.074018, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"1, 55.3616", "20, 58.9151"})
    void amgStock(double years, double expected) {
        assertThat(AMG.stock(55, 1.8, 0.074018, years)).isCloseTo(expected, within(1e-3));
    }

    @Test
    void amgLimit() {
        assertThat(AMG.limit(55, 1.8, 0.074018)).isCloseTo(60.068, within(1e-3));
    }

    /** Levavasseur et al. 2022, doi:10.1111/sum.12856, github.com/inrae/AMG_base, inputs/parameters_EOM.csv: share of applied carbon. */
    @ParameterizedTest
    @CsvSource({
        "cattle manure, 0.64",
        "compost, 0.71",
        "green compost, 0.82",
        "green and food compost, 0.77",
        "horse manure, 0.49",
        "poultry manure 60 % dry, 0.47",
        "poultry manure 20 % dry, 0.16",
        "sheep manure, 0.64",
        "goat manure, 0.64"
    })
    void humifiedOfAmendments(String material, double share) {
        assertThat(HUMIFIED.value(material, "humified share")).isEqualTo(share);
    }

    /** Solebiom project and Clivot et al. 2019, github.com/inrae/AMG_base, inputs/parameters_PLANT.csv: share of returned carbon. */
    @ParameterizedTest
    @CsvSource({
        "broccoli, 0.344",
        "lettuce, 0.344",
        "onion, 0.344",
        "spinach, 0.344",
        "snap bean, 0.34",
        "garden pea, 0.34",
        "carrot, 0.371",
        "potato, 0.238",
        "beet, 0.315",
        "wheat, 0.217",
        "straw, 0.217",
        "sweet corn, 0.233",
        "rye, 0.42",
        "hairy vetch, 0.409",
        "buckwheat, 0.329",
        "white mustard, 0.356",
        "roots, 0.40"
    })
    void humifiedOfPlants(String crop, double share) {
        assertThat(HUMIFIED.value(crop, "humified share")).isEqualTo(share);
    }

    /** Guzmán et al. 2014 gives 0.115 of residue and 0.178 of roots, ICBM 0.125 of both: two to three times less. */
    @ParameterizedTest
    @CsvSource({"broccoli, 0.115", "rye, 0.115", "roots, 0.178", "roots, 0.125"})
    void theSpreadBetweenTheSourcesIsInTheRange(String of, double other) {
        Parameter share = HUMIFIED.get(of, "humified share");
        assertThat(Objects.requireNonNull(share.range()).holds(other)).isTrue();
        assertThat(share.value() / other).isGreaterThan(2);
    }

    /** Hénin and Dupuis 1945, Rémy and Marin-Laflèche 1974: from memory. */
    @ParameterizedTest
    @CsvSource({"200, 0, 10, 0.0150", "150, 100, 12, 0.0209"})
    void heninRate(double clay, double carbonate, double celsius, double expected) {
        assertThat(HENIN.rate(clay, carbonate, celsius)).isCloseTo(expected, within(1e-4));
    }

    @Test
    void heninMatter() {
        assertThat(HENIN.matter(60, 5 * 0.15, 0.015, 10)).isCloseTo(58.607, within(1e-3));
        assertThat(HENIN.limit(5 * 0.15, 0.015)).isCloseTo(50.0, within(1e-9));
    }

    /** The ranges of k1 that French extension teaches: from memory. */
    @ParameterizedTest
    @CsvSource({
        "green manure, 0.05, 0.10",
        "vegetable leaves, 0.08, 0.15",
        "straw, 0.10, 0.20",
        "roots, 0.15, 0.20",
        "fresh manure, 0.25, 0.35",
        "rotted manure, 0.40, 0.50",
        "compost, 0.45, 0.60"
    })
    void heninIsohumic(String kind, double low, double high) {
        Parameter k1 = TABLE.get("Henin-Dupuis isohumic", kind);
        assertThat(Objects.requireNonNull(k1.range()).low()).isEqualTo(low);
        assertThat(k1.range().high()).isEqualTo(high);
    }

    /**
     * Building Soils for Better Crops, Table 3.2: 5,000 lb of residue a year on soil losing 3 % a year ends at 1.7 % organic matter,
     * 7,500 lb at 5 % a year at 1.5 %. The share of a fifth that becomes organic matter is inferred from the two results; soil
     * of an acre to 6 inches 2,000,000 lb.
     */
    @ParameterizedTest
    @CsvSource({"5000, 0.03, 1.7", "7500, 0.05, 1.5"})
    void buildingSoilsForBetterCrops(double residue, double loss, double percent) {
        double soil = 2_000_000;
        double limit = HENIN.limit(residue * 0.2, loss);
        assertThat(100 * limit / soil).isCloseTo(percent, within(0.05));
        assertThat(HENIN.matter(limit, residue * 0.2, loss, 100)).isCloseTo(limit, within(1e-6));
    }
}
