package bedledger.cli.report;

import bedledger.cli.read.PerArea;
import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.nitrogen.Nitrogen;
import bedledger.projections.nitrogen.NitrogenTotal;
import bedledger.projections.nitrogen.Release;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Sum;
import bedledger.projections.trends.Season;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The nitrogen of what went back, by bed and season of its return. */
final class Releases {
    private static final Sum NOTHING = Sum.of(List.of());

    final Nitrogen nitrogen;
    final PerArea unit;
    private final SeasonsAsked asked;
    private final Map<BedId, Map<String, NitrogenTotal>> totals = new HashMap<>();

    Releases(SeasonsAsked asked) {
        this.asked = asked;
        this.unit = asked.perArea(Measure.NITROGEN);
        this.nitrogen = Nitrogen.of(asked.book().farm(), asked.trends().returned(), asked.weather(), asked.options());
        for (BedId bed : asked.beds()) {
            Map<String, NitrogenTotal> seasons = totals.computeIfAbsent(bed, each -> new HashMap<>());
            nitrogen.totals().bySeason(bed::equals).forEach(total -> seasons.put(total.of(), total));
        }
    }

    Optional<NitrogenTotal> total(BedId bed, Season season) {
        return Optional.ofNullable(totals.getOrDefault(bed, Map.of()).get(season.name()));
    }

    /** One sum of a total; of no pieces where nothing went back. */
    Sum sum(BedId bed, Season season, Function<NitrogenTotal, Sum> which) {
        return total(bed, season).map(which).orElse(NOTHING);
    }

    List<Release> residues(BedId bed, Season season) {
        return nitrogen.releases().stream()
                .filter(each -> each.bed().equals(bed) && !each.isAmendment())
                .filter(each -> season.holds(each.piece().day()))
                .toList();
    }

    /** Set free from the return to the end of the crop planted next, or so far while it stands: what PNW 636 speaks of. */
    Sum toTheNextCrop(BedId bed, Season season) {
        return Sum.of(residues(bed, season).stream()
                .filter(each -> each.following().isPresent())
                .map(Releases::toTheNextCrop)
                .toList());
    }

    private static Optional<Estimate> toTheNextCrop(Release release) {
        return release.following()
                .flatMap(next -> next.before().flatMap(one -> next.during().map(one::plus)));
    }

    /** kg/m² of the bed top. */
    Optional<Estimate> perSquareMetre(BedId bed, Season season, Sum sum) {
        return asked.trends().inputs().of(bed, season).perSquareMetre(sum);
    }
}
