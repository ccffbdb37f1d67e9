package bedledger.projections.history;

import bedledger.language.Entry;
import bedledger.language.Head;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What an entry's head says beside the day, as one phrase: "at 07:30; 4 people × 12 minutes; by crew-1; wet with dew". */
public final class HeadWords {
    private HeadWords() {}

    /** The phrase; empty where the head says nothing more. The doer is named where somebody else wrote it down. */
    public static String of(Entry entry) {
        Head head = entry.head();
        List<String> said = new ArrayList<>();
        add(said, "at ", head.time());
        add(said, "", labour(head));
        add(said, "on ", head.area());
        add(said, "with ", head.equipment());
        if (head.doneBy() != null && !head.doneBy().equals(entry.writtenBy())) {
            said.add("by " + head.doneBy());
        }
        add(said, "noted ", head.notedOn());
        add(said, "", head.note());
        return String.join("; ", said);
    }

    private static @Nullable String labour(Head head) {
        String people = head.people() == null ? "" : head.people() + (head.people() == 1 ? " person" : " people");
        String minutes = head.minutes() == null ? "" : head.minutes() + " minutes";
        if (people.isEmpty() && minutes.isEmpty()) {
            return null;
        }
        return people.isEmpty() || minutes.isEmpty() ? people + minutes : people + " × " + minutes;
    }

    private static void add(List<String> said, String before, @Nullable Object value) {
        if (value != null) {
            said.add(before + value);
        }
    }
}
