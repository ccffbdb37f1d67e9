package bedledger.projections.gaps;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.BedWork;
import bedledger.language.Entry;
import bedledger.language.Land;
import bedledger.projections.gaps.Gap.Topic;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Beds of which nothing is written all through the period, and crops of which nothing was written for long. */
final class BedGaps {
    /** Days after which a standing crop without an entry is worth a question; a judgement, no rule sets it. */
    private static final int QUIET_DAYS = 60;

    private static final Set<Class<?>> UNCOVERED =
            Set.of(BedWork.ResidueFlailed.class, BedWork.Harrowed.class, BedWork.Tilled.class, BedWork.Tarped.class);

    static Stream<Gap> of(Looked looked) {
        List<BedId> beds = looked.farm().beds().stream()
                .filter(bed -> isThere(looked.farm().bed(bed).on(looked.day())))
                .toList();
        List<BedId> silent =
                beds.stream().filter(bed -> work(looked, bed).isEmpty()).toList();
        return Stream.concat(
                silent.isEmpty() ? Stream.empty() : Stream.of(silent(looked, silent)),
                Stream.concat(
                        beds.stream().filter(bed -> !silent.contains(bed)).flatMap(bed -> standing(looked, bed)),
                        beds.stream().flatMap(bed -> leftCovered(looked, bed))));
    }

    /** A row cover that was never taken off, over a bed that was worked since as no covered bed can be. */
    private static Stream<Gap> leftCovered(Looked looked, BedId bed) {
        BedState.Laid cover = looked.farm().bed(bed).on(looked.day()).rowCover();
        if (cover == null) {
            return Stream.empty();
        }
        return looked.entries(bed).stream()
                .filter(entry -> entry.head().doneOn().isAfter(cover.since()))
                .filter(entry -> UNCOVERED.stream().anyMatch(kind -> kind.isInstance(entry.fact())))
                .findFirst()
                .map(worked -> new Gap(
                        Topic.BEDS,
                        "bed " + bed + ", " + cover.what(),
                        "It lies there since " + cover.since() + ", as far as the book says, and the bed was worked on "
                                + worked.head().doneOn() + ": no entry takes it off.",
                        "did uncover " + bed + " --on DATE",
                        List.of(cover.entry(), worked.number())))
                .stream();
    }

    private static boolean isThere(BedState state) {
        return state.laidOut() != null && state.retired() == null;
    }

    /** What was done or found on the bed in the period; that it was laid out and found bare that day, or sampled, says nothing of the season. */
    private static List<Entry> work(Looked looked, BedId bed) {
        LocalDate laidOut = looked.farm().bed(bed).on(looked.day()).laidOut();
        return looked.entries(bed).stream()
                .filter(looked::isWithin)
                .filter(entry -> !(entry.fact() instanceof BedWork.SoilSampled))
                .filter(entry -> !(entry.fact() instanceof Land)
                        || (entry.fact() instanceof Land.Found
                                && entry.head().doneOn().isAfter(laidOut)))
                .toList();
    }

    private static Gap silent(Looked looked, List<BedId> beds) {
        List<Entry> seen = new ArrayList<>();
        beds.forEach(bed -> seen.addAll(looked.entries(bed)));
        return new Gap(
                Topic.BEDS,
                (beds.size() == 1 ? "bed " : "beds ") + Looked.list(beds),
                "No work and no crop is recorded from " + looked.from() + " to " + looked.day() + ".",
                "did found " + String.join(" ", beds.stream().map(BedId::name).toList())
                        + " --nothing --on DATE, or what was done there",
                Looked.numbers(seen));
    }

    private static Stream<Gap> standing(Looked looked, BedId bed) {
        BedState state = looked.farm().bed(bed).on(looked.day());
        List<Entry> entries = looked.entries(bed).stream()
                .filter(entry -> !(entry.fact() instanceof BedWork.SoilSampled))
                .toList();
        Entry last = entries.get(entries.size() - 1);
        long quiet = ChronoUnit.DAYS.between(last.head().doneOn(), looked.day());
        return state.crops().stream()
                .filter(stand -> quiet >= QUIET_DAYS)
                .map(stand -> new Gap(
                        Topic.BEDS,
                        "bed " + bed + ", " + stand.crop(),
                        "It stands since " + stand.since() + "; nothing is written of the bed for " + quiet + " days.",
                        stand.cover()
                                ? "did end-cover " + bed + " --how HOW --on DATE, or what was done there"
                                : "did finish " + bed + " --crop " + Looked.typed(stand.crop())
                                        + " --on DATE, or what was done there",
                        List.of(stand.entry(), last.number())));
    }

    private BedGaps() {}
}
