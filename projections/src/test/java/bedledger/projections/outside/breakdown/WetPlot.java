package bedledger.projections.outside.breakdown;

import bedledger.language.BedId;
import bedledger.language.SeasonBook;
import bedledger.projections.breakdown.BedBreakdown;
import bedledger.projections.breakdown.Breakdown;
import bedledger.projections.tables.OwnValue;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Tables;
import bedledger.projections.weather.DayWeather;
import bedledger.projections.weather.Origin;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** An invented bed of 10 m² in an invented climate: the same temperature every day and rain on each. */
final class WetPlot {
    static final LocalDate START = LocalDate.parse("2025-06-01");
    private static final BedId BED = new BedId("P1");
    private final SeasonBook book = new SeasonBook();
    private final double celsius;
    private Tables tables = Tables.bundled();

    WetPlot(double celsius) {
        this.celsius = celsius;
        book.on("2025-01-01").did("register-field", "field=Plot", "gross=0.01ha");
        book.did("lay-out", "beds=P1", "field=Plot", "length=10m", "width=1m");
    }

    /** A cover crop that is mown down on the first day, 5 kg dry on the bed, all of it leaf or all of it stalk. */
    WetPlot mown(String crop, boolean leaf) {
        tables = tables.with(List.of(new OwnValue(crop, Quantity.LEAF_SHARE, leaf ? 1 : 0, null, "picked apart")));
        book.on("2025-02-01").did("sow-cover", "beds=P1", "crop=" + crop);
        book.on(START.toString()).did("quadrats", "bed=P1", "weights=1250g 1250g 1250g 1250g", "frame=1m2", "dry=40%");
        book.did("end-cover", "beds=P1", "how=mown");
        return this;
    }

    WetPlot then(String word, String... options) {
        book.did(word, options);
        return this;
    }

    private Optional<DayWeather> weather(LocalDate day) {
        return Optional.of(
                new DayWeather(day, celsius, celsius, OptionalDouble.of(20), Origin.NOTED, Optional.of(Origin.NOTED)));
    }

    BedBreakdown after(int days) {
        Weather weather = this::weather;
        return Breakdown.of(book.farm(), tables, weather, START.plusDays(days))
                .bed(BED)
                .orElseThrow();
    }

    double shareLeft(int days) {
        return after(days).share().orElseThrow().best();
    }
}
