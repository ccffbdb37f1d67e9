package bedledger.ledger.store;

import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.Checkpoints;
import bedledger.ledger.note.NoteRejected;
import java.util.Optional;

/** The last checkpoint of a book, as far as opening looks at it: signatures are for the verifier. */
record SealedHead(Optional<Checkpoint> checkpoint) {

    /** Throws {@link BookUnusable} where the end of the file is no checkpoint. */
    static SealedHead in(BookFolder folder) {
        try {
            return read(folder);
        } catch (NoteRejected damaged) {
            throw new BookUnusable(
                    "The last checkpoint in '" + folder.checkpoints() + "' cannot be read; nothing was written. "
                            + damaged.getMessage() + " Look with: bedledger verify",
                    damaged);
        }
    }

    static SealedHead read(BookFolder folder) {
        return new SealedHead(Checkpoints.in(folder.checkpoints()).last().map(note -> Checkpoint.parse(note.text())));
    }

    long size() {
        return checkpoint.map(Checkpoint::size).orElse(0L);
    }

    void requireReachedBy(long entries) {
        if (size() > entries) {
            throw new Disagreement(
                    "The last checkpoint speaks of " + size() + " entries; the journal holds " + entries + ".");
        }
    }

    /** Compares the roots where the checkpoint speaks of just so many entries. */
    void requireAgreesWith(Head head) {
        boolean differs = checkpoint
                .filter(signed -> signed.size() == head.size()
                        && !signed.rootHash().equals(head.frontier().root()))
                .isPresent();
        if (differs) {
            throw new Disagreement("The first " + head.size()
                    + " entries of the book are not the ones that the last checkpoint was signed over.");
        }
    }
}
