package bedledger.language;

import java.time.LocalTime;
import java.util.Comparator;

/**
 * The order in which work was done: day, time of day, place in the day, act id. Never the order of writing.
 *
 * <p>An act without a time stands at noon: so it comes after what was done in the morning and before what was done in the evening,
 * and the order stays total however many times are known.
 */
public final class WorkOrder {
    private static final LocalTime UNKNOWN = LocalTime.NOON;

    public static final Comparator<Entry> OF_WORK = Comparator.comparing(
                    (Entry entry) -> entry.head().doneOn())
            .thenComparing(WorkOrder::time)
            .thenComparing(entry -> entry.head().placeInDay())
            .thenComparing(Entry::act)
            .thenComparing(Entry::number);

    private static LocalTime time(Entry entry) {
        LocalTime time = entry.head().time();
        return time == null ? UNKNOWN : time;
    }

    private WorkOrder() {}
}
