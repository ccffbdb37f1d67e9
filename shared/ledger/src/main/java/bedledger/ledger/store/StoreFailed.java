package bedledger.ledger.store;

import java.sql.SQLException;

/** The database failed before anything was committed. */
final class StoreFailed extends BookUnusable {
    private static final long serialVersionUID = 1L;

    StoreFailed(SQLException cause) {
        super(
                "The database of the book failed ("
                        + String.valueOf(cause.getMessage()).lines().findFirst().orElse("")
                        + "); nothing was written. The journal holds everything: run 'bedledger rebuild', then try again.",
                cause);
    }
}
