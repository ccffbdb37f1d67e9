package bedledger.cli.read;

import bedledger.language.BedId;
import bedledger.projections.breakdown.BedBreakdown;
import bedledger.projections.breakdown.Breakdown;
import bedledger.projections.breakdown.Use;
import bedledger.projections.estimate.MassUnit;
import bedledger.projections.weather.FarmWeather;
import java.time.LocalDate;
import java.util.List;

/** What a bed's page says of what is left on it, where the bed waits and the book has weather. */
final class BedReady {
    private BedReady() {}

    static List<String> words(ReadBook book, BedId id, LocalDate day) {
        if (!Breakdown.waits(book.farm(), id, day)) {
            return List.of();
        }
        WeatherFolder folder = WeatherFolder.of(book);
        FarmWeather weather = folder.weather(book);
        if (folder.isEmpty(weather)) {
            return List.of();
        }
        return Breakdown.of(book.farm(), book.tables(), weather, day, id).stream()
                .map(bed -> words(bed, book.massUnit()))
                .toList();
    }

    private static String words(BedBreakdown bed, MassUnit unit) {
        if (!bed.isComplete()) {
            return "ready date incomplete: " + bed.missing().get(0);
        }
        String left =
                bed.left().map(each -> "left: " + unit.words(each) + " dry; ").orElse("");
        return left
                + bed.ready(Use.FINE_SEED)
                        .map(date -> "ready for fine seed " + date.words())
                        .orElse("no date")
                + ": an estimate, your look decides (bedledger ready " + bed.bed() + ")";
    }
}
