package bedledger.projections.trends;

import bedledger.language.BedId;
import bedledger.language.BedWork;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Step;
import bedledger.projections.history.Croppings;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Returned;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The beds of a farm over its seasons.
 *
 * @param seasons from the first act on a bed to the day asked, oldest first; empty while there is no bed
 * @param beds those there were on some day, in natural order
 * @param passes the workings of the soil, bed by bed, in the order of the work
 * @param spans what covered the beds, bed by bed, in order
 * @param tests soil tests in the order they were taken
 */
public record Trends(
        LocalDate asOf,
        List<Season> seasons,
        List<BedId> beds,
        Returned returned,
        Inputs inputs,
        List<Carted> carted,
        List<SoilPass> passes,
        List<CoverSpan> spans,
        Rotation rotation,
        List<SampledSoil> tests) {
    public Trends {
        seasons = List.copyOf(seasons);
        beds = List.copyOf(beds);
        carted = List.copyOf(carted);
        passes = List.copyOf(passes);
        spans = List.copyOf(spans);
        tests = List.copyOf(tests);
    }

    /** All beds. */
    public static Trends of(Farm farm, Tables tables, LocalDate asOf, Options options) {
        return of(farm, tables, asOf, options, List.of());
    }

    /** Some beds; all where none is named. */
    public static Trends of(Farm farm, Tables tables, LocalDate asOf, Options options, List<BedId> asked) {
        List<BedId> beds = farm.beds().stream()
                .filter(bed -> asked.isEmpty() || asked.contains(bed))
                .filter(bed -> begun(farm, bed).stream().anyMatch(day -> !day.isAfter(asOf)))
                .toList();
        List<Season> seasons = beds.stream()
                .flatMap(bed -> begun(farm, bed).stream())
                .min(LocalDate::compareTo)
                .map(first -> Season.between(first, asOf, options))
                .orElse(List.of());
        Returned returned = Returned.of(farm, tables, asOf, options);
        return new Trends(
                asOf,
                seasons,
                beds,
                returned,
                new Inputs(farm, returned, seasons, beds, options),
                carted(returned, beds, seasons),
                each(beds, bed -> SoilPass.of(farm, bed, asOf)),
                each(beds, bed -> CoverSpan.of(farm, bed, asOf)),
                new Rotation(each(beds, bed -> Croppings.of(farm, bed, asOf)), tables),
                SampledSoil.of(sampled(farm, beds, asOf)));
    }

    private static <T> List<T> each(List<BedId> beds, java.util.function.Function<BedId, List<T>> of) {
        return beds.stream().flatMap(bed -> of.apply(bed).stream()).toList();
    }

    /** The days on which something was done on a bed since it is there; the first of them begins its first season. */
    private static List<LocalDate> begun(Farm farm, BedId bed) {
        return farm.bed(bed).steps().stream()
                .filter(step -> step.after().laidOut() != null)
                .map(step -> step.entry().head().doneOn())
                .toList();
    }

    private static List<Carted> carted(Returned returned, List<BedId> beds, List<Season> seasons) {
        List<Carted> all = new ArrayList<>();
        beds.forEach(bed -> seasons.forEach(season -> all.add(Carted.of(returned, bed, season))));
        all.removeIf(Carted::isNothing);
        return all;
    }

    private static List<Entry> sampled(Farm farm, List<BedId> beds, LocalDate asOf) {
        Stream<Entry> fitting = beds.stream()
                .flatMap(bed -> farm.bed(bed).steps().stream())
                .filter(Step::fits)
                .map(Step::entry);
        return fitting.filter(entry -> entry.fact() instanceof BedWork.SoilSampled)
                .filter(entry -> !entry.head().doneOn().isAfter(asOf))
                .distinct()
                .sorted(bedledger.language.WorkOrder.OF_WORK)
                .toList();
    }

    /** The workings of one bed in one season. */
    public List<SoilPass> passes(BedId bed, Season season) {
        return passes.stream()
                .filter(pass -> pass.bed().equals(bed) && season.holds(pass.day()))
                .toList();
    }

    /** Days of a season by what covered a bed; a bed that was not there all the season has fewer in all. */
    public Map<Ground, Long> days(BedId bed, Season season) {
        Map<Ground, Long> days = new EnumMap<>(Ground.class);
        for (Ground ground : Ground.values()) {
            days.put(
                    ground,
                    spans.stream()
                            .filter(span -> span.bed().equals(bed) && span.ground() == ground)
                            .mapToLong(span -> span.daysIn(season))
                            .sum());
        }
        return Collections.unmodifiableMap(days);
    }

    /** What was hauled off a bed in a season; empty where nothing was. */
    public java.util.Optional<Carted> carted(BedId bed, Season season) {
        return carted.stream()
                .filter(each -> each.bed().equals(bed) && each.season().equals(season))
                .findFirst();
    }
}
