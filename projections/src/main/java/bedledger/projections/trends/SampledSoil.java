package bedledger.projections.trends;

import bedledger.language.BedId;
import bedledger.language.BedWork;
import bedledger.language.Entry;
import bedledger.language.Length;
import bedledger.projections.history.BedAreas;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One soil sample of some beds, and how it differs from the one before of the same beds.
 *
 * @param changed what was not the same as the time before, or is not on record for one of the two; empty for the first
 */
public record SampledSoil(List<BedId> beds, Entry entry, BedWork.SoilSampled found, List<Change> changed) {
    /** Half a season apart within the year: soil is wetter, warmer, and the carbon test reads otherwise; judgement, no source for the number. */
    private static final int DAYS_OF_ANOTHER_SEASON = 45;

    private static final int DAYS_IN_A_YEAR = 365;

    public SampledSoil {
        beds = List.copyOf(beds);
        changed = List.copyOf(changed);
    }

    /** What makes two tests hard to compare. */
    public enum Change {
        LABORATORY("another laboratory"),
        METHOD("another method"),
        DEPTH("another depth"),
        TIME_OF_YEAR("another time of year"),
        LABORATORY_UNKNOWN("laboratory not on record for both"),
        METHOD_UNKNOWN("method not on record for both"),
        DEPTH_UNKNOWN("depth not on record for both");

        private final String words;

        Change(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The tests by the end of a day, in the order they were taken; each is held against the last one of the very same beds. */
    static List<SampledSoil> of(List<Entry> sampled) {
        List<SampledSoil> tests = new ArrayList<>();
        for (Entry entry : sampled) {
            List<BedId> beds = BedAreas.beds(entry);
            BedWork.SoilSampled found = (BedWork.SoilSampled) entry.fact();
            List<Change> changed = tests.stream()
                    .filter(test -> test.beds.equals(beds))
                    .reduce((earlier, later) -> later)
                    .map(before -> changes(before, entry, found))
                    .orElse(List.of());
            tests.add(new SampledSoil(beds, entry, found, changed));
        }
        return List.copyOf(tests);
    }

    private static List<Change> changes(SampledSoil before, Entry entry, BedWork.SoilSampled found) {
        List<Change> changes = new ArrayList<>();
        held(before.found.laboratory(), found.laboratory(), Change.LABORATORY, Change.LABORATORY_UNKNOWN, changes);
        held(before.found.carbonMethod(), found.carbonMethod(), Change.METHOD, Change.METHOD_UNKNOWN, changes);
        held(depth(before.found), depth(found), Change.DEPTH, Change.DEPTH_UNKNOWN, changes);
        if (apartInTheYear(before.day(), entry.head().doneOn()) > DAYS_OF_ANOTHER_SEASON) {
            changes.add(Change.TIME_OF_YEAR);
        }
        return changes;
    }

    private static void held(
            @Nullable Object one, @Nullable Object two, Change differs, Change unknown, List<Change> changes) {
        if (one == null || two == null) {
            changes.add(unknown);
        } else if (!one.equals(two)) {
            changes.add(differs);
        }
    }

    /** Top and bottom in mm, so that 20 cm is 0.2 m. */
    private static @Nullable List<Long> depth(BedWork.SoilSampled found) {
        Function<Length, Long> millimetres = length -> Math.round(length.metres() * 1000);
        return found.fromDepth() == null || found.toDepth() == null
                ? null
                : List.of(millimetres.apply(found.fromDepth()), millimetres.apply(found.toDepth()));
    }

    private static long apartInTheYear(LocalDate one, LocalDate two) {
        LocalDate sameYear = MonthDay.from(two).atYear(one.getYear());
        long apart = Math.abs(ChronoUnit.DAYS.between(one, sameYear));
        return Math.min(apart, DAYS_IN_A_YEAR - apart);
    }

    public LocalDate day() {
        return entry.head().doneOn();
    }

    /** Whether it can be shown on the same scale as another: both give carbon, or both give matter. */
    public boolean hasCarbon() {
        return found.organicCarbon() != null;
    }

    /** Organic carbon, or else organic matter, %; null where neither is on record. */
    public @Nullable Double percent() {
        if (found.organicCarbon() != null) {
            return found.organicCarbon().percent();
        }
        return found.organicMatter() == null
                ? null
                : Objects.requireNonNull(found.organicMatter()).percent();
    }
}
