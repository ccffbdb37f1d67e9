package bedledger.projections.nitrogen;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.BedWork;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Fertility;
import bedledger.language.Step;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** What covered a bed and when it was worked, read off its timeline; the state at the end of a day holds for the next one on. */
final class BedSpans {
    private final NavigableMap<LocalDate, Ground> grounds = new TreeMap<>();
    private final NavigableMap<LocalDate, Entry> worked = new TreeMap<>();

    BedSpans(Farm farm, BedId bed, LocalDate asOf) {
        for (Step<BedState> step : farm.bed(bed).steps()) {
            LocalDate day = step.entry().head().doneOn();
            if (!step.fits() || day.isAfter(asOf)) {
                continue;
            }
            grounds.put(day, ground(step.after()));
            if (worksIn(step.entry())) {
                worked.merge(day, step.entry(), BedSpans::deeper);
            }
        }
    }

    private static Ground ground(BedState state) {
        if (!state.crops().isEmpty()) {
            return Ground.LIVING;
        }
        if (state.tarp() != null) {
            return Ground.TARPED;
        }
        return state.mulches().isEmpty() ? Ground.BARE : Ground.MULCHED;
    }

    private static boolean worksIn(Entry entry) {
        return isHarrowing(entry)
                || entry.fact() instanceof BedWork.Tilled
                || entry.fact() instanceof Fertility.Incorporated;
    }

    /** A harrow buries a part only, under whatever name it was entered. */
    static boolean isHarrowing(Entry entry) {
        boolean withHarrow = entry.fact() instanceof Fertility.Incorporated incorporated
                && incorporated.implement() != null
                && incorporated.implement().toLowerCase(Locale.ROOT).contains("harrow");
        return entry.fact() instanceof BedWork.Harrowed || withHarrow;
    }

    private static Entry deeper(Entry one, Entry other) {
        return isHarrowing(one) ? other : one;
    }

    /** The first tilling, harrowing or incorporating on or after a day. */
    Optional<Entry> workedIn(LocalDate from) {
        return Optional.ofNullable(worked.ceilingEntry(from)).map(Map.Entry::getValue);
    }

    /** The days after one day up to and with another, cut where the ground changed. */
    List<Span> between(LocalDate after, LocalDate until) {
        List<Span> spans = new ArrayList<>();
        LocalDate from = after;
        while (from.isBefore(until)) {
            Map.Entry<LocalDate, Ground> now = grounds.floorEntry(from);
            LocalDate next = grounds.higherKey(from);
            LocalDate to = next == null || next.isAfter(until) ? until : next;
            spans.add(new Span(from, to, now == null ? Ground.BARE : now.getValue()));
            from = to;
        }
        return spans;
    }
}
