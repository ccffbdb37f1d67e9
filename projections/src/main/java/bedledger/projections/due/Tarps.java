package bedledger.projections.due;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.Entry;
import bedledger.language.Observation;
import bedledger.projections.due.DueItem.Kind;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Tarps, and when they were last looked under. */
public final class Tarps {
    /**
     * Beds under one tarp, or tarps laid by one entry and looked under on the same day.
     *
     * @param laid the number of the entry that laid it
     * @param looked the last look since it was laid; null if there was none
     * @param lookedIn the number of the entry that holds it
     */
    public record Lying(
            List<BedId> beds,
            String what,
            LocalDate since,
            long laid,
            @Nullable LocalDate looked,
            @Nullable Long lookedIn) {
        public Lying {
            beds = List.copyOf(beds);
        }

        public long weeks(LocalDate day) {
            return ChronoUnit.WEEKS.between(since, day);
        }

        /** "R1, R2 under silage film for 5 weeks (since 2025-07-08, #61)". */
        public String words(LocalDate day) {
            long days = ChronoUnit.DAYS.between(since, day);
            String time = days < 14 ? days + (days == 1 ? " day" : " days") : weeks(day) + " weeks";
            return Asked.list(beds) + " under " + what + " for " + time + " (since " + since + ", #" + laid + ")";
        }

        /** "not looked under since 2025-07-29 (#70)". */
        public String lookWords() {
            return looked == null
                    ? "no look under it is recorded"
                    : "last looked under on " + looked + " (#" + lookedIn + ")";
        }
    }

    private record Same(long laid, String what, @Nullable Long lookedIn) {}

    /** What lies under tarps on the day asked. */
    public static List<Lying> lying(Asked asked) {
        Map<Same, List<BedId>> beds = new LinkedHashMap<>();
        Map<Same, Lying> first = new LinkedHashMap<>();
        for (BedId bed : asked.beds()) {
            BedState.Laid tarp = asked.state(bed).tarp();
            if (tarp != null) {
                Entry look = lastLook(asked, bed, tarp);
                Same same = new Same(tarp.entry(), tarp.what(), look == null ? null : look.number());
                beds.computeIfAbsent(same, one -> new ArrayList<>()).add(bed);
                first.putIfAbsent(
                        same,
                        new Lying(
                                List.of(bed),
                                tarp.what(),
                                tarp.since(),
                                tarp.entry(),
                                look == null ? null : look.head().doneOn(),
                                same.lookedIn()));
            }
        }
        return first.entrySet().stream()
                .map(one -> new Lying(
                        beds.getOrDefault(one.getKey(), List.of()),
                        one.getValue().what(),
                        one.getValue().since(),
                        one.getValue().laid(),
                        one.getValue().looked(),
                        one.getValue().lookedIn()))
                .toList();
    }

    private static @Nullable Entry lastLook(Asked asked, BedId bed, BedState.Laid tarp) {
        return asked.done(bed, Observation.TarpChecked.class).stream()
                .filter(entry -> !entry.head().doneOn().isBefore(tarp.since()))
                .reduce((earlier, later) -> later)
                .orElse(null);
    }

    static Stream<DueItem> of(Asked asked) {
        return lying(asked).stream().map(lying -> item(asked, lying));
    }

    private static DueItem item(Asked asked, Lying lying) {
        LocalDate from = lying.looked() == null ? lying.since() : lying.looked();
        boolean most = lying.weeks(asked.on()) >= asked.tarps().most();
        List<Long> entries = lying.lookedIn() == null ? List.of(lying.laid()) : List.of(lying.laid(), lying.lookedIn());
        return new DueItem(
                Kind.LOOK,
                from.plusWeeks(asked.tarps().look()),
                Asked.list(lying.beds()),
                Asked.sorted(lying.beds()),
                lying.words(asked.on()) + "; " + lying.lookWords()
                        + (most ? "; longer than the " + asked.tarps().most() + " weeks set" : ""),
                "",
                entries,
                "did check-tarp " + Asked.typed(lying.beds()) + " --leaves STATE --stalks STATE",
                "a setting: a look every " + asked.tarps().look() + " weeks");
    }

    private Tarps() {}
}
