package bedledger.cli.read;

import bedledger.language.BedId;
import bedledger.projections.breakdown.BedBreakdown;
import bedledger.projections.breakdown.Breakdown;
import bedledger.projections.breakdown.Use;
import bedledger.projections.weather.FarmWeather;
import java.time.LocalDate;
import java.util.List;

/** What a bed's page says of what is left on it, where the bed waits and the book has weather. */
final class BedReady {
    private BedReady() {}

    static List<String> words(ReadBook book, BedId bed, LocalDate day) {
        if (!Breakdown.waits(book.farm(), bed, day)) {
            return List.of();
        }
        WeatherFolder folder = WeatherFolder.of(book);
        FarmWeather weather = folder.weather(book);
        if (folder.isEmpty(weather)) {
            return List.of();
        }
        return Breakdown.of(book.farm(), book.tables(), weather, day, bed).stream()
                .map(BedReady::words)
                .toList();
    }

    private static String words(BedBreakdown bed) {
        if (!bed.isComplete()) {
            return "ready date incomplete: " + bed.missing().get(0);
        }
        String left =
                bed.left().map(each -> "left: " + each.inWords() + " dry; ").orElse("");
        return left
                + bed.ready(Use.FINE_SEED)
                        .map(date -> "ready for fine seed " + date.words())
                        .orElse("no date")
                + ": an estimate, your look decides (bedledger ready " + bed.bed() + ")";
    }
}
