package bedledger.ledger.note;

/** A note, checkpoint or key that is not what it says it is; the message says what and what to do. */
public final class NoteRejected extends RuntimeException {

    NoteRejected(String message) {
        super(message);
    }
}
