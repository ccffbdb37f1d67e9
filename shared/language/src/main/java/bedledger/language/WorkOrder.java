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

    /** Written out, not chained: a long book is sorted by it whole. */
    public static final Comparator<Entry> OF_WORK = WorkOrder::compare;

    private static int compare(Entry one, Entry other) {
        int order = one.head().doneOn().compareTo(other.head().doneOn());
        if (order == 0) {
            order = time(one).compareTo(time(other));
        }
        if (order == 0) {
            order = Integer.compare(one.head().placeInDay(), other.head().placeInDay());
        }
        if (order == 0) {
            order = one.act().compareTo(other.act());
        }
        return order == 0 ? Long.compare(one.number(), other.number()) : order;
    }

    private static LocalTime time(Entry entry) {
        LocalTime time = entry.head().time();
        return time == null ? UNKNOWN : time;
    }

    private WorkOrder() {}
}
