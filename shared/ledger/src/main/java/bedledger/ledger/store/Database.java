package bedledger.ledger.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.jspecify.annotations.Nullable;

/** The H2 database of one book: its address, its tables, its head row. */
final class Database implements AutoCloseable {
    /** Settings do not stick in the file, so every opening goes through here. */
    private static final String SETTINGS =
            ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0;TRACE_LEVEL_SYSTEM_OUT=0";

    /**
     * H2 that writes over space it freed can come back from a kill without its last commits, and lose more of them at the next clean
     * close. Measured over 180 kills: with reuse up to 86 entries behind the journal, without it never more than the commit in flight.
     */
    static final String NO_REUSE = ";REUSE_SPACE=FALSE";

    static final String REUSE = ";REUSE_SPACE=TRUE";

    private static final String READING =
            ";ACCESS_MODE_DATA=r;IFEXISTS=TRUE;DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0;TRACE_LEVEL_SYSTEM_OUT=0";
    /**
     * A file that never reuses its space grows with every commit, and is compacted when it is so many times the journal (a compacted
     * one was measured at about half) and large enough to be worth the while.
     */
    private static final int BLOAT_CLOSING = 2;

    private static final long LARGE_CLOSING = 1L << 20;
    private static final int BLOAT_OPEN = 4;
    private static final long LARGE_OPEN = 32L << 20;

    private final BookFolder folder;
    private final Connection connection;
    private final boolean reuses;

    private Database(BookFolder folder, Connection connection, boolean reuses) {
        this.folder = folder;
        this.connection = connection;
        this.reuses = reuses;
    }

    /** {@code more} is further H2 settings: {@link #NO_REUSE}, but in tests that make H2 reuse its space, and sooner. */
    static Database open(BookFolder folder, String more) throws SQLException, IOException {
        Files.createDirectories(folder.store());
        PlainTables.require(folder.databaseFile());
        Path file = folder.store().toAbsolutePath().resolve("book");
        Connection connection = DriverManager.getConnection("jdbc:h2:file:" + file + SETTINGS + more);
        Database database = new Database(folder, connection, more.contains(REUSE));
        try {
            connection.setAutoCommit(false);
            database.createTables();
            return database;
        } catch (SQLException failed) {
            database.abandon();
            throw failed;
        }
    }

    /** Opens what is there without writing to it, nor taking it for its own where a writer has it open. */
    static Connection forReading(BookFolder folder, String more) throws SQLException {
        Path file = folder.store().toAbsolutePath().resolve("book");
        PlainTables.require(folder.databaseFile());
        return DriverManager.getConnection("jdbc:h2:file:" + file + READING + more);
    }

    Connection connection() {
        return connection;
    }

    private void createTables() throws SQLException {
        try (Statement sql = connection.createStatement()) {
            sql.execute("CREATE TABLE IF NOT EXISTS entry (number BIGINT PRIMARY KEY, event_id VARCHAR(64) NOT NULL,"
                    + " act VARCHAR(36) NOT NULL, sequence BIGINT NOT NULL, type VARCHAR(40) NOT NULL,"
                    + " name VARCHAR(80) NOT NULL, revision VARCHAR(8) NOT NULL, written_at VARCHAR(24) NOT NULL,"
                    + " written_by VARCHAR(32) NOT NULL, payload VARBINARY(1000000) NOT NULL,"
                    + " meta VARBINARY(16) NOT NULL, leaf BINARY(32) NOT NULL, done_on DATE NOT NULL,"
                    + " place_in_day INT NOT NULL, UNIQUE (act, sequence))");
            sql.execute("CREATE INDEX IF NOT EXISTS entry_by_day ON entry (done_on, place_in_day)");
            sql.execute("CREATE INDEX IF NOT EXISTS entry_by_name ON entry (name)");
            sql.execute(
                    "CREATE TABLE IF NOT EXISTS touch (place VARCHAR(130), number BIGINT, PRIMARY KEY (place, number))");
            sql.execute("CREATE TABLE IF NOT EXISTS place (place VARCHAR(130) PRIMARY KEY)");
            sql.execute("CREATE TABLE IF NOT EXISTS head (one INT PRIMARY KEY, frontier VARBINARY(4096) NOT NULL,"
                    + " journal_bytes BIGINT NOT NULL, last_written VARCHAR(24) NOT NULL, sum BINARY(32) NOT NULL)");
        }
        connection.commit();
    }

    /** The head row; null where it is damaged or the rows do not bear it out, as after a cut file that H2 opened all the same. */
    @Nullable
    Head head() throws SQLException {
        try (Statement sql = connection.createStatement();
                ResultSet counted = sql.executeQuery("SELECT COUNT(*), COALESCE(MAX(number), 0) FROM entry")) {
            counted.next();
            long rows = counted.getLong(1);
            long last = counted.getLong(2);
            Head head = HeadRow.read(connection);
            return head != null && head.size() == rows && head.size() == last ? head : null;
        }
    }

    void write(Head head) throws SQLException {
        HeadRow.write(connection, head);
    }

    /** Closes the database; a file that has grown far beyond what is in it is compacted first. */
    @Override
    public void close() throws SQLException {
        if (connection.isClosed()) {
            return;
        }
        try (Statement sql = connection.createStatement()) {
            sql.execute(bloated(BLOAT_CLOSING, LARGE_CLOSING) ? "SHUTDOWN COMPACT" : "SHUTDOWN");
        }
    }

    /** Whether it should be closed and opened again for its size, in a process that goes on writing. */
    boolean needsCompacting() {
        return !reuses && bloated(BLOAT_OPEN, LARGE_OPEN);
    }

    private boolean bloated(int bloat, long large) {
        long file = folder.databaseFile().toFile().length();
        return file > large && file > bloat * folder.journal().toFile().length();
    }

    /** Gives the database up without asking it to finish anything. */
    void abandon() {
        try (Statement sql = connection.createStatement()) {
            sql.execute("SHUTDOWN IMMEDIATELY");
        } catch (SQLException alreadyGone) {
            return;
        }
    }
}
