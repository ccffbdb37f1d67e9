package bedledger.ledger.verify;

import bedledger.ledger.note.Checkpoint;
import java.util.Arrays;

/**
 * A checkpoint whose signature holds.
 *
 * @param ordinal its place in its file, from 1
 * @param checkpoint what was signed
 */
record Head(long ordinal, Checkpoint checkpoint) {

    long size() {
        return checkpoint.size();
    }

    boolean hasRoot(byte[] root) {
        return Arrays.equals(checkpoint.rootBytes(), root);
    }
}
