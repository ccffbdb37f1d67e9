package bedledger.ledger.entry;

/** A stored line or payload is not one this program can read; the message says what, why and what to do. */
public final class UnreadableEntry extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UnreadableEntry(String message) {
        super(message);
    }

    UnreadableEntry(String message, Throwable cause) {
        super(message, cause);
    }
}
