package bedledger.projections.returned;

import bedledger.projections.estimate.Estimate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Pieces put together, each cause of doubt combined once.
 *
 * @param of what it is the total of: a bed, crop, flip or season
 * @param squareMetres the bed's area; empty where the total is not of one bed
 * @param measures fresh, dry, carbon, nitrogen, phosphorus
 * @param carbonToNitrogen of the pieces of which both are known
 * @param dryByKind shoots, roots, compost … apart
 * @param measured dry mass of the pieces that were measured or whose quantity was written down
 * @param estimated dry mass of the pieces inferred from yields
 * @param typicalLeftOut how many guesses from typical yields are not counted
 * @param sharedByArea whether any of it rests on sharing by area
 * @param entries the entries behind it, and behind the guesses that are not counted
 */
public record Total(
        String of,
        OptionalDouble squareMetres,
        Map<Measure, Sum> measures,
        Optional<Estimate> carbonToNitrogen,
        Map<SourceKind, Sum> dryByKind,
        Sum measured,
        Sum estimated,
        int typicalLeftOut,
        boolean sharedByArea,
        SortedSet<Long> entries) {
    private static final double SQUARE_METRES_IN_A_HECTARE = 10_000;

    public Total {
        measures = Collections.unmodifiableMap(new EnumMap<>(measures));
        EnumMap<SourceKind, Sum> kinds = new EnumMap<>(SourceKind.class);
        kinds.putAll(dryByKind);
        dryByKind = Collections.unmodifiableMap(kinds);
        entries = Collections.unmodifiableSortedSet(new TreeSet<>(entries));
    }

    static Total of(String of, OptionalDouble squareMetres, List<Portion> portions, Options options) {
        List<Portion> counted = portions.stream()
                .filter(each -> options.countTypical() || each.piece().evidence() != Evidence.TYPICAL)
                .toList();
        Map<Measure, Sum> measures = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            measures.put(measure, sum(counted, measure));
        }
        Map<SourceKind, Sum> kinds = new EnumMap<>(SourceKind.class);
        counted.forEach(each -> kinds.computeIfAbsent(
                each.piece().kind(),
                kind -> dry(counted.stream()
                        .filter(one -> one.piece().kind() == kind)
                        .toList())));
        return new Total(
                of,
                squareMetres,
                measures,
                ratio(counted),
                kinds,
                dry(counted.stream()
                        .filter(each -> each.piece().evidence().isMeasured())
                        .toList()),
                dry(counted.stream()
                        .filter(each -> !each.piece().evidence().isMeasured())
                        .toList()),
                portions.size() - counted.size(),
                counted.stream().anyMatch(Portion::byArea),
                entries(portions));
    }

    private static SortedSet<Long> entries(List<Portion> portions) {
        SortedSet<Long> entries = new TreeSet<>();
        portions.forEach(each -> entries.addAll(each.piece().entries()));
        return entries;
    }

    private static Sum sum(List<Portion> portions, Measure measure) {
        return Sum.of(portions.stream().map(each -> each.matter().get(measure)).toList());
    }

    private static Sum dry(List<Portion> portions) {
        return sum(portions, Measure.DRY);
    }

    private static Optional<Estimate> ratio(List<Portion> portions) {
        List<Matter> both = portions.stream()
                .map(Portion::matter)
                .filter(each -> each.carbon().isPresent() && each.nitrogen().isPresent())
                .filter(each -> each.nitrogen().orElseThrow().best() > 0)
                .toList();
        if (both.size() == 1) {
            return both.get(0).carbonToNitrogen();
        }
        Optional<Estimate> carbon = Sum.together(
                both.stream().flatMap(each -> each.carbon().stream()).toList());
        Optional<Estimate> nitrogen = Sum.together(
                both.stream().flatMap(each -> each.nitrogen().stream()).toList());
        return carbon.flatMap(one -> nitrogen.map(two -> one.ratioTo(two, "")));
    }

    public Sum get(Measure measure) {
        return measures.getOrDefault(measure, new Sum(Optional.empty(), 0, 0));
    }

    /** Dry mass of one kind; of no pieces where there is none of it. */
    public Sum dry(SourceKind kind) {
        return dryByKind.getOrDefault(kind, new Sum(Optional.empty(), 0, 0));
    }

    /** kg/m² of the bed; empty where the total is not of one bed, or nothing is known. */
    public Optional<Estimate> perSquareMetre(Measure measure) {
        return over(measure, 1, "kg/m²");
    }

    /** t/ha of the bed top. */
    public Optional<Estimate> tonnesPerHectare(Measure measure) {
        return over(measure, SQUARE_METRES_IN_A_HECTARE / 1000, "t/ha");
    }

    /** kg/ha of the bed top. */
    public Optional<Estimate> kilogramsPerHectare(Measure measure) {
        return over(measure, SQUARE_METRES_IN_A_HECTARE, "kg/ha");
    }

    private Optional<Estimate> over(Measure measure, double factor, String unit) {
        return squareMetres.isEmpty() || squareMetres.getAsDouble() <= 0
                ? Optional.empty()
                : get(measure)
                        .known()
                        .map(each -> each.ratioTo(Estimate.exact(squareMetres.getAsDouble() / factor, ""), unit));
    }
}
