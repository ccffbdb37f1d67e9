package bedledger.projections.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.BedId;
import bedledger.language.SeasonBook;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Returned;
import bedledger.projections.tables.Parameters;
import bedledger.projections.tables.Tables;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SoilTest {
    private static final Tables TABLES = Tables.bundled();
    private static final SoilOptions CLIMATE = new SoilOptions(
            20,
            OptionalDouble.of(10.5),
            OptionalDouble.of(100),
            OptionalDouble.empty(),
            OptionalDouble.of(0),
            OptionalDouble.empty(),
            OptionalDouble.of(10));
    private final SeasonBook book = new SeasonBook();

    @BeforeEach
    void beds() {
        book.on("2024-02-01").did("register-field", "field=West", "gross=0.02ha");
        book.did("lay-out", "beds=W1 W2", "field=West", "length=10m", "width=1m");
    }

    private BedSoil w1(SoilOptions given) {
        Returned returned = Returned.of(book.farm(), TABLES, LocalDate.parse("2025-12-31"), Options.DEFAULT);
        return Soil.of(book.farm(), returned, Weather.NONE, Options.DEFAULT, given, bed -> bed.equals(new BedId("W1")))
                .beds()
                .get(0);
    }

    private void sample(String day, String beds, String carbon) {
        book.on(day)
                .did(
                        "sample-soil",
                        "beds=" + beds,
                        "from-depth=0cm",
                        "to-depth=20cm",
                        carbon,
                        "carbon-method=combustion",
                        "laboratory=Marsh Lab",
                        "bulk-density=1.28g/cm3",
                        "stones=4%",
                        "ph=6.8",
                        "clay=18%");
    }

    @Test
    void theStockIsOfTheFineEarthAndTheDepthSampled() {
        sample("2025-10-05", "W1 W2", "organic-carbon=1.9%");
        assertThat(w1(CLIMATE).stock().orElseThrow().best()).isCloseTo(46.694, within(1e-3));
        assertThat(w1(CLIMATE).change()).isEmpty();
    }

    @Test
    void twoCompositesOfSeveralBedsNeverShowAChange() {
        sample("2024-10-05", "W1 W2", "organic-carbon=1.9%");
        sample("2025-10-05", "W1 W2", "organic-carbon=2.9%");
        assertThat(w1(CLIMATE).change().orElseThrow().says()).isEqualTo(CarbonChange.Says.CANNOT_BE_KNOWN);
    }

    @ParameterizedTest
    @CsvSource({"0.6, ROSE", "0.1, TOO_SMALL", "-0.6, FELL"})
    void fiveSamplesEachTimeShowAChangeThatIsLargeEnough(double change, CarbonChange.Says says) {
        for (double each : new double[] {1.80, 1.90, 2.00, 2.10, 2.20}) {
            sample("2024-10-05", "W1", "organic-carbon=" + each + "%");
        }
        for (double each : new double[] {1.80, 1.90, 2.00, 2.10, 2.20}) {
            sample("2025-10-05", "W1", String.format(java.util.Locale.ROOT, "organic-carbon=%.2f%%", each + change));
        }
        CarbonChange judged = w1(CLIMATE).change().orElseThrow();
        assertThat(judged.says()).isEqualTo(says);
        assertThat(judged.leastDetectable().orElseThrow()).isCloseTo(0.3414, within(1e-3));
    }

    @Test
    void samplesOfAnotherSeasonCannotBeCompared() {
        for (String day : new String[] {"2024-04-01", "2025-10-05"}) {
            sample(day, "W1", "organic-carbon=1.9%");
            sample(day, "W1", "organic-carbon=" + (day.startsWith("2024") ? "2.0%" : "4.0%"));
        }
        assertThat(w1(CLIMATE).change().orElseThrow().says()).isEqualTo(CarbonChange.Says.NOT_COMPARABLE);
    }

    @Test
    void organicMatterGoesByTheLaboratorysFactorOrIsDoubted() {
        book.on("2025-10-05")
                .did(
                        "sample-soil",
                        "beds=W1",
                        "from-depth=0cm",
                        "to-depth=20cm",
                        "organic-matter=3.448%",
                        "matter-factor=1.724");
        book.did("sample-soil", "beds=W2", "from-depth=0cm", "to-depth=20cm", "organic-matter=3.8%");
        SamplingReading reading =
                new SamplingReading(book.farm(), LocalDate.parse("2025-12-31"), Parameters.of("soil-carbon"));
        SampledLayer known = reading.of(new BedId("W1")).get(0).layers().get(0);
        assertThat(known.carbon().orElseThrow().best()).isCloseTo(2.0, within(1e-9));
        Sampling doubted = reading.of(new BedId("W2")).get(0);
        assertThat(doubted.layers().get(0).carbon().orElseThrow().best()).isCloseTo(2.0, within(1e-9));
        assertThat(doubted.layers().get(0).carbon().orElseThrow().high()).isCloseTo(3.8 / 1.4, within(1e-6));
        assertThat(doubted.words().get(0)).contains("1.724").contains("1.9").contains("2.0");
        assertThat(doubted.missing()).anyMatch(each -> each.startsWith("bulk density"));
        assertThat(doubted.stock()).isEmpty();
    }

    @Test
    void amgRunsOnWhatTheBookSaysAndNamesWhatItDoesNot() {
        sample("2025-10-05", "W1 W2", "organic-carbon=1.9%");
        book.on("2025-04-01").did("spread", "beds=W1", "manure=cattle", "quantity=100kg");
        BedSoil bed = w1(CLIMATE);
        SoilBalance amg = bed.balances().get(0);
        assertThat(amg.equation()).startsWith("AMGv2");
        assertThat(amg.rate().orElseThrow().best()).isCloseTo(0.074018, within(1e-6));
        double humified = 100 * 0.25 * 0.37 * 0.64 / 10 * 10 / 2;
        assertThat(amg.formed().orElseThrow().best()).isCloseTo(humified, within(1e-9));
        Amg pure = new Amg(Parameters.of("soil-carbon"));
        assertThat(amg.after().orElseThrow().best())
                .isCloseTo(
                        pure.stock(
                                bed.stock().orElseThrow().best(),
                                humified,
                                amg.rate().orElseThrow().best(),
                                20),
                        within(1e-9));
        assertThat(amg.after().orElseThrow().low())
                .isLessThan(amg.after().orElseThrow().best());
        assertThat(bed.seasonsCounted()).isEqualTo("2024 to 2025");
    }

    @Test
    void withoutTemperatureAmgSaysNothing() {
        sample("2025-10-05", "W1 W2", "organic-carbon=1.9%");
        SoilBalance amg = w1(SoilOptions.DEFAULT).balances().get(0);
        assertThat(amg.after()).isEmpty();
        assertThat(amg.missing()).anyMatch(each -> each.startsWith("mean temperature"));
        assertThat(amg.missing()).anyMatch(each -> each.startsWith("carbonate: taken as 0"));
    }

    @Test
    void withNothingReturnedTheStockFalls() {
        sample("2025-10-05", "W1 W2", "organic-carbon=1.9%");
        BedSoil bed = w1(CLIMATE);
        bed.balances()
                .forEach(each -> assertThat(each.after().orElseThrow().best())
                        .isLessThan(bed.stock().orElseThrow().best()));
        assertThat(bed.missing()).anyMatch(each -> each.startsWith("nothing on record went back"));
    }
}
