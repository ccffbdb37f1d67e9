package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Fertility;
import bedledger.language.PileId;
import bedledger.language.Temperature;
import bedledger.language.Words;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is recorded of a compost pile up to a day.
 *
 * @param readings the lowest reading of each day that was read; a day read twice keeps the lower
 * @param turns the days it was turned on; two turns of one day are one
 * @param beds where it was spread
 * @param entries the numbers of the entries it rests on: building, readings, turns, curing
 */
record PileLog(
        PileId pile,
        LocalDate upTo,
        Fertility.@Nullable PileBuilt built,
        SortedMap<LocalDate, Temperature> readings,
        SortedSet<LocalDate> turns,
        Optional<LocalDate> cured,
        Optional<LocalDate> used,
        List<BedId> beds,
        List<Long> entries) {

    static PileLog of(Inquiry inquiry, PileId pile, LocalDate upTo) {
        List<Entry> all = inquiry.farm().entries(pile).stream()
                .filter(entry -> !entry.head().doneOn().isAfter(upTo))
                .toList();
        SortedMap<LocalDate, Temperature> readings = new TreeMap<>();
        of(all, Fertility.PileRead.class).forEach(read -> enter(read, upTo, readings));
        return new PileLog(
                pile,
                upTo,
                of(all, Fertility.PileBuilt.class).map(Done::fact).findFirst().orElse(null),
                readings,
                new TreeSet<>(of(all, Fertility.PileTurned.class).map(Done::day).toList()),
                of(all, Fertility.PileCured.class).map(Done::day).findFirst(),
                Stream.concat(of(all, Fertility.PileFinished.class), of(all, Fertility.Spread.class))
                        .map(Done::day)
                        .min(Comparator.naturalOrder()),
                of(all, Fertility.Spread.class)
                        .flatMap(spread -> spread.fact().beds().stream())
                        .distinct()
                        .toList(),
                all.stream()
                        .filter(entry -> !(entry.fact() instanceof Fertility.Spread))
                        .map(Entry::number)
                        .toList());
    }

    private static <F extends Fact> Stream<Done<F>> of(List<Entry> all, Class<F> kind) {
        return all.stream().filter(entry -> kind.isInstance(entry.fact())).map(entry -> Done.of(entry, kind));
    }

    /** The first reading is of the day of the act, each further one of the day after. */
    private static void enter(
            Done<Fertility.PileRead> read, LocalDate upTo, SortedMap<LocalDate, Temperature> readings) {
        LocalDate day = read.day();
        for (Temperature reading : read.fact().readings()) {
            if (!day.isAfter(upTo)) {
                readings.merge(day, reading, PileLog::lower);
            }
            day = day.plusDays(1);
        }
    }

    private static Temperature lower(Temperature one, Temperature other) {
        return other.celsius() < one.celsius() ? other : one;
    }

    /** Each day from the first to the last reading. */
    SortedMap<LocalDate, Heat> heat(Figures figures) {
        SortedMap<LocalDate, Heat> days = new TreeMap<>();
        if (!readings.isEmpty()) {
            readings.firstKey().datesUntil(readings.lastKey().plusDays(1)).forEach(day -> days.put(day, Heat.NOT_READ));
            readings.forEach((day, reading) -> days.put(day, Heat.of(reading, figures)));
        }
        return days;
    }

    static List<LocalDate> days(SortedMap<LocalDate, Heat> heat, EnumSet<Heat> wanted) {
        return heat.keySet().stream()
                .filter(day -> wanted.contains(heat.get(day)))
                .toList();
    }

    /** The most days in a row among those wanted. */
    static int longestRun(Collection<LocalDate> days) {
        int longest = 0;
        int run = 0;
        LocalDate before = LocalDate.MIN;
        for (LocalDate day : days) {
            run = before.equals(day.minusDays(1)) ? run + 1 : 1;
            longest = Math.max(longest, run);
            before = day;
        }
        return longest;
    }

    /** Whether the process may still be going on: the pile is not used, finished or cured, and its log is not older than the process takes. */
    boolean underWay(Figures figures) {
        if (cured.isPresent() || used.isPresent()) {
            return false;
        }
        return Stream.of(readings.keySet(), turns)
                .flatMap(Collection::stream)
                .max(Comparator.naturalOrder())
                .filter(last -> !upTo.isAfter(last.plusDays(figures.whole("windrow.days"))))
                .isPresent();
    }

    String words() {
        Fertility.PileBuilt known = built;
        if (known == null) {
            return "pile " + pile + ", whose building is not recorded";
        }
        String method = known.method() == null ? "a pile" : "a " + Words.of(known.method()) + " pile";
        String ingredients = known.contents().isEmpty() ? "" : " of " + String.join(", ", known.contents());
        return "pile " + pile + ", " + method + ingredients;
    }
}
