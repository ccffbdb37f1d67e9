package bedledger.ledger.store;

import bedledger.language.Entry;
import bedledger.ledger.journal.Journal;
import bedledger.ledger.json.CanonicalJson;
import bedledger.ledger.tree.Merkle;
import com.fasterxml.jackson.databind.JsonNode;
import java.sql.PreparedStatement;
import java.sql.SQLException;

/** Writes journal lines that the database lacks into it. */
final class Replay {
    private static final int BATCH = 500;
    private final Database database;
    private Head head;

    Replay(Database database, Head head) {
        this.database = database;
        this.head = head;
    }

    /** Every commit on the way holds the head that belongs to it, so one that is cut short goes on where it stopped. */
    void from(Journal journal) throws SQLException {
        try (PreparedStatement insert = database.connection().prepareStatement(EntryRow.INSERT)) {
            journal.lines(head.journalBytes(), (offset, line) -> add(insert, offset, line));
            commit(insert);
        } catch (Wrapped failed) {
            throw failed.cause;
        }
    }

    private void add(PreparedStatement insert, long offset, byte[] line) {
        Entry entry = Unwritten.read(head, offset, line);
        JsonNode stored = CanonicalJson.readStrict(line);
        try {
            EntryRow.fill(
                    insert,
                    entry,
                    stored.path("revision").intValue(),
                    CanonicalJson.write(stored.path("payload")),
                    Merkle.leaf(line));
            insert.addBatch();
            EntryRow.index(database.connection(), entry);
            head = Unwritten.after(head, entry, offset, line);
            if (entry.number() % BATCH == 0) {
                commit(insert);
            }
        } catch (SQLException failed) {
            throw new Wrapped(failed);
        }
    }

    private void commit(PreparedStatement insert) throws SQLException {
        insert.executeBatch();
        database.write(head);
        database.connection().commit();
    }

    private static final class Wrapped extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final SQLException cause;

        Wrapped(SQLException cause) {
            super(cause);
            this.cause = cause;
        }
    }
}
