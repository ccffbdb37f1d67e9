package bedledger.projections.nitrogen;

import bedledger.language.BedId;
import bedledger.language.Farm;
import bedledger.language.NaturalOrder;
import bedledger.projections.history.BedAreas;
import bedledger.projections.history.Flip;
import bedledger.projections.history.Flips;
import bedledger.projections.returned.Options;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;

/** The releases put together by bed, season and flip, of all beds or of some. */
public final class NitrogenTotals {
    private final Farm farm;
    private final LocalDate asOf;
    private final List<Release> releases;
    private final Options options;
    private final BedAreas areas;
    private final Map<BedId, List<Flip>> flips = new HashMap<>();

    NitrogenTotals(Farm farm, LocalDate asOf, List<Release> releases, Options options) {
        this.farm = farm;
        this.asOf = asOf;
        this.releases = releases;
        this.options = options;
        this.areas = new BedAreas(farm);
    }

    /** Everything on these beds in one. */
    public NitrogenTotal all(Predicate<BedId> beds) {
        return NitrogenTotal.of("all", OptionalDouble.empty(), asked(beds));
    }

    /** One total for each bed, in natural order. */
    public List<NitrogenTotal> byBed(Predicate<BedId> beds) {
        Map<String, List<Release>> grouped = new TreeMap<>(NaturalOrder.INSTANCE);
        asked(beds)
                .forEach(each -> grouped.computeIfAbsent(each.bed().name(), name -> new ArrayList<>())
                        .add(each));
        List<NitrogenTotal> totals = new ArrayList<>();
        grouped.forEach((bed, some) ->
                totals.add(NitrogenTotal.of(bed, OptionalDouble.of(areas.squareMetres(new BedId(bed), asOf)), some)));
        return totals;
    }

    /** One total for each season in which something went back, oldest first. */
    public List<NitrogenTotal> bySeason(Predicate<BedId> beds) {
        return grouped(
                new TreeMap<>(), beds, each -> options.season(each.piece().day()), OptionalDouble.empty());
    }

    /** One total for each flip, bed by bed, oldest first; what fell in no flip stands under its own line. */
    public List<NitrogenTotal> byFlip(Predicate<BedId> beds) {
        List<NitrogenTotal> totals = new ArrayList<>();
        for (BedId bed : farm.beds()) {
            if (beds.test(bed)) {
                totals.addAll(grouped(
                        new LinkedHashMap<>(),
                        bed::equals,
                        each -> flip(each),
                        OptionalDouble.of(areas.squareMetres(bed, asOf))));
            }
        }
        return totals;
    }

    private List<NitrogenTotal> grouped(
            Map<String, List<Release>> grouped,
            Predicate<BedId> beds,
            Function<Release, String> key,
            OptionalDouble squareMetres) {
        asked(beds)
                .forEach(each -> grouped.computeIfAbsent(key.apply(each), name -> new ArrayList<>())
                        .add(each));
        List<NitrogenTotal> totals = new ArrayList<>();
        grouped.forEach((name, some) -> totals.add(NitrogenTotal.of(name, squareMetres, some)));
        return totals;
    }

    private List<Release> asked(Predicate<BedId> beds) {
        return releases.stream().filter(each -> beds.test(each.bed())).toList();
    }

    /** The flip that a return falls in: the last that had begun, if it was not over. */
    private String flip(Release release) {
        LocalDate day = release.piece().day();
        return flips.computeIfAbsent(release.bed(), bed -> Flips.of(farm, bed, areas, asOf)).stream()
                .filter(flip -> !flip.from().isAfter(day))
                .reduce((earlier, later) -> later)
                .filter(flip -> flip.to().map(end -> !end.isBefore(day)).orElse(true))
                .map(Flip::name)
                .orElse(release.bed() + ": outside a flip");
    }
}
