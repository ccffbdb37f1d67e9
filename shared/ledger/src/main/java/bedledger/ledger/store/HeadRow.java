package bedledger.ledger.store;

import bedledger.ledger.tree.Frontier;
import bedledger.ledger.tree.Hash;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.jspecify.annotations.Nullable;

/**
 * The row that says how far the database has come.
 *
 * <p>The next checkpoint is signed over what stands here, and H2 does not notice a damaged page. So the row carries a check sum;
 * it keeps out accidents, not a forger, whom the verifier finds.
 */
final class HeadRow {
    /** The head; empty before the first entry, null where the row is damaged. */
    static @Nullable Head read(Connection connection) throws SQLException {
        try (Statement sql = connection.createStatement();
                ResultSet row = sql.executeQuery("SELECT frontier, journal_bytes, last_written, sum FROM head")) {
            if (!row.next()) {
                return Head.empty();
            }
            byte[] frontier = row.getBytes(1);
            Hash sum = sum(frontier, row.getLong(2), row.getString(3));
            return sum.equals(Hash.of(row.getBytes(4)))
                    ? new Head(Frontier.parse(frontier), row.getLong(2), row.getString(3))
                    : null;
        }
    }

    static void write(Connection connection, Head head) throws SQLException {
        byte[] frontier = head.frontier().toBytes();
        try (PreparedStatement sql = connection.prepareStatement("MERGE INTO head VALUES (1, ?, ?, ?, ?)")) {
            sql.setBytes(1, frontier);
            sql.setLong(2, head.journalBytes());
            sql.setString(3, head.lastWritten());
            sql.setBytes(
                    4, sum(frontier, head.journalBytes(), head.lastWritten()).bytes());
            sql.executeUpdate();
        }
    }

    private static Hash sum(byte[] frontier, long journalBytes, String lastWritten) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(frontier);
            digest.update((journalBytes + " " + lastWritten).getBytes(StandardCharsets.UTF_8));
            return Hash.of(digest.digest());
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform must offer SHA-256", impossible);
        }
    }

    private HeadRow() {}
}
