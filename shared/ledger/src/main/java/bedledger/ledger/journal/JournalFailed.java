package bedledger.ledger.journal;

import org.jspecify.annotations.Nullable;

/** The journal could not be opened, read or written; the message says what, where, what is still safe, and what to do. */
public class JournalFailed extends RuntimeException {

    JournalFailed(String message, @Nullable Throwable cause) {
        super(message, cause);
    }

    JournalFailed(String message) {
        this(message, null);
    }
}
