package bedledger.language;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The entries in force that touch one place, in the order the work was done, each with the state before and after.
 *
 * @param start the state before the first of them
 * @param daysRise found, not given: whether no step stands before one of an earlier day; a part of a split bed may hold an entry that does not fit it
 *     and is older than what it inherited
 */
public record Timeline<S>(Place place, S start, List<Step<S>> steps, boolean daysRise) {
    public Timeline {
        daysRise = doDaysRise(steps);
    }

    public Timeline(Place place, S start, List<Step<S>> steps) {
        this(place, start, steps, true);
    }

    private static <S> boolean doDaysRise(List<Step<S>> steps) {
        return IntStream.range(1, steps.size())
                .noneMatch(at -> day(steps.get(at - 1)).isAfter(day(steps.get(at))));
    }

    private static LocalDate day(Step<?> step) {
        return step.entry().head().doneOn();
    }

    /** The state at the end of a day. */
    public S on(LocalDate day) {
        int count = daysRise ? countRising(day) : count(day);
        return count == 0 ? start : steps.get(count - 1).after();
    }

    /** How many steps stand before the first one after a day. */
    private int count(LocalDate day) {
        int at = 0;
        while (at < steps.size() && !day(steps.get(at)).isAfter(day)) {
            at++;
        }
        return at;
    }

    /** The same by halves, for it is asked of every bed and day of a long book. */
    private int countRising(LocalDate day) {
        int low = 0;
        int high = steps.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (day(steps.get(middle)).isAfter(day)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    public S now() {
        return steps.isEmpty() ? start : steps.get(steps.size() - 1).after();
    }

    public List<Misfit> misfits() {
        return steps.stream().flatMap(step -> step.misfits().stream()).toList();
    }
}
