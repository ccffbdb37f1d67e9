package bedledger.ledger.store;

/** The book cannot be used as it lies there, and nothing was changed; the message says why and what to do. */
public class BookUnusable extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public BookUnusable(String message) {
        super(message);
    }

    public BookUnusable(String message, Throwable cause) {
        super(message, cause);
    }
}
