package bedledger.ledger.verify;

import java.util.List;
import java.util.Optional;

/**
 * What a verification found.
 *
 * @param entries complete lines in the journal
 * @param checkpoints signed checkpoints in the file whose root agrees with the entries
 * @param sealed entries under the last checkpoint that agrees
 * @param againstAgreeing checkpoints kept by others that agree
 * @param rows database rows equal to their lines; 0 where none were given
 * @param disagreements in the order of the entries at which they are certain, those that concern none last; at most
 *     {@link #MOST_LISTED}
 * @param notListed further disagreements that were counted but not kept
 */
public record Verdict(
        long entries,
        long checkpoints,
        long sealed,
        long againstAgreeing,
        long rows,
        List<Disagreement> disagreements,
        long notListed) {

    /** Enough to see what happened; the bound keeps a file of rubbish from filling the memory. */
    public static final int MOST_LISTED = 100;

    /** Keeps its own copy of the list. */
    public Verdict {
        disagreements = List.copyOf(disagreements);
    }

    /** Says whether everything agrees. */
    public boolean agrees() {
        return disagreements.isEmpty();
    }

    /** Entries after the last checkpoint that agrees, which no signature covers yet. */
    public long notYetSealed() {
        return entries - sealed;
    }

    /** The earliest disagreement: the entry, or the range of entries by whose end it is certain. */
    public Optional<Disagreement> first() {
        return disagreements.stream().findFirst();
    }
}
