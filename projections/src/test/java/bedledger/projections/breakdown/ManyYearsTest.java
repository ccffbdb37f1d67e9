package bedledger.projections.breakdown;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.BedId;
import bedledger.language.SeasonBook;
import bedledger.projections.weather.DayWeather;
import bedledger.projections.weather.Origin;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** A bed's age does not matter: only the last croppings are walked. */
class ManyYearsTest {
    private static SeasonBook years(int first) {
        SeasonBook book = new SeasonBook();
        book.on(first + "-01-02").did("register-field", "field=F", "gross=0.01ha");
        book.did("lay-out", "beds=A B", "field=F", "length=10m", "width=1m");
        for (int year = first; year <= 2025; year++) {
            for (int crop = 0; crop < 3; crop++) {
                int month = 3 + 3 * crop;
                book.on("%d-%02d-01".formatted(year, month)).did("sow", "beds=A", "crop=lettuce");
                book.on("%d-%02d-20".formatted(year, month + 1))
                        .did(
                                "harvest",
                                "beds=A",
                                "crop=lettuce",
                                "quantity=28kg",
                                "lot=%d/L-%d".formatted(year, crop),
                                "last=yes");
                book.did("flail", "beds=A");
            }
        }
        return book;
    }

    private static long daysRead(SeasonBook book) {
        AtomicLong read = new AtomicLong();
        Weather weather = day -> {
            read.incrementAndGet();
            return Optional.of(
                    new DayWeather(day, 5, 20, OptionalDouble.of(2), Origin.CSV_FILE, Optional.of(Origin.CSV_FILE)));
        };
        BedBreakdown bed = Breakdown.of(book.farm(), Coburn.TABLES, weather, LocalDate.parse("2025-11-05"))
                .bed(new BedId("A"))
                .orElseThrow();
        assertThat(bed.isComplete()).isTrue();
        return read.get();
    }

    @Test
    void twentyYearsReadNoMoreDaysThanThree() {
        assertThat(daysRead(years(2006))).isEqualTo(daysRead(years(2023))).isLessThan(4000);
    }
}
