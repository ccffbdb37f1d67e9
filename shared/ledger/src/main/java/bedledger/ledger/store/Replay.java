package bedledger.ledger.store;

import bedledger.language.Entry;
import bedledger.ledger.entry.Deed;
import bedledger.ledger.entry.DeedCodec;
import bedledger.ledger.entry.Line;
import bedledger.ledger.entry.UnreadableEntry;
import bedledger.ledger.journal.Journal;
import bedledger.ledger.json.CanonicalJson;
import bedledger.ledger.tree.Hash;
import bedledger.ledger.tree.Merkle;
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

    Head from(Journal journal) throws SQLException {
        try (PreparedStatement insert = database.connection().prepareStatement(Database.INSERT)) {
            journal.lines(head.journalBytes(), (offset, line) -> add(insert, offset, line));
            insert.executeBatch();
            database.write(head);
            return head;
        } catch (Wrapped failed) {
            throw failed.cause;
        }
    }

    private void add(PreparedStatement insert, long offset, byte[] line) {
        Entry entry = read(line, offset);
        if (entry.number() != head.size() + 1) {
            throw new Disagreement("The journal goes from entry " + head.size() + " to entry " + entry.number()
                    + " at byte " + offset + ".");
        }
        Hash leaf = Merkle.leaf(line);
        try {
            byte[] payload = CanonicalJson.write(DeedCodec.write(new Deed(entry.head(), entry.fact())));
            Database.fill(insert, entry, payload, leaf);
            insert.addBatch();
            database.index(entry);
            if (entry.number() % BATCH == 0) {
                insert.executeBatch();
                database.connection().commit();
            }
        } catch (SQLException failed) {
            throw new Wrapped(failed);
        }
        head = new Head(head.frontier().append(leaf), offset + line.length + 1, Line.written(entry.writtenAt()));
    }

    private static Entry read(byte[] line, long offset) {
        try {
            return Line.read(line);
        } catch (UnreadableEntry unreadable) {
            throw new Disagreement("The journal cannot be read at byte " + offset + ": " + unreadable.getMessage());
        }
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
