package bedledger.projections.outside.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.Farm;
import bedledger.projections.weather.CsvWeather;
import bedledger.projections.weather.DailyFile;
import bedledger.projections.weather.DayWeather;
import bedledger.projections.weather.DegreeDays;
import bedledger.projections.weather.FarmWeather;
import bedledger.projections.weather.Origin;
import bedledger.projections.weather.Weather;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DegreeDaysTest {
    private static final LocalDate DAY = LocalDate.parse("2025-07-01");
    private static final LocalDate LATEST = LocalDate.parse("2025-12-31");

    private static DailyFile seattle() {
        return CsvWeather.read(
                "seattle-2012-2015.csv",
                new InputStreamReader(
                        Objects.requireNonNull(DegreeDaysTest.class.getResourceAsStream("seattle-2012-2015.csv")),
                        StandardCharsets.UTF_8));
    }

    private static DayWeather day(double minC, double maxC) {
        return new DayWeather(DAY, minC, maxC, OptionalDouble.empty(), Origin.NOTED, Optional.empty());
    }

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) * 5 / 9;
    }

    /** npm vega-datasets 3.2.1, data/seattle-weather.csv (NOAA): row counts and sums computed from the package elsewhere. */
    @Test
    void readsEveryRowOfThePublishedSeries() {
        DailyFile file = seattle();
        assertThat(file.days()).isEqualTo(1461);
        assertThat(file.missing()).isZero();
        assertThat(file.withoutRain()).isZero();
        assertThat(file.first()).contains(LocalDate.parse("2012-01-01"));
        assertThat(file.last()).contains(LocalDate.parse("2015-12-31"));
    }

    /** The same package; mean method, degree days above the base over each calendar year. */
    @ParameterizedTest
    @CsvSource({"2012, 5, 2396.20", "2013, 5, 2720.7", "2014, 5, 2941.3", "2015, 5, 3017.95", "2012, 10, 1133.4"})
    void sumsOfThePublishedSeries(int year, double base, double expected) {
        Weather weather = FarmWeather.of(Farm.of(List.of()), List.of(seattle()), Optional.empty(), LATEST);
        OptionalDouble sum = DegreeDays.over(
                weather, LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31), day -> DegreeDays.mean(day, base));
        assertThat(sum.orElseThrow()).isCloseTo(expected, within(0.05));
    }

    /** Iowa State University, Agronomy 541, lesson 2b: maximum 70 F, minimum 50 F, base 50 F makes 10 F days, by either method. */
    @Test
    void iowaExample() {
        DayWeather day = day(celsius(50), celsius(70));
        assertThat(DegreeDays.mean(day, celsius(50)) * 9 / 5).isCloseTo(10, within(1e-9));
        assertThat(DegreeDays.modified(day) * 9 / 5).isCloseTo(10, within(1e-9));
    }

    /** The same lesson: a minimum below 50 F is raised to it, a maximum above 86 F is cut to it; 40 and 96 F count as 50 and 86. */
    @Test
    void modifiedMethodRaisesAndCuts() {
        assertThat(DegreeDays.modified(day(celsius(40), celsius(96))) * 9 / 5).isCloseTo(18, within(1e-9));
        assertThat(DegreeDays.modified(day(celsius(30), celsius(40)))).isCloseTo(0, within(1e-9));
    }

    /** Midwestern Regional Climate Center, mrcc.illinois.edu/gismaps/info/gddinfo.htm: mean 75 F, base 65 F makes 10. */
    @Test
    void midwestExample() {
        assertThat(DegreeDays.mean(day(celsius(65), celsius(85)), celsius(65)) * 9 / 5)
                .isCloseTo(10, within(1e-9));
    }

    /** NIST Handbook 44, Appendix C: 1 inch is 25.4 mm; degrees Fahrenheit by definition. */
    @Test
    void readsUsCustomaryUnits() {
        DailyFile file =
                CsvWeather.read("us.csv", new StringReader("max_f,date,rain_in,min_f\n86,2025-07-01,0.5,50\n"));
        DayWeather day = FarmWeather.of(Farm.of(List.of()), List.of(file), Optional.empty(), LATEST)
                .on(DAY)
                .orElseThrow();
        assertThat(day.minC()).isCloseTo(10, within(1e-9));
        assertThat(day.maxC()).isCloseTo(30, within(1e-9));
        assertThat(day.rainMm().orElseThrow()).isCloseTo(12.7, within(1e-9));
    }
}
