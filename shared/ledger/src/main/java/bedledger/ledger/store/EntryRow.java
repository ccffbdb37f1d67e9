package bedledger.ledger.store;

import bedledger.language.Entry;
import bedledger.language.Place;
import bedledger.ledger.entry.Line;
import bedledger.ledger.tree.Hash;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;

/** Writes the row of an entry, and its index rows. */
final class EntryRow {
    static final String TYPE = "Act";
    static final String INSERT = "INSERT INTO entry VALUES (?, ?, ?, ?, '" + TYPE + "', ?, ?, ?, ?, ?, ?, ?, ?, ?)";
    private static final byte[] NO_META = {'{', '}'};

    /** Payload and revision are as stored in the line, whatever an upcaster made of them since. */
    static void fill(PreparedStatement insert, Entry entry, int revision, byte[] payload, Hash leaf)
            throws SQLException {
        insert.setLong(1, entry.number());
        insert.setString(2, eventId(entry.act().toString(), entry.sequence()));
        insert.setString(3, entry.act().toString());
        insert.setLong(4, entry.sequence());
        insert.setString(5, entry.kind().name());
        insert.setString(6, Integer.toString(revision));
        insert.setString(7, Line.written(entry.writtenAt()));
        insert.setString(8, entry.writtenBy().name());
        insert.setBytes(9, payload);
        insert.setBytes(10, NO_META);
        insert.setBytes(11, leaf.bytes());
        insert.setObject(12, entry.head().doneOn());
        insert.setInt(13, entry.head().placeInDay());
    }

    static String eventId(String act, long sequence) {
        return act + "-" + sequence;
    }

    /** Writes the index rows of an entry; indexes only, rebuilt from the journal whenever they are in doubt. */
    static void index(Connection connection, Entry entry) throws SQLException {
        try (PreparedStatement touch = connection.prepareStatement("INSERT INTO touch VALUES (?, ?)");
                PreparedStatement known = connection.prepareStatement("MERGE INTO place VALUES (?)")) {
            for (Place place : entry.fact().places()) {
                touch.setString(1, place.key());
                touch.setLong(2, entry.number());
                touch.addBatch();
                known.setString(1, place.key());
                known.addBatch();
            }
            touch.executeBatch();
            known.executeBatch();
        }
    }

    private EntryRow() {}
}
