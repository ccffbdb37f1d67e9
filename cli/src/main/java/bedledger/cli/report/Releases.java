package bedledger.cli.report;

import bedledger.cli.read.PerArea;
import bedledger.cli.read.ReleaseFigure;
import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.nitrogen.Nitrogen;
import bedledger.projections.nitrogen.NitrogenTotal;
import bedledger.projections.nitrogen.Release;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Sum;
import bedledger.projections.trends.Season;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The nitrogen of what went back, by bed and season of its return. */
final class Releases {
    final Nitrogen nitrogen;
    final PerArea unit;
    private final SeasonsAsked asked;
    private final Map<BedId, Map<String, NitrogenTotal>> totals = new HashMap<>();
    private final Map<BedId, Map<String, List<Release>>> releases = new HashMap<>();

    Releases(SeasonsAsked asked) {
        this.asked = asked;
        PerArea exact = asked.perArea(Measure.NITROGEN);
        // No decimals: the bands are tens of kilograms wide.
        this.unit = new PerArea(exact.unit(), exact.times(), 0);
        this.nitrogen = Nitrogen.of(asked.book().farm(), asked.trends().returned(), asked.weather(), asked.options());
        nitrogen.releases()
                .forEach(each -> releases.computeIfAbsent(each.bed(), bed -> new HashMap<>())
                        .computeIfAbsent(asked.options().season(each.piece().day()), season -> new ArrayList<>())
                        .add(each));
        for (BedId bed : asked.beds()) {
            Map<String, NitrogenTotal> seasons = totals.computeIfAbsent(bed, each -> new HashMap<>());
            nitrogen.totals().bySeason(bed::equals).forEach(total -> seasons.put(total.of(), total));
        }
    }

    Optional<NitrogenTotal> total(BedId bed, Season season) {
        return Optional.ofNullable(totals.getOrDefault(bed, Map.of()).get(season.name()));
    }

    /** One sum; of no pieces where nothing went back. */
    Sum sum(BedId bed, Season season, ReleaseFigure figure) {
        return figure.of(releases.getOrDefault(bed, Map.of()).getOrDefault(season.name(), List.of()));
    }

    /** kg/m² of the bed top. */
    Optional<Estimate> perSquareMetre(BedId bed, Season season, Sum sum) {
        return asked.trends().inputs().of(bed, season).perSquareMetre(sum);
    }
}
