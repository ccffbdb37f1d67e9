package bedledger.projections.breakdown;

import bedledger.language.ActId;
import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.BedWork;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Harvesting;
import bedledger.language.Land;
import bedledger.language.Observation;
import bedledger.projections.history.BedAreas;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The part of a book that still bears on some beds' residue, so that a book's age and size do not matter.
 *
 * <p>Kept are the entries of the last years, those that put there what lay or stood on a bed when they began, and the layout of
 * the land. Beds that were harvested or cleared together are kept together, for they are estimated together.
 */
final class Recent {
    private final Farm farm;
    private final LocalDate from;
    private final LocalDate on;
    private final Map<BedId, LocalDate> keptFrom = new HashMap<>();

    private Recent(Farm farm, LocalDate on) {
        this.farm = farm;
        this.on = on;
        this.from = on.minusYears(Constants.count("years looked back"));
    }

    /** The part that bears on these beds, and on those whose looks correct the rates. */
    static Farm of(Farm farm, Collection<BedId> wanted, LocalDate on) {
        return new Recent(farm, on).part(wanted);
    }

    private Farm part(Collection<BedId> wanted) {
        Set<BedId> asked = new LinkedHashSet<>(wanted);
        asked.addAll(lookedAt());
        Set<BedId> beds = together(asked);
        beds.forEach(bed -> keptFrom.put(bed, keptFrom(bed)));
        Set<ActId> acts = new HashSet<>();
        farm.inForce().stream().filter(this::isKept).map(Entry::act).forEach(acts::add);
        return Farm.of(farm.written().stream()
                .filter(entry -> acts.contains(entry.act()))
                .toList());
    }

    private boolean isRecent(Entry entry) {
        return !entry.head().doneOn().isBefore(from) && !entry.head().doneOn().isAfter(on);
    }

    /** Where the latest looks were taken. */
    private List<BedId> lookedAt() {
        List<BedId> beds = new ArrayList<>();
        List<Entry> all = farm.inForce();
        int counted = 0;
        for (int at = all.size() - 1; at >= 0 && counted < Constants.count("looks at most"); at--) {
            Entry entry = all.get(at);
            boolean looked =
                    entry.fact() instanceof Observation.TarpChecked || entry.fact() instanceof Observation.QuadratsCut;
            if (looked && isRecent(entry)) {
                beds.addAll(BedAreas.beds(entry));
                counted++;
            }
        }
        return beds;
    }

    private Set<BedId> together(Set<BedId> asked) {
        Set<BedId> all = new LinkedHashSet<>(asked);
        Deque<BedId> open = new ArrayDeque<>(asked);
        while (!open.isEmpty()) {
            farm.entries(open.remove()).stream()
                    .filter(entry ->
                            entry.fact() instanceof Harvesting || entry.fact() instanceof BedWork.ResidueHauledOff)
                    .filter(this::isRecent)
                    .flatMap(entry -> BedAreas.beds(entry).stream())
                    .filter(all::add)
                    .forEach(open::add);
        }
        return all;
    }

    /** The day from which a bed's entries are needed: earlier than the rest where something stood or lay there then. */
    private LocalDate keptFrom(BedId bed) {
        BedState state = farm.bed(bed).on(from.minusDays(1));
        Stream<LocalDate> stood = state.crops().stream().map(BedState.Stand::since);
        Stream<LocalDate> lay = Stream.concat(
                        state.mulches().stream(),
                        Stream.of(state.tarp(), state.drip(), state.rowCover())
                                .flatMap(laid -> Stream.ofNullable(laid)))
                .map(BedState.Laid::since);
        return Stream.concat(stood, lay)
                .min(LocalDate::compareTo)
                .filter(from::isAfter)
                .orElse(from);
    }

    private boolean isKept(Entry entry) {
        List<BedId> beds = BedAreas.beds(entry);
        return beds.isEmpty()
                || entry.fact() instanceof Land
                || beds.stream()
                        .map(keptFrom::get)
                        .anyMatch(day -> day != null && !entry.head().doneOn().isBefore(day));
    }
}
