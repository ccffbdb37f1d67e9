package bedledger.cli.write;

import bedledger.domain.Book;
import bedledger.language.BedId;
import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.FieldId;
import bedledger.language.Harvesting;
import bedledger.language.Land;
import bedledger.language.LotAmount;
import bedledger.language.LotId;
import bedledger.language.MaterialName;
import bedledger.language.PileId;
import bedledger.language.Place;
import bedledger.language.SampleId;
import bedledger.language.SeedLotId;
import bedledger.language.TrayId;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Gathers what the judgement of some lots rests on, place by place from the database's index: the lots, what they were made of, the beds
 * those grew in, and what came onto these beds.
 *
 * <p>Every rule says the same of these lots as from the whole journal; a sentence may name fewer other lots beside them.
 */
final class BehindLots {
    /** Land and inputs are asked for three years before a harvest; one more, so that what lies on the edge is there whole. */
    private static final int YEARS = 4;

    /** Land is clean after three years; two more, so that a harvest from clean land surely came between. */
    private static final int SETTLED = 5;

    private final Book book;
    private final Map<Long, Entry> found = new TreeMap<>();
    private List<Entry> harvests = List.of();

    private BehindLots(Book book) {
        this.book = book;
    }

    /**
     * By number; empty where land of the farm was declared unclean, or clean, for less than {@value #SETTLED} years before the first of
     * these harvests: which lot was picked after which, on the whole farm, then matters (a clean-out between them).
     */
    static Optional<Collection<Entry>> of(Book book, Collection<LotId> lots) {
        BehindLots behind = new BehindLots(book);
        Collection<Entry> gathered = behind.gathered(lots);
        return behind.isSettled() ? Optional.of(gathered) : Optional.empty();
    }

    private boolean isSettled() {
        Optional<LocalDate> first =
                harvests.stream().map(entry -> entry.head().doneOn()).min(Comparator.naturalOrder());
        return first.isEmpty()
                || book.ofKind(Land.LandUseDeclared.class).stream()
                        .map(entry -> (Land.LandUseDeclared) entry.fact())
                        .flatMap(declared -> Stream.of(declared.lastApplied(), declared.noneSince()))
                        .filter(Objects::nonNull)
                        .noneMatch(day -> day.plusYears(SETTLED).isAfter(first.get()));
    }

    private Collection<Entry> gathered(Collection<LotId> lots) {
        Set<LotId> made = new HashSet<>(lots);
        follow(made, entry -> parts(entry, made));
        // Those on the same invoices are there with how they began, so that nothing that names both seems not to fit.
        Set<LotId> beside = places(found.values(), LotId.class);
        beside.removeAll(made);
        List<Entry> ofLots = List.copyOf(found.values());
        ask(beside);
        harvests = ofLots.stream()
                .filter(entry ->
                        entry.fact() instanceof Harvesting.Harvested harvested && made.contains(harvested.lot()))
                .toList();
        Set<BedId> beds = places(harvests, BedId.class);
        Collection<Entry> onBeds = follow(
                beds, entry -> entry.fact() instanceof Land.BedSplit ? places(List.of(entry), BedId.class) : Set.of());
        LocalDate since = harvests.stream()
                .map(entry -> entry.head().doneOn())
                .min(Comparator.naturalOrder())
                .orElse(LocalDate.MAX)
                .minusYears(harvests.isEmpty() ? 0 : YEARS);
        Set<Place> behind = Stream.concat(ofLots.stream(), onBeds.stream())
                .flatMap(entry -> behind(entry, since))
                .collect(Collectors.toSet());
        follow(behind, BehindLots::indoors);
        return found.values();
    }

    /** The lots that one of these was made of. */
    private static Set<LotId> parts(Entry entry, Set<LotId> made) {
        if (entry.fact() instanceof Harvesting.LotsJoined joined && made.contains(joined.into())) {
            return joined.lots().stream().map(LotAmount::lot).collect(Collectors.toSet());
        }
        return entry.fact() instanceof Harvesting.LotSplit split
                        && split.into().stream().map(LotAmount::lot).anyMatch(made::contains)
                ? Set.of(split.lot())
                : Set.of();
    }

    /** Fields of any time, all else of the years that matter. */
    private static Stream<Place> behind(Entry entry, LocalDate since) {
        boolean late = !entry.head().doneOn().isBefore(since);
        return entry.fact().places().stream()
                .filter(place -> place instanceof FieldId
                        || (late
                                && (place instanceof PileId
                                        || place instanceof MaterialName
                                        || place instanceof SeedLotId
                                        || place instanceof TrayId
                                        || place instanceof SampleId)));
    }

    /** What went into trays, mixes and piles. */
    private static Set<Place> indoors(Entry entry) {
        boolean onBeds = entry.fact().places().stream().anyMatch(BedId.class::isInstance);
        return onBeds
                ? Set.of()
                : behind(entry, LocalDate.MIN)
                        .filter(place -> !(place instanceof FieldId))
                        .collect(Collectors.toSet());
    }

    /** Asks for places, then for what their entries lead to, until nothing new turns up; adds those places to the set. */
    private <P extends Place> Collection<Entry> follow(
            Set<P> places, Function<Entry, ? extends Set<? extends P>> next) {
        Map<Long, Entry> all = new TreeMap<>();
        Set<P> asked = new HashSet<>();
        Set<P> open = new HashSet<>(places);
        while (asked.addAll(open)) {
            places.addAll(open);
            List<Entry> more = ask(open);
            more.forEach(entry -> all.put(entry.number(), entry));
            Set<P> further = new HashSet<>();
            more.forEach(entry -> further.addAll(next.apply(entry)));
            further.removeAll(asked);
            open = further;
        }
        return all.values();
    }

    private List<Entry> ask(Set<? extends Place> places) {
        List<Entry> more = places.isEmpty() ? List.of() : book.farm(places).written();
        more.forEach(entry -> found.put(entry.number(), entry));
        return more;
    }

    private static <P extends Place> Set<P> places(Collection<Entry> entries, Class<P> kind) {
        return entries.stream()
                .flatMap(entry -> entry.fact().places().stream())
                .filter(kind::isInstance)
                .map(kind::cast)
                .collect(Collectors.toSet());
    }

    /** The kinds that belong to no place and bear on every lot. */
    static Stream<Class<? extends Fact>> everywhere() {
        return Stream.of(BookKeeping.CropAdded.class, Harvesting.EquipmentCleaned.class);
    }
}
