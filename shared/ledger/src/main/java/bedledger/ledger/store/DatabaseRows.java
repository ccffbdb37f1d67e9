package bedledger.ledger.store;

import bedledger.ledger.verify.Row;
import bedledger.ledger.verify.RowSource;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The rows of a book's database for the verifier, read without writing, each as the line that its columns spell.
 *
 * <p>A row that cannot be read, or whose other columns do not belong to its line (another leaf, another day), is an
 * {@link IllegalStateException} when its line is asked for; the verifier makes a finding of it.
 */
public final class DatabaseRows implements RowSource, AutoCloseable {
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
        ended = page.isEmpty();
    }

    /** Whether the head row and the index rows are those of the rows read. */
    @Override
    public Optional<String> rest() {
        try {
            return connection == null ? Optional.empty() : totals.againstRestOf(connection);
        } catch (SQLException failed) {
            throw unreadable(failed);
        }
    }

    @Override
    public Row next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        return totals.add(page.remove());
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
