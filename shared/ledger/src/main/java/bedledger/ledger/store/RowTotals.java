package bedledger.ledger.store;

import bedledger.ledger.entry.Deed;
import bedledger.ledger.tree.Frontier;
import bedledger.ledger.tree.Hash;
import bedledger.ledger.tree.Merkle;
import bedledger.ledger.verify.Row;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the rows of the entry table come to, for comparison with the head row and the index rows, in memory that does not grow. */
final class RowTotals {
    private Frontier frontier = Frontier.empty();
    private long journalBytes;
    private String lastWritten = "";
    private final byte[] touches = new byte[Hash.LENGTH];
    private boolean complete = true;

    /** Takes a row into account, and gives it as the verifier asks for it. */
    Row add(StoredRow row) {
        Hash leaf = row.leafHash();
        if (leaf != null) {
            frontier = frontier.append(leaf);
        }
        lastWritten = row.writtenAt();
        try {
            Deed deed = row.deed();
            byte[] line = row.line(deed);
            journalBytes += line.length + 1;
            deed.fact().places().forEach(place -> mix(place.key(), row.number()));
            return new ReadRow(row.number(), line, null);
        } catch (RuntimeException damaged) {
            complete = false;
            return new ReadRow(row.number(), new byte[0], damaged);
        }
    }

    @SuppressWarnings("ArrayRecordComponent") // handed on once, never compared
    private record ReadRow(
            long number, byte[] line, @Nullable RuntimeException damaged) implements Row {
        @Override
        public byte[] lineBytes() {
            if (damaged != null) {
                throw damaged;
            }
            return line;
        }
    }

    /** A sum of hashes does not ask for an order, and there is no index to read the table of places in that of the entries. */
    private void mix(String place, long number) {
        byte[] hash = Merkle.leaf((number + " " + place).getBytes(StandardCharsets.UTF_8))
                .bytes();
        for (int i = 0; i < hash.length; i++) {
            touches[i] ^= hash[i];
        }
    }

    /** Says where the head row or the index rows are not those of the rows added; rows that are damaged have said so themselves. */
    Optional<String> againstRestOf(Connection connection) throws SQLException {
        if (!complete) {
            return Optional.empty();
        }
        Head head = HeadRow.read(connection);
        if (head == null || !head.equals(new Head(frontier, journalBytes, lastWritten))) {
            return Optional.of("a head row that does not belong to the rows of entries");
        }
        return indexed(connection)
                ? Optional.empty()
                : Optional.of("index rows that do not belong to the rows of entries");
    }

    private boolean indexed(Connection connection) throws SQLException {
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
                return odd.getLong(1) == 0 && Arrays.equals(touches, new byte[Hash.LENGTH]);
            }
        }
    }
}
