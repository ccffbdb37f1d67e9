package bedledger.projections.audit;

import bedledger.projections.findings.Outcome;
import java.util.List;

/**
 * What the record says to one link.
 *
 * @param says what it found, as a phrase
 * @param entries the entries it was found in, by number
 * @param open the worst first
 */
public record LinkAnswer(ChainLink link, String says, List<Long> entries, List<Question> open) {
    public LinkAnswer {
        entries = entries.stream().distinct().sorted().toList();
        open = List.copyOf(open);
    }

    /** The worst that is open; met where nothing is: what this link asks for is on record. */
    public Outcome outcome() {
        return Outcome.worst(open.stream().map(Question::outcome).toList());
    }
}
