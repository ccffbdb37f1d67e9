package bedledger.projections.outside.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedledger.language.Farm;
import bedledger.language.Refused;
import bedledger.projections.weather.DailyFile;
import bedledger.projections.weather.DayWeather;
import bedledger.projections.weather.FarmWeather;
import bedledger.projections.weather.GhcnDaily;
import bedledger.projections.weather.Origin;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * NOAA NCEI, GHCN-Daily readme, format of ".dly" files: ID 1-11, YEAR 12-15, MONTH 16-17, ELEMENT 18-21, VALUE1 22-26, MFLAG1 27,
 * QFLAG1 28, SFLAG1 29, ... VALUE31 262-266, MFLAG31 267, QFLAG31 268, SFLAG31 269; -9999 missing. The months are made up.
 */
class GhcnDailyTest {
    private static final String STATION = "USW00000001";

    /** A line with a value on given days, each "value" or "value" with its quality flag after a slash. */
    private static String line(String yearMonth, String element, String... days) {
        StringBuilder line = new StringBuilder(STATION + yearMonth + element);
        for (int day = 0; day < 31; day++) {
            String[] given = (day < days.length ? days[day] : "-9999").split("/", -1);
            line.append("%5s".formatted(given[0]))
                    .append(' ')
                    .append(given.length > 1 ? given[1] : " ")
                    .append('7');
        }
        return line.append('\n').toString();
    }

    private static DailyFile read(String... lines) {
        return GhcnDaily.read("station.dly", new StringReader(String.join("", lines)));
    }

    private static Optional<DayWeather> on(DailyFile file, String day) {
        return FarmWeather.of(Farm.of(List.of()), List.of(file), Optional.empty(), LocalDate.MAX.minusYears(1))
                .on(LocalDate.parse(day));
    }

    @Test
    void lineIsAsLongAsTheReadmeSays() {
        assertThat(line("202507", "TMAX").strip()).hasSize(269);
    }

    @Test
    void valuesAreTenths() {
        DailyFile file = read(
                line("202507", "TMAX", "283", "291"),
                line("202507", "TMIN", "-11", "150"),
                line("202507", "PRCP", "127"));
        DayWeather first = on(file, "2025-07-01").orElseThrow();
        assertThat(first.minC()).isEqualTo(-1.1);
        assertThat(first.maxC()).isEqualTo(28.3);
        assertThat(first.rainMm()).hasValue(12.7);
        assertThat(first.origin()).isEqualTo(Origin.GHCN_DAILY);
        assertThat(on(file, "2025-07-02").orElseThrow().rainMm()).isEmpty();
        assertThat(file.station()).contains(STATION);
    }

    @Test
    void lastValueOfTheMonthStandsInColumns262To266() {
        String[] month = new String[31];
        java.util.Arrays.fill(month, "-9999");
        month[30] = "305";
        String tmax = line("202507", "TMAX", month);
        assertThat(tmax.substring(261, 266)).isEqualTo("  305");
        month[30] = "155";
        assertThat(on(read(tmax, line("202507", "TMIN", month)), "2025-07-31")
                        .orElseThrow()
                        .maxC())
                .isEqualTo(30.5);
    }

    @Test
    void missingIsNotZero() {
        DailyFile file =
                read(line("202507", "TMAX", "283", "-9999", "290"), line("202507", "TMIN", "100", "90", "110"));
        assertThat(file.days()).isEqualTo(2);
        assertThat(file.missing()).isEqualTo(1);
    }

    @Test
    void valueWithAQualityFlagIsDroppedAndCounted() {
        DailyFile file = read(line("202507", "TMAX", "283", "999/X"), line("202507", "TMIN", "100", "90"));
        assertThat(file.days()).isEqualTo(1);
        assertThat(file.dropped()).isEqualTo(1);
    }

    @Test
    void otherElementsAreLeftAlone() {
        assertThat(read(line("202507", "TMAX", "283"), line("202507", "TMIN", "100"), line("202507", "SNWD", "30"))
                        .days())
                .isEqualTo(1);
    }

    @Test
    void dayThatTheMonthDoesNotHaveIsRefused() {
        String[] month = new String[30];
        java.util.Arrays.fill(month, "100");
        assertThatThrownBy(() -> read(line("202502", "TMAX", month)))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("line 1")
                .hasMessageContaining("no day 29");
    }

    @Test
    void anythingElseIsRefusedByLine() {
        assertThatThrownBy(() -> read(line("202507", "TMAX", "283"), "date,min,max and other things\n"))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("line 2");
        assertThatThrownBy(() -> read(line("202513", "TMAX", "283")))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("202513");
    }
}
