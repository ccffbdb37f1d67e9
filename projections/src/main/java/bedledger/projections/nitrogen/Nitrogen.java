package bedledger.projections.nitrogen;

import bedledger.language.Farm;
import bedledger.projections.returned.BedShare;
import bedledger.projections.returned.Evidence;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.Returned;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The nitrogen of everything that went back by a day, piece by piece and bed by bed.
 *
 * @param releases in the order of the pieces; guesses from typical yields are in it only where they are counted
 * @param weather what the temperatures rest on, in words
 * @param withWeather whether any temperature is known
 */
public record Nitrogen(
        LocalDate asOf, List<Release> releases, String weather, boolean withWeather, NitrogenTotals totals) {
    public Nitrogen {
        releases = List.copyOf(releases);
    }

    public static Nitrogen of(Farm farm, Returned returned, Weather weather, Options options) {
        LocalDate asOf = returned.asOf();
        List<Return> pieces = returned.pieces().stream()
                .filter(piece -> options.countTypical() || piece.evidence() != Evidence.TYPICAL)
                .toList();
        LocalDate first =
                pieces.stream().map(Return::day).min(LocalDate::compareTo).orElse(asOf);
        ReleaseReading reading = new ReleaseReading(farm, weather, first, asOf);
        List<Release> releases = new ArrayList<>();
        for (Return piece : pieces) {
            for (BedShare share : piece.beds()) {
                releases.add(reading.of(piece, share));
            }
        }
        var coverage = weather.over(first, asOf);
        boolean any = !coverage.days().isEmpty();
        return new Nitrogen(asOf, releases, coverage.words(), any, new NitrogenTotals(farm, asOf, releases, options));
    }
}
