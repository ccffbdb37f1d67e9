package bedledger.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.ledger.verify.Disagreement;
import bedledger.ledger.verify.Verdict;
import bedledger.ledger.verify.Verifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows of the database changed by hand through SQL, each column of each row, and the rows around them. */
class TamperedRowsTest {
    private static final int ENTRIES = TamperedBookTest.ENTRIES;
    /** For every column of the table of entries, what a forger might put there, all the rest left as it is. */
    private static final Map<String, String> FORGED = new LinkedHashMap<>();

    static {
        FORGED.put("number", "number + 1000");
        FORGED.put("event_id", "event_id || '0'");
        FORGED.put("act", "'01900000-0000-7000-8000-00000000ffff'");
        FORGED.put("sequence", "sequence + 7");
        FORGED.put("type", "'Deed'");
        FORGED.put("name", "CASE name WHEN 'bed.broadforked' THEN 'bed.tilled' ELSE 'bed.broadforked' END");
        FORGED.put("revision", "'01'");
        FORGED.put("written_at", "'2026-03-01T00:00:00.000Z'");
        FORGED.put("written_by", "'tim'");
        FORGED.put("payload", "REPLACE(payload, X'3135', X'3136')");
        FORGED.put("meta", "X'7b7d20'");
        FORGED.put(
                "leaf",
                "SUBSTRING(leaf FROM 1 FOR 31) || CASE SUBSTRING(leaf FROM 32) WHEN X'00' THEN X'01' ELSE X'00' END");
        FORGED.put("done_on", "done_on + 1");
        FORGED.put("place_in_day", "place_in_day + 1");
    }

    @TempDir
    Path scratch;

    private PracticeBook book;
    private Connection forger;

    @BeforeEach
    void write() throws Exception {
        book = new PracticeBook(scratch).holding(ENTRIES, TamperedBookTest.SEALED_EVERY);
        forger = forger();
    }

    private Connection forger() throws SQLException {
        String file = book.folder.databaseFile().toString().replace(".mv.db", "");
        Connection connection = DriverManager.getConnection("jdbc:h2:file:" + file);
        connection.setAutoCommit(false);
        return connection;
    }

    @AfterEach
    void close() throws SQLException {
        forger.close();
    }

    @Test
    void findsEveryColumnOfEveryRow() throws Exception {
        assertThat(FORGED.keySet()).as("columns a forger might change").isEqualTo(columns());
        assertThat(verify().disagreements()).isEmpty();
        int found = 0;
        for (Map.Entry<String, String> column : FORGED.entrySet()) {
            for (int entry = 1; entry <= ENTRIES; entry++) {
                forge("UPDATE entry SET " + column.getKey() + " = " + column.getValue() + " WHERE number = " + entry);
                found += named(entry, column.getKey() + " of row " + entry);
            }
        }
        System.out.println("columns of rows changed: " + found + " of " + FORGED.size() * ENTRIES
                + " found and named to the entry");
        assertThat(found).isEqualTo(14 * ENTRIES);
    }

    private java.util.Set<String> columns() throws SQLException {
        java.util.Set<String> columns = new java.util.LinkedHashSet<>();
        try (var row = forger.createStatement().executeQuery("SELECT * FROM entry WHERE FALSE")) {
            for (int column = 1; column <= row.getMetaData().getColumnCount(); column++) {
                columns.add(row.getMetaData().getColumnName(column).toLowerCase(java.util.Locale.ROOT));
            }
        }
        return columns;
    }

    @Test
    void findsEveryByteOfAPayload() throws Exception {
        int found = 0;
        int length = payload(30).length;
        for (int at = 0; at < length; at++) {
            byte[] forged = payload(30);
            forged[at] ^= 1;
            try (PreparedStatement sql = forger.prepareStatement("UPDATE entry SET payload = ? WHERE number = 30")) {
                sql.setBytes(1, forged);
                assertThat(sql.executeUpdate()).isEqualTo(1);
            }
            found += named(30, "byte " + at + " of the payload of row 30");
        }
        System.out.println("bytes of a payload changed in the database: " + found + " of " + length + " found");
        assertThat(found).isEqualTo(length).isGreaterThan(100);
    }

    private byte[] payload(int entry) throws SQLException {
        try (var row = forger.createStatement().executeQuery("SELECT payload FROM entry WHERE number = " + entry)) {
            row.next();
            return row.getBytes(1);
        }
    }

    @Test
    void findsRowsDeletedPutInAndSwapped() throws Exception {
        int found = 0;
        for (int entry = 1; entry <= ENTRIES; entry++) {
            forge("DELETE FROM entry WHERE number = " + entry);
            found += named(entry, "row " + entry + " deleted");
            if (entry < ENTRIES) {
                forge("UPDATE entry SET number = -1 WHERE number = " + entry);
                forge("UPDATE entry SET number = " + entry + " WHERE number = " + (entry + 1));
                forge("UPDATE entry SET number = " + (entry + 1) + " WHERE number = -1");
                found += named(entry, "rows " + entry + " and the next swapped");
            }
        }
        for (int number : new int[] {-5, 0, ENTRIES + 1, ENTRIES + 1000}) {
            forge("INSERT INTO entry SELECT " + number + ", 'x', act, sequence + 9, type, name, revision, written_at,"
                    + " written_by, payload, meta, leaf, done_on, place_in_day FROM entry WHERE number = 1");
            assertThat(verify().agrees()).as("a row put in as number " + number).isFalse();
            forger.rollback();
            found++;
        }
        System.out.println("rows deleted, swapped, put in: " + found + " found");
        assertThat(found).isEqualTo(2 * ENTRIES - 1 + 4);
    }

    @Test
    void findsAHeadRowOrIndexRowsThatBelongToOtherEntries() throws Exception {
        String[] forgeries = {
            "UPDATE head SET frontier = SUBSTRING(frontier FROM 1 FOR OCTET_LENGTH(frontier) - 1) || X'00'",
            "UPDATE head SET frontier = X'00'",
            "UPDATE head SET journal_bytes = journal_bytes - 1",
            "UPDATE head SET last_written = '2027-01-01T00:00:00.000Z'",
            "UPDATE head SET sum = SUBSTRING(sum FROM 1 FOR 31) || X'00'",
            "DELETE FROM head",
            "DELETE FROM touch WHERE number = 7",
            "DELETE FROM touch WHERE place = 'bed:S1'",
            "UPDATE touch SET number = 59 WHERE number = 60",
            "INSERT INTO touch VALUES ('bed:X9', 3)",
            "DELETE FROM place WHERE place LIKE 'bed:N%'",
            "INSERT INTO place VALUES ('bed:X9')",
        };
        for (String forgery : forgeries) {
            forge(forgery);
            Optional<Disagreement> first = verify().first();
            assertThat(first)
                    .as(forgery)
                    .hasValueSatisfying(said -> assertThat(said.toString()).containsAnyOf("head row", "index rows"));
            forger.rollback();
        }
        System.out.println("head row and index rows changed: " + forgeries.length + " found");
    }

    /** The same through the file, as {@code verify} opens it: read-only, after the forger has gone. */
    @Test
    void findsItInTheFileToo() throws Exception {
        int found = 0;
        byte[] journal = book.journal();
        for (Map.Entry<String, String> column : FORGED.entrySet()) {
            forge("UPDATE entry SET " + column.getKey() + " = " + column.getValue() + " WHERE number = 33");
            forger.commit();
            forger.close();
            byte[] file = Files.readAllBytes(book.folder.databaseFile());
            Disagreement first = book.verify().first().orElseThrow(() -> new AssertionError(column.getKey()));
            assertThat(first.first())
                    .as("%s: %s", column.getKey(), first)
                    .isEqualTo(33)
                    .isEqualTo(first.last());
            assertThat(book.folder.databaseFile())
                    .as("the database, which verify only reads")
                    .hasBinaryContent(file);
            found++;
            Ledger.rebuild(book.folder);
            assertThat(book.verify().disagreements()).isEmpty();
            forger = forger();
        }
        assertThat(book.folder.journal()).hasBinaryContent(journal);
        System.out.println("columns changed in the file: " + found + " found, and mended by a rebuild");
        assertThat(found).isEqualTo(14);
    }

    private void forge(String sql) throws SQLException {
        try (var statement = forger.createStatement()) {
            assertThat(statement.executeUpdate(sql)).as(sql).isPositive();
        }
    }

    private int named(int entry, String what) throws SQLException {
        Disagreement first = verify().first().orElseThrow(() -> new AssertionError("not found: " + what));
        assertThat(first.first()).as("%s: %s", what, first).isEqualTo(entry).isEqualTo(first.last());
        forger.rollback();
        return 1;
    }

    /** Seen through the forger's own connection, so that a thousand forgeries need no thousand files. */
    private Verdict verify() {
        return Verifier.verify(book.evidence().withRows(DatabaseRows.over(forger)));
    }
}
