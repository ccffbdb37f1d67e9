package bedledger.projections.trends;

import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Sum;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;

/** What went back to some beds in some seasons, by source, each cause of doubt combined once. */
public final class Input {
    private static final Sum NOTHING = new Sum(Optional.empty(), 0, 0);

    private final String of;
    private final double squareMetres;
    private final List<Gain> counted;
    private final int typicalLeftOut;

    Input(String of, double squareMetres, List<Gain> counted, int typicalLeftOut) {
        this.of = of;
        this.squareMetres = squareMetres;
        this.counted = List.copyOf(counted);
        this.typicalLeftOut = typicalLeftOut;
    }

    public String of() {
        return of;
    }

    /** The area of the bed tops, m²; 0 where it is not known. */
    public double squareMetres() {
        return squareMetres;
    }

    /** How many guesses from typical yields are not counted. */
    public int typicalLeftOut() {
        return typicalLeftOut;
    }

    /** Whether nothing went back, as far as the book says; guesses left out are not nothing. */
    public boolean isNothing() {
        return counted.isEmpty() && typicalLeftOut == 0;
    }

    /** The sources there are, in the order of the kinds, measured before estimated. */
    public SortedSet<Source> sources() {
        SortedSet<Source> sources = new TreeSet<>();
        counted.forEach(gain -> sources.add(source(gain)));
        return Collections.unmodifiableSortedSet(sources);
    }

    private static Source source(Gain gain) {
        return new Source(gain.piece().kind(), isMeasured(gain));
    }

    /** Nobody weighs roots: they follow from the shoots, however well those were measured. */
    private static boolean isMeasured(Gain gain) {
        return gain.piece().evidence().isMeasured() && !gain.piece().kind().isRoots();
    }

    /** All of it, kg. */
    public Sum total(Measure measure) {
        return sum(measure, gain -> true);
    }

    /** What came from one source, kg; of no pieces where there is none of it. */
    public Sum from(Source source, Measure measure) {
        return sum(measure, gain -> source(gain).equals(source));
    }

    /** What was measured or written down, or else what was estimated, kg. */
    public Sum measured(boolean measured, Measure measure) {
        return sum(measure, gain -> isMeasured(gain) == measured);
    }

    private Sum sum(Measure measure, Predicate<Gain> which) {
        List<Optional<Estimate>> parts = counted.stream()
                .filter(which)
                .map(gain -> gain.matter().get(measure))
                .toList();
        return parts.isEmpty() ? NOTHING : Sum.of(parts);
    }

    /** A sum over the area, kg/m²; empty where the sum or the area is not known. */
    public Optional<Estimate> perSquareMetre(Sum sum) {
        return squareMetres <= 0
                ? Optional.empty()
                : sum.known().map(known -> known.ratioTo(Estimate.exact(squareMetres, ""), "kg/m²"));
    }

    /** Whether any of it rests on sharing by area what was done on several beds at once. */
    public boolean isSharedByArea() {
        return counted.stream().anyMatch(Gain::byArea);
    }

    /** The entries behind it. */
    public SortedSet<Long> entries() {
        SortedSet<Long> entries = new TreeSet<>();
        counted.forEach(gain -> entries.addAll(gain.piece().entries()));
        return Collections.unmodifiableSortedSet(entries);
    }
}
