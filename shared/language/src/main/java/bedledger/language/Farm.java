package bedledger.language;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What a set of entries says: which are in force, in which order, and the timeline of every place they touch.
 *
 * <p>The domain checks against it and the projections fold over it. Given the same entries it says the same, in whatever order they
 * are handed in. Made from only the entries that touch some places, it says the same of those places as made from all.
 */
public final class Farm {
    private final List<Entry> written;
    private final Standing standing;
    private final Map<Place, List<Entry>> byPlace = new LinkedHashMap<>();
    private final Map<Place, Timeline<?>> timelines = new HashMap<>();
    private final Map<Class<?>, List<Entry>> byKind = new HashMap<>();

    private Farm(Collection<Entry> entries) {
        this.written = entries.stream()
                .sorted(java.util.Comparator.comparingLong(Entry::number))
                .toList();
        this.standing = Standing.of(written);
        for (Entry entry : standing.inForce()) {
            entry.fact()
                    .places()
                    .forEach(place -> byPlace.computeIfAbsent(place, p -> new ArrayList<>())
                            .add(entry));
        }
    }

    public static Farm of(Collection<Entry> entries) {
        return new Farm(entries);
    }

    /** All entries, in the order written. */
    public List<Entry> written() {
        return written;
    }

    public Standing standing() {
        return standing;
    }

    /** The entries in force, in the order of the work. */
    public List<Entry> inForce() {
        return standing.inForce();
    }

    /** Every place that an entry in force touches, in the order first touched. */
    public Set<Place> places() {
        return java.util.Collections.unmodifiableSet(byPlace.keySet());
    }

    /** The beds that were ever laid out, in natural order (N2 before N10). */
    public List<BedId> beds() {
        return byPlace.keySet().stream()
                .filter(BedId.class::isInstance)
                .map(BedId.class::cast)
                .filter(bed -> bed(bed).now().laidOut() != null)
                .sorted(java.util.Comparator.comparing(BedId::name, NaturalOrder.INSTANCE))
                .toList();
    }

    /** The timeline of a bed; a part of a split bed begins with the timeline of the whole. */
    @SuppressWarnings("unchecked")
    public Timeline<BedState> bed(BedId bed) {
        Timeline<?> known = timelines.get(bed);
        if (known == null) {
            known = bedTimeline(bed, Set.of());
            timelines.put(bed, known);
        }
        return (Timeline<BedState>) known;
    }

    private Timeline<BedState> bedTimeline(BedId bed, Set<BedId> asking) {
        Set<BedId> chain = new HashSet<>(asking);
        boolean loops = !chain.add(bed);
        List<Entry> touching = loops ? List.of() : entries(bed);
        Timeline<BedState> own =
                new BedFold(bed, (parent, split) -> before(bedTimeline(parent, chain), split)).over(bed, touching);
        List<Step<BedState>> inherited = touching.stream()
                .filter(entry -> entry.fact() instanceof Land.BedSplit split
                        && split.into().contains(bed))
                .findFirst()
                .map(entry -> upTo(bedTimeline(((Land.BedSplit) entry.fact()).bed(), chain), entry))
                .orElse(List.of());
        return new Timeline<>(
                bed,
                BedState.UNKNOWN,
                Stream.concat(inherited.stream(), own.steps().stream()).toList());
    }

    private static BedState before(Timeline<BedState> parent, Entry split) {
        return parent.steps().stream()
                .filter(step -> step.entry().number() == split.number())
                .map(Step::before)
                .findFirst()
                .orElse(BedState.UNKNOWN);
    }

    private static List<Step<BedState>> upTo(Timeline<BedState> parent, Entry split) {
        return parent.steps().stream()
                .takeWhile(step -> step.entry().number() != split.number())
                .toList();
    }

    public Timeline<Opened> field(FieldId field) {
        return opened(field, OpenedFold.field(field));
    }

    public Timeline<Opened> pile(PileId pile) {
        return opened(pile, OpenedFold.pile(pile));
    }

    public Timeline<Opened> lot(LotId lot) {
        return opened(lot, OpenedFold.lot(lot));
    }

    public Timeline<Opened> trays(TrayId trays) {
        return opened(trays, OpenedFold.trays(trays));
    }

    public Timeline<Opened> sample(SampleId sample) {
        return opened(sample, OpenedFold.sample(sample));
    }

    @SuppressWarnings("unchecked")
    private Timeline<Opened> opened(Place place, OpenedFold fold) {
        return (Timeline<Opened>) timelines.computeIfAbsent(place, p -> fold.over(p, entries(p)));
    }

    /** The entries in force that touch a place, in the order of the work. */
    public List<Entry> entries(Place place) {
        return java.util.Collections.unmodifiableList(byPlace.getOrDefault(place, List.of()));
    }

    /** The facts in force of one kind, with their entries, in the order of the work. */
    public <F extends Fact> List<Entry> ofKind(Class<F> kind) {
        return byKind.computeIfAbsent(
                kind,
                asked -> standing.inForce().stream()
                        .filter(entry -> asked.isInstance(entry.fact()))
                        .toList());
    }

    /** The lots of which an entry in force speaks. */
    public List<LotId> lots() {
        return byPlace.keySet().stream()
                .filter(LotId.class::isInstance)
                .map(LotId.class::cast)
                .toList();
    }

    /** Every entry that does not fit a place it touches, by entry number, with why. */
    public Map<Long, List<Misfit>> misfits() {
        Map<Long, List<Misfit>> all = new java.util.TreeMap<>();
        Set<Place> folded = new LinkedHashSet<>(byPlace.keySet());
        folded.forEach(place -> timeline(place).steps().stream()
                .filter(step -> !step.fits() && step.misfits().stream().allMatch(samePlace(place)))
                .forEach(step -> all.computeIfAbsent(step.entry().number(), n -> new ArrayList<>())
                        .addAll(step.misfits())));
        return all;
    }

    private static Predicate<Misfit> samePlace(Place place) {
        return misfit -> misfit.place().equals(place);
    }

    private Timeline<?> timeline(Place place) {
        if (place instanceof BedId bed) {
            return bed(bed);
        }
        if (place instanceof FieldId field) {
            return field(field);
        }
        if (place instanceof PileId pile) {
            return pile(pile);
        }
        if (place instanceof TrayId trays) {
            return trays(trays);
        }
        if (place instanceof SampleId sample) {
            return sample(sample);
        }
        return place instanceof LotId lot ? lot(lot) : new Timeline<>(place, Opened.NOT_YET, List.of());
    }
}
