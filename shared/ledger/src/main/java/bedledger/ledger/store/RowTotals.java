package bedledger.ledger.store;

import bedledger.language.Place;
import bedledger.ledger.tree.Frontier;
import bedledger.ledger.tree.Hash;
import bedledger.ledger.tree.Merkle;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** What the rows of the entry table come to, for comparison with the head row and the index rows, in memory that does not grow. */
final class RowTotals {
    private Frontier frontier = Frontier.empty();
    private long journalBytes;
    private String lastWritten = "";
    private final byte[] touches = new byte[Hash.LENGTH];
    private boolean complete = true;

    void add(StoredRow row) {
        Hash leaf = row.leafHash();
        try {
            journalBytes += row.lineBytes().length + 1;
            for (Place place : row.deed().fact().places()) {
                mix(place.key(), row.number());
            }
        } catch (RuntimeException damaged) {
            // The row says so itself when its line is asked for.
            complete = false;
        }
        if (leaf != null) {
            frontier = frontier.append(leaf);
        }
        lastWritten = row.writtenAt();
    }

    /** A sum of hashes does not ask for an order, and there is no index to read the table of places in that of the entries. */
    private void mix(String place, long number) {
        byte[] hash = Merkle.leaf((number + " " + place).getBytes(StandardCharsets.UTF_8))
                .bytes();
        for (int i = 0; i < hash.length; i++) {
            touches[i] ^= hash[i];
        }
    }

    /** Throws {@link IllegalStateException} where head row or index rows are not those of the rows added. */
    void requireBorneOutBy(Connection connection) throws SQLException {
        if (!complete) {
            return;
        }
        requireHead(connection);
        try (Statement sql = connection.createStatement()) {
            try (ResultSet touch = sql.executeQuery("SELECT place, number FROM touch")) {
                while (touch.next()) {
                    mix(touch.getString(1), touch.getLong(2));
                }
            }
            try (ResultSet odd = sql.executeQuery("SELECT COUNT(*) FROM"
                    + " ((SELECT place FROM touch EXCEPT SELECT place FROM place)"
                    + " UNION ALL (SELECT place FROM place EXCEPT SELECT place FROM touch))")) {
                odd.next();
                require("the index rows do not belong to the entries", odd.getLong(1) == 0 && allZero());
            }
        }
    }

    private boolean allZero() {
        for (byte next : touches) {
            if (next != 0) {
                return false;
            }
        }
        return true;
    }

    private void requireHead(Connection connection) throws SQLException {
        Head head = HeadRow.read(connection);
        require(
                "the head row does not belong to the entries",
                head != null && head.equals(new Head(frontier, journalBytes, lastWritten)));
    }

    private static void require(String otherwise, boolean holds) {
        if (!holds) {
            throw new IllegalStateException(otherwise);
        }
    }
}
