package bedledger.cli.report;

import bedledger.cli.chart.Strip;
import bedledger.cli.read.PerArea;
import bedledger.cli.read.ReadBook;
import bedledger.cli.read.WeatherFolder;
import bedledger.language.BedId;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Options;
import bedledger.projections.tables.Tables;
import bedledger.projections.trends.Season;
import bedledger.projections.trends.Trends;
import bedledger.projections.weather.FarmWeather;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** What the agronomist's report is about: a book as known on a day, and what became of its beds over the seasons up to the day asked. */
record SeasonsAsked(ReadBook book, LocalDate day, Trends trends, Tables tables, Options options, FarmWeather weather) {
    static SeasonsAsked of(ReadBook book, LocalDate day) {
        Tables tables = book.tables();
        Options options = Options.DEFAULT.speaking(book.massUnit());
        return new SeasonsAsked(
                book,
                day,
                Trends.of(book.farm(), tables, day, options),
                tables,
                options,
                WeatherFolder.of(book).weather(book));
    }

    List<BedId> beds() {
        return trends.beds();
    }

    List<Season> seasons() {
        return trends.seasons();
    }

    /** No bed, so nothing to draw or list. */
    boolean isEmpty() {
        return beds().isEmpty() || seasons().isEmpty();
    }

    PerArea perArea(Measure measure) {
        return PerArea.of(book, measure);
    }

    List<Strip.Season> strips() {
        return seasons().stream()
                .map(season -> new Strip.Season(season.name(), season.from(), season.to()))
                .toList();
    }

    static String entries(Collection<Long> numbers) {
        return numbers.stream().map(number -> "#" + number).collect(Collectors.joining(" "));
    }
}
