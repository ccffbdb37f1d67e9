package bedledger.projections.hours;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Work put together under one heading.
 *
 * @param steps how many steps there were
 * @param withMinutes for how many of them people and minutes are on record
 * @param minutes person-minutes of those; the others are not in it
 * @param byArea whether any of it rests on sharing by area
 * @param entries all the steps, those without minutes too
 */
public record HoursLine(
        String of, int steps, int withMinutes, double minutes, boolean byArea, SortedSet<Long> entries) {
    public HoursLine {
        entries = Collections.unmodifiableSortedSet(new TreeSet<>(entries));
    }

    public boolean isComplete() {
        return steps == withMinutes;
    }

    /** Such as "3 of 7 steps have minutes". */
    public String words() {
        return withMinutes + " of " + steps + (steps == 1 ? " step has" : " steps have") + " minutes";
    }
}
