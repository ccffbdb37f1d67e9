package bedledger.projections.audit;

import bedledger.projections.findings.Outcome;
import java.util.List;

/**
 * What is still open.
 *
 * @param says what, as a sentence
 * @param settles what would answer it: a command as typed after {@code bedledger}, or words; empty if nothing is known to
 */
public record Question(Outcome outcome, String says, String settles, List<Long> entries, String citation) {
    public Question {
        entries = entries.stream().distinct().sorted().toList();
    }
}
