package bedledger.projections.balance;

import bedledger.language.Amount;
import bedledger.language.Entry;
import bedledger.language.Unit;
import bedledger.language.WorkOrder;
import bedledger.projections.balance.Count.Figure;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The days of a balance and the counts that bound it. */
record Period(LocalDate from, LocalDate to, List<Entry> opening, List<Entry> closing, Function<Entry, Figure> figure) {

    /**
     * The days asked for. Without a last day, that of the last count; without a first day, that of the first count in the year of the last
     * day, else of the last count before it. What was never counted runs from the day it is first named to the day the book is asked on.
     *
     * @param counts in the order of the work, none after the day the book is asked on
     * @param seen the days on which something came in or went out
     */
    static Period of(
            List<Entry> counts,
            Function<Entry, Figure> figure,
            Stream<LocalDate> seen,
            @Nullable LocalDate from,
            @Nullable LocalDate to,
            LocalDate today) {
        LocalDate last = to != null
                ? to
                : counts.isEmpty()
                        ? today
                        : counts.get(counts.size() - 1).head().doneOn();
        LocalDate first = from != null
                ? from
                : first(counts, last)
                        .or(() -> seen.filter(day -> day.isBefore(last)).min(Comparator.naturalOrder()))
                        .orElse(last.withDayOfYear(1));
        return new Period(first, last, on(counts, first), first.equals(last) ? List.of() : on(counts, last), figure);
    }

    private static Optional<LocalDate> first(List<Entry> counts, LocalDate last) {
        List<LocalDate> before = counts.stream()
                .map(entry -> entry.head().doneOn())
                .filter(day -> day.isBefore(last))
                .toList();
        return before.stream()
                .filter(day -> day.getYear() == last.getYear())
                .findFirst()
                .or(() -> before.stream().reduce((earlier, later) -> later));
    }

    private static List<Entry> on(List<Entry> counts, LocalDate day) {
        return counts.stream()
                .filter(entry -> entry.head().doneOn().equals(day))
                .toList();
    }

    Optional<Unit> unit() {
        List<Entry> either = new ArrayList<>(closing);
        either.addAll(opening);
        return either.stream()
                .map(figure)
                .map(Figure::amount)
                .map(Amount::quantity)
                .map(quantity -> quantity.unit())
                .findFirst();
    }

    Optional<Count> count(List<Entry> entries, Unit unit) {
        return entries.isEmpty() ? Optional.empty() : Optional.of(Count.of(entries, figure, unit));
    }

    /** Whether an entry's work lies after the opening count and before the closing one, in the order of the work. */
    boolean holds(Entry entry) {
        boolean after = opening.isEmpty()
                ? !entry.head().doneOn().isBefore(from)
                : WorkOrder.OF_WORK.compare(entry, opening.get(opening.size() - 1)) > 0;
        boolean before = closing.isEmpty()
                ? !entry.head().doneOn().isAfter(to)
                : WorkOrder.OF_WORK.compare(entry, closing.get(closing.size() - 1)) < 0;
        return after && before;
    }

    /** Why nothing can be set against a count, as sentences. */
    List<String> missing(String of, List<Entry> counts) {
        List<String> missing = new ArrayList<>();
        if (opening.isEmpty()) {
            missing.add("No count of " + of + " on " + from + "; " + nearest(counts, from));
        }
        if (closing.isEmpty()) {
            missing.add("No count of " + of + " on " + to + "; " + nearest(counts, to));
        }
        return missing;
    }

    private static String nearest(List<Entry> counts, LocalDate day) {
        return counts.stream()
                .map(entry -> entry.head().doneOn())
                .min(Comparator.comparingLong(one -> Math.abs(java.time.temporal.ChronoUnit.DAYS.between(one, day))))
                .map(near -> "the nearest is of " + near + ".")
                .orElse("none is on record.");
    }
}
