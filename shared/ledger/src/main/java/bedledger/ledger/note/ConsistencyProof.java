package bedledger.ledger.note;

import bedledger.ledger.tree.Hash;
import java.util.List;

/**
 * That an older tree is the beginning of a newer one, as C2SP tlog-witness hands it in ({@code add-checkpoint}).
 *
 * @param older entries in the older tree
 * @param path the hashes of RFC 9162 §2.1.4
 * @param checkpoint the signed head of the newer tree
 */
public record ConsistencyProof(long older, List<Hash> path, SignedNote checkpoint) {

    /** Keeps its own copy. */
    public ConsistencyProof {
        path = List.copyOf(path);
    }

    /**
     * Reads a proof in its one spelling.
     *
     * @throws NoteRejected for anything else
     */
    public static ConsistencyProof parse(byte[] bytes) {
        ProofText text = ProofText.parse("consistency proof (C2SP tlog-witness)", bytes);
        return new ConsistencyProof(text.number("old "), text.hashes(), text.checkpoint());
    }

    /** The file's text. */
    public String text() {
        return ProofText.print("old " + older + "\n", path, checkpoint);
    }
}
