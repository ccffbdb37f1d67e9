package bedledger.projections.trends;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.Farm;
import bedledger.language.Step;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Days on end on which the same thing covered a bed.
 *
 * @param from the first of them
 * @param to the last of them
 */
public record CoverSpan(BedId bed, LocalDate from, LocalDate to, Ground ground) {
    /** The spans of a bed from the day it was laid out to the day asked, or to its retirement, without a gap. */
    static List<CoverSpan> of(Farm farm, BedId bed, LocalDate asOf) {
        NavigableMap<LocalDate, BedState> states = new TreeMap<>();
        for (Step<BedState> step : farm.bed(bed).steps()) {
            states.put(step.entry().head().doneOn(), step.after());
        }
        List<CoverSpan> spans = new ArrayList<>();
        states.headMap(asOf, true).forEach((day, state) -> {
            LocalDate next = states.higherKey(day);
            LocalDate to = next == null || next.isAfter(asOf) ? asOf : next.minusDays(1);
            if (state.laidOut() != null && state.retired() == null) {
                add(spans, new CoverSpan(bed, day, to, ground(state)));
            }
        });
        return List.copyOf(spans);
    }

    private static void add(List<CoverSpan> spans, CoverSpan next) {
        int last = spans.size() - 1;
        if (last >= 0 && spans.get(last).continuesAs(next)) {
            spans.set(last, new CoverSpan(next.bed, spans.get(last).from, next.to, next.ground));
        } else {
            spans.add(next);
        }
    }

    private boolean continuesAs(CoverSpan next) {
        return ground == next.ground && to.plusDays(1).equals(next.from);
    }

    private static Ground ground(BedState state) {
        if (state.crops().stream().anyMatch(stand -> !stand.cover())) {
            return Ground.CROP;
        }
        if (state.hasCover()) {
            return Ground.COVER_CROP;
        }
        if (!state.mulches().isEmpty()) {
            return Ground.MULCH;
        }
        return state.tarp() == null ? Ground.BARE : Ground.TARP;
    }

    /** How many of its days fall in a season. */
    public long daysIn(Season season) {
        LocalDate first = from.isBefore(season.from()) ? season.from() : from;
        LocalDate last = to.isAfter(season.to()) ? season.to() : to;
        return Math.max(0, ChronoUnit.DAYS.between(first, last) + 1);
    }
}
