package bedledger.projections.findings;

import java.util.List;
import java.util.Optional;

/**
 * A tiny record and what the rule says of it.
 *
 * @param title what it shows
 * @param outcome what the rule says; empty if it has nothing to say
 * @param lines one act each, as in {@code 2026-04-10 incorporate N1 --depth 10cm}; field North with the beds N1 to N4 is there already
 */
public record Example(String title, Optional<Outcome> outcome, List<String> lines) {
    public Example {
        lines = List.copyOf(lines);
    }
}
