package bedledger.ledger.store;

import java.io.IOException;
import java.sql.SQLException;

/** The database failed before anything was committed. */
final class StoreFailed extends BookUnusable {
    private static final long serialVersionUID = 1L;
    private static final int DEEPEST = 20;

    StoreFailed(SQLException cause) {
        super(
                "The database of the book failed (" + reason(cause)
                        + "); nothing was written. The journal holds everything: run 'bedledger rebuild', then try again.",
                cause);
    }

    /** Why, in a few words: what the disk said if it was the disk, else what H2 said without the statement it puts behind. */
    static String reason(Exception failed) {
        Throwable cause = failed;
        for (int depth = 0; cause != null && depth < DEEPEST; depth++) {
            if (cause instanceof IOException && cause.getMessage() != null) {
                return cause.getMessage();
            }
            cause = cause.getCause();
        }
        String first = String.valueOf(failed.getMessage()).lines().findFirst().orElse("no reason given");
        return first.replaceFirst("; SQL statement:$", "");
    }
}
