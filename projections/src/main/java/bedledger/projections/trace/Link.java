package bedledger.projections.trace;

import java.util.List;

/**
 * Something went from one node to another.
 *
 * @param words how much, or how; empty where nothing is recorded
 */
public record Link(String from, String to, String words, List<Long> entries) {
    public Link {
        entries = List.copyOf(entries);
    }
}
