package bedledger.projections.breakdown;

import bedledger.language.BedId;
import bedledger.language.Farm;
import bedledger.language.SeasonBook;
import bedledger.projections.tables.Tables;
import bedledger.projections.weather.CsvWeather;
import bedledger.projections.weather.DailyFile;
import bedledger.projections.weather.FarmWeather;
import bedledger.projections.weather.Weather;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** An invented farm under the weather of the published series, 2012 to 2015: beds C1 to C3 of 15 m². */
final class Coburn {
    static final Tables TABLES = Tables.bundled();
    static final DailyFile SERIES = series();
    final SeasonBook book = new SeasonBook();

    Coburn() {
        book.on("2012-01-02").did("register-field", "field=Coburn", "gross=0.02ha");
        book.did("lay-out", "beds=C1 C2 C3", "field=Coburn", "length=20m", "width=0.75m");
    }

    private static DailyFile series() {
        return CsvWeather.read(
                "seattle-2012-2015.csv",
                new InputStreamReader(
                        Objects.requireNonNull(Coburn.class.getResourceAsStream(
                                "/bedledger/projections/outside/weather/seattle-2012-2015.csv")),
                        StandardCharsets.UTF_8));
    }

    /** Broccoli on C1 and C2, cut for the last time on 2013-07-06. */
    Coburn broccoli() {
        book.on("2013-04-18").did("transplant", "beds=C1 C2", "crop=broccoli", "plants=160");
        book.on("2013-07-06")
                .did("harvest", "beds=C1 C2", "crop=broccoli", "quantity=33kg", "lot=2013/B-1", "last=yes");
        return this;
    }

    Weather weather() {
        return weather(book.farm());
    }

    static Weather weather(Farm farm) {
        return FarmWeather.of(farm, List.of(SERIES), Optional.empty(), LocalDate.parse("2015-12-31"));
    }

    Breakdown on(String day) {
        return Breakdown.of(book.farm(), TABLES, weather(), LocalDate.parse(day));
    }

    BedBreakdown bed(String bed, String day) {
        return on(day).bed(new BedId(bed)).orElseThrow();
    }
}
