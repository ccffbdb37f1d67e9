package bedledger.projections.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a process rule says of one pile: each thing it asks for, on its own. */
final class PileVerdict {
    /** One thing asked for: how it came out, and how that is said. */
    record Part(Outcome outcome, String words) {}

    private final List<Part> parts = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    PileVerdict add(Outcome outcome, String words) {
        parts.add(new Part(outcome, words));
        return this;
    }

    PileVerdict note(String words) {
        notes.add(words);
        return this;
    }

    Outcome outcome() {
        return Outcome.worst(parts.stream().map(Part::outcome).toList());
    }

    /** What keeps it from being met, or all that was asked for if it is. */
    String words() {
        Outcome worst = outcome();
        return parts.stream()
                .filter(part -> part.outcome() == worst)
                .map(Part::words)
                .collect(Collectors.joining("; "));
    }

    String everything() {
        return parts.stream().map(Part::words).collect(Collectors.joining("; "));
    }

    String notes() {
        return notes.stream().map(note -> " " + note).collect(Collectors.joining());
    }
}
