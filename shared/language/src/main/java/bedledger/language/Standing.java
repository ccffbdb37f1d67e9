package bedledger.language;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Which entries are in force, and what became of the others.
 *
 * <p>Only an entry in force can be replaced or struck; an answer to anything else has no effect and is listed as idle. The result
 * does not depend on the order in which entries are handed in.
 *
 * @param inForce the facts in force, in the order of the work
 * @param answeredBy by the number of an entry no longer in force, the entry that replaced or struck it
 * @param idle corrections and strikes that answer no entry in force
 */
public record Standing(List<Entry> inForce, Map<Long, Entry> answeredBy, List<Entry> idle) {
    public static Standing of(Iterable<Entry> entries) {
        Map<Long, Entry> answered = new HashMap<>();
        Set<Long> open = new HashSet<>();
        Map<Long, Entry> facts = new HashMap<>();
        List<Entry> idle = new java.util.ArrayList<>();
        for (Entry entry : byNumber(entries)) {
            Correction correction = entry.head().corrects();
            if (correction != null && !open.remove(correction.number())) {
                idle.add(entry);
                continue;
            }
            if (correction != null) {
                answered.put(correction.number(), entry);
            }
            if (!(entry.fact() instanceof BookKeeping.Struck)) {
                open.add(entry.number());
                facts.put(entry.number(), entry);
            }
        }
        List<Entry> inForce = open.stream()
                .flatMap(number -> Stream.ofNullable(facts.get(number)))
                .sorted(WorkOrder.OF_WORK)
                .toList();
        return new Standing(inForce, Map.copyOf(answered), List.copyOf(idle));
    }

    private static List<Entry> byNumber(Iterable<Entry> entries) {
        List<Entry> sorted = new java.util.ArrayList<>();
        entries.forEach(sorted::add);
        sorted.sort(Comparator.comparingLong(Entry::number));
        return sorted;
    }

    /** What replaced or struck the entry; null if it is in force. */
    public @Nullable Entry answerTo(Entry entry) {
        return answeredBy.get(entry.number());
    }
}
