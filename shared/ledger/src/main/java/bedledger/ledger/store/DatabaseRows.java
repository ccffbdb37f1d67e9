package bedledger.ledger.store;

import bedledger.ledger.verify.Row;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;

/**
 * The rows of a book's database for the verifier, read without writing, each as the line that its columns spell.
 *
 * <p>What cannot be read, or does not bear out its line (another leaf, another day, index rows or a head row that do not belong to
 * these entries), is an {@link IllegalStateException} when that row is asked for, or the end; the verifier makes a finding of it.
 */
public final class DatabaseRows implements Iterator<Row>, AutoCloseable {
    private static final int PAGE = 500;

    private final @Nullable Connection connection;
    private final @Nullable SQLException notOpened;
    private final Deque<StoredRow> page = new ArrayDeque<>();
    private final RowTotals totals = new RowTotals();
    private long last = Long.MIN_VALUE;
    private boolean ended;

    private DatabaseRows(@Nullable Connection connection, @Nullable SQLException notOpened) {
        this.connection = connection;
        this.notOpened = notOpened;
    }

    /** The rows of the book's database; one that is not there, or is open in another program, says so when the first is asked for. */
    public static DatabaseRows of(BookFolder folder) {
        try {
            return over(Database.forReading(folder, ""));
        } catch (SQLException failed) {
            return new DatabaseRows(null, failed);
        }
    }

    static DatabaseRows over(Connection connection) {
        return new DatabaseRows(connection, null);
    }

    @Override
    public boolean hasNext() {
        if (page.isEmpty() && !ended) {
            try {
                load();
            } catch (SQLException failed) {
                throw unreadable(failed);
            }
        }
        return !page.isEmpty();
    }

    private void load() throws SQLException {
        if (connection == null) {
            throw notOpened == null ? new SQLException("the database was closed") : notOpened;
        }
        try (PreparedStatement sql = connection.prepareStatement(
                "SELECT * FROM entry WHERE number > ? ORDER BY number FETCH FIRST " + PAGE + " ROWS ONLY")) {
            sql.setLong(1, last);
            try (ResultSet row = sql.executeQuery()) {
                while (row.next()) {
                    page.add(StoredRow.read(row));
                    last = page.getLast().number();
                }
            }
        }
        if (page.isEmpty()) {
            ended = true;
            totals.requireBorneOutBy(connection);
        }
    }

    @Override
    public Row next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        StoredRow row = page.remove();
        totals.add(row);
        return row;
    }

    private static IllegalStateException unreadable(SQLException failed) {
        return new IllegalStateException(StoreFailed.reason(failed), failed);
    }

    @Override
    public void close() {
        try {
            if (connection != null) {
                connection.close();
            }
        } catch (SQLException nothingWasWritten) {
            return;
        }
    }
}
