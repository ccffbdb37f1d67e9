package bedledger.ledger.store;

import java.sql.SQLException;

/** The entries are committed, for their lines are forced in the journal, but the database did not take them. */
final class CommittedInJournalOnly extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final SQLException failure;

    CommittedInJournalOnly(SQLException failure) {
        super("the journal holds the entries, the database does not yet", failure);
        this.failure = failure;
    }

    SQLException failure() {
        return failure;
    }
}
