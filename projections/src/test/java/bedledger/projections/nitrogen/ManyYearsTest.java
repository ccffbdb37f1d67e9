package bedledger.projections.nitrogen;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.Farm;
import bedledger.language.SeasonBook;
import bedledger.projections.phosphorus.Phosphorus;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Returned;
import bedledger.projections.soil.Soil;
import bedledger.projections.soil.SoilOptions;
import bedledger.projections.tables.Tables;
import bedledger.projections.weather.DayWeather;
import bedledger.projections.weather.Origin;
import bedledger.projections.weather.Weather;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** A large farm after many years: the answer takes seconds, not minutes. */
class ManyYearsTest {
    private static final int BEDS = 50;
    // Of the processor, so that a busy machine does not fail it.
    private static final Duration MOST = Duration.ofSeconds(10);
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final Weather MILD =
            day -> Optional.of(new DayWeather(day, 6, 16, OptionalDouble.empty(), Origin.NORMALS, Optional.empty()));

    /** Three crops a year in each bed, each harvested, sold, flailed, tarped, harrowed; compost once a year. */
    private static Farm farm(int years) {
        SeasonBook book = new SeasonBook();
        book.on("2000-01-01").did("register-field", "field=Big", "gross=1ha");
        for (int bed = 1; bed <= BEDS; bed++) {
            book.on("2000-01-01").did("lay-out", "beds=B" + bed, "field=Big", "length=30m", "width=0.75m");
            for (int year = 2001; year <= 2000 + years; year++) {
                book.on(year + "-03-01").did("spread", "beds=B" + bed, "manure=cattle", "quantity=60kg");
                book.on(year + "-03-03").did("till", "beds=B" + bed);
                for (int crop = 0; crop < 3; crop++) {
                    flip(book, "B" + bed, year, 4 + 2 * crop);
                }
            }
        }
        return book.farm();
    }

    private static void flip(SeasonBook book, String bed, int year, int month) {
        String lot = year + "/L" + bed + month;
        book.on(date(year, month, 1)).did("transplant", "beds=" + bed, "crop=lettuce");
        book.on(date(year, month + 1, 5))
                .did("harvest", "beds=" + bed, "crop=lettuce", "quantity=40kg", "lot=" + lot, "last=yes");
        book.did("sell", "lots=" + lot + "=38kg", "as=organic");
        book.on(date(year, month + 1, 6)).did("flail", "beds=" + bed);
        book.did("tarp", "beds=" + bed);
        book.on(date(year, month + 1, 20)).did("untarp", "beds=" + bed);
        book.did("harrow", "beds=" + bed);
    }

    private static String date(int year, int month, int day) {
        return LocalDate.of(year, month, day).toString();
    }

    private static <T> T inTime(String what, Supplier<T> work) {
        long start = THREADS.getCurrentThreadCpuTime();
        T result = work.get();
        Duration took = Duration.ofNanos(THREADS.getCurrentThreadCpuTime() - start);
        assertThat(took).as(what).isLessThan(MOST);
        return result;
    }

    @Test
    void twentyYearsAnswerInSeconds() {
        Farm farm = farm(20);
        LocalDate end = LocalDate.parse("2020-12-31");
        Returned returned = Returned.of(farm, Tables.bundled(), end, Options.DEFAULT);
        Nitrogen nitrogen = inTime("nitrogen", () -> Nitrogen.of(farm, returned, MILD, Options.DEFAULT));
        assertThat(nitrogen.releases()).hasSize(BEDS * 20 * 7);
        assertThat(inTime("flips", () -> nitrogen.totals().byFlip(bed -> true))).hasSizeGreaterThan(BEDS * 59);
        assertThat(inTime(
                                "soil",
                                () -> Soil.of(farm, returned, MILD, Options.DEFAULT, SoilOptions.DEFAULT, bed -> true))
                        .beds())
                .hasSize(BEDS);
        assertThat(inTime("phosphorus", () -> Phosphorus.of(farm, Tables.bundled(), returned, Options.DEFAULT))
                        .balances())
                .hasSize(BEDS * 20);
    }
}
