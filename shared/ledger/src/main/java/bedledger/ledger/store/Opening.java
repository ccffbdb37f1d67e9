package bedledger.ledger.store;

import bedledger.ledger.journal.Journal;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;

/** One opening of a book's journal and database, brought to agree. */
final class Opening {
    private final Journal journal;
    private final Database database;
    private final SealedTransactions transactions;
    private final Query query;
    private final List<String> reports;

    Opening(Journal journal, Database database, Head head, List<String> reports) {
        this.journal = journal;
        this.database = database;
        this.transactions = new SealedTransactions(database, journal, head);
        this.query = new Query(database.connection());
        this.reports = List.copyOf(reports);
    }

    /** {@code anew}: the database is to be made anew whatever its state; {@code more}: see {@link Database#open}. */
    static Opening of(BookFolder folder, String more, boolean anew) {
        CutEnd.requireNone(folder);
        Journal journal = Journal.open(folder.journal());
        try {
            return new Levelling(folder, more, journal, journal.recovery().report()).open(anew);
        } catch (RuntimeException failed) {
            journal.close();
            throw failed;
        }
    }

    /** The database opened anew beside the same journal, which stays open, so that no other writer comes between. */
    Opening again(BookFolder folder, String more) {
        try {
            return new Levelling(folder, more, journal, Optional.empty()).open(false);
        } catch (RuntimeException failed) {
            journal.close();
            throw failed;
        }
    }

    Database database() {
        return database;
    }

    SealedTransactions transactions() {
        return transactions;
    }

    Query query() {
        return query;
    }

    List<String> reports() {
        return reports;
    }

    void close() throws SQLException {
        try {
            database.close();
        } finally {
            journal.close();
        }
    }

    void abandon() {
        database.abandon();
        journal.close();
    }
}
