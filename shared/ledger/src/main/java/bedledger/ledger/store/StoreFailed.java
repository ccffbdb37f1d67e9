package bedledger.ledger.store;

import java.sql.SQLException;

/** The database failed before anything was committed. */
final class StoreFailed extends BookUnusable {
    private static final long serialVersionUID = 1L;

    StoreFailed(SQLException cause) {
        super(
                "The database of the book failed (" + reason(cause)
                        + "); nothing was written. The journal holds everything: run 'bedledger rebuild', then try again.",
                cause);
    }

    /** The first line of a message: H2 puts the SQL statement and its own version into the next ones. */
    static String reason(Exception failed) {
        return String.valueOf(failed.getMessage()).lines().findFirst().orElse("no reason given");
    }
}
