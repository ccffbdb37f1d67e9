package bedledger.ledger.store;

import bedledger.language.Entry;
import bedledger.language.Place;
import bedledger.ledger.entry.Line;
import bedledger.ledger.tree.Frontier;
import bedledger.ledger.tree.Hash;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.jspecify.annotations.Nullable;

/** The H2 database of one book: its address, its tables, its head row. */
final class Database implements AutoCloseable {
    /** Settings do not stick in the file, so every opening goes through here. */
    private static final String SETTINGS =
            ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0;TRACE_LEVEL_SYSTEM_OUT=0";
    /** Compact on closing when the file is this many times the journal, and larger than a small file ever needs to be. */
    private static final int BLOAT = 4;

    private static final long SMALL = 2L << 20;

    private final BookFolder folder;
    private final Connection connection;

    private Database(BookFolder folder, Connection connection) {
        this.folder = folder;
        this.connection = connection;
    }

    /** {@code more} is further H2 settings, for tests that make the file reuse its space sooner. */
    static Database open(BookFolder folder, String more) throws SQLException, IOException {
        Files.createDirectories(folder.store());
        Path file = folder.store().toAbsolutePath().resolve("book");
        Connection connection = DriverManager.getConnection("jdbc:h2:file:" + file + SETTINGS + more);
        Database database = new Database(folder, connection);
        try {
            connection.setAutoCommit(false);
            database.createTables();
            return database;
        } catch (SQLException failed) {
            database.abandon();
            throw failed;
        }
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
            sql.execute(
                    "CREATE TABLE IF NOT EXISTS touch (place VARCHAR(130), number BIGINT, PRIMARY KEY (place, number))");
            sql.execute("CREATE TABLE IF NOT EXISTS place (place VARCHAR(130) PRIMARY KEY)");
            sql.execute("CREATE TABLE IF NOT EXISTS head (one INT PRIMARY KEY, frontier VARBINARY(4096) NOT NULL,"
                    + " journal_bytes BIGINT NOT NULL, last_written VARCHAR(24) NOT NULL)");
        }
        connection.commit();
    }

    /** The head row; null where the rows do not bear it out, as after a cut file that H2 opened all the same. */
    @Nullable
    Head head() throws SQLException {
        try (Statement sql = connection.createStatement();
                ResultSet counted = sql.executeQuery("SELECT COUNT(*), COALESCE(MAX(number), 0) FROM entry")) {
            counted.next();
            long rows = counted.getLong(1);
            long last = counted.getLong(2);
            Head head = storedHead();
            return head.size() == rows && head.size() == last ? head : null;
        }
    }

    private Head storedHead() throws SQLException {
        try (Statement sql = connection.createStatement();
                ResultSet row = sql.executeQuery("SELECT frontier, journal_bytes, last_written FROM head")) {
            return row.next()
                    ? new Head(Frontier.parse(row.getBytes(1)), row.getLong(2), row.getString(3))
                    : Head.empty();
        }
    }

    void write(Head head) throws SQLException {
        try (PreparedStatement sql = connection.prepareStatement("MERGE INTO head VALUES (1, ?, ?, ?)")) {
            sql.setBytes(1, head.frontier().toBytes());
            sql.setLong(2, head.journalBytes());
            sql.setString(3, head.lastWritten());
            sql.executeUpdate();
        }
    }

    static final String INSERT = "INSERT INTO entry VALUES (?, ?, ?, ?, 'Act', ?, ?, ?, ?, ?, ?, ?, ?, ?)";
    private static final byte[] NO_META = {'{', '}'};

    static void fill(PreparedStatement insert, Entry entry, byte[] payload, Hash leaf) throws SQLException {
        insert.setLong(1, entry.number());
        insert.setString(2, entry.act() + "-" + entry.sequence());
        insert.setString(3, entry.act().toString());
        insert.setLong(4, entry.sequence());
        insert.setString(5, entry.kind().name());
        insert.setString(6, Integer.toString(entry.kind().revision()));
        insert.setString(7, Line.written(entry.writtenAt()));
        insert.setString(8, entry.writtenBy().name());
        insert.setBytes(9, payload);
        insert.setBytes(10, NO_META);
        insert.setBytes(11, leaf.bytes());
        insert.setObject(12, entry.head().doneOn());
        insert.setInt(13, entry.head().placeInDay());
    }

    /** Writes the index rows of an entry; indexes only, rebuilt from the journal whenever they are in doubt. */
    void index(Entry entry) throws SQLException {
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

    /** Closes the database; a file that has grown far beyond what is in it is compacted first. */
    @Override
    public void close() throws SQLException {
        if (connection.isClosed()) {
            return;
        }
        try (Statement sql = connection.createStatement()) {
            sql.execute(bloated() ? "SHUTDOWN COMPACT" : "SHUTDOWN");
        }
    }

    private boolean bloated() {
        long file = folder.databaseFile().toFile().length();
        return file > SMALL && file > BLOAT * folder.journal().toFile().length();
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
