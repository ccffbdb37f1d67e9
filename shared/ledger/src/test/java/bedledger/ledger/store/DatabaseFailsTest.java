package bedledger.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedledger.ledger.entry.Deed;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.SplittableRandom;
import org.axonframework.eventhandling.GenericDomainEventMessage;
import org.h2.engine.SessionLocal;
import org.h2.jdbc.JdbcConnection;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The database dies under a commit, before the journal line is forced or after. */
class DatabaseFailsTest {
    private static final Instant AT = Instant.parse("2026-03-02T17:40:00.005Z");

    @TempDir
    Path scratch;

    private PracticeBook book;

    @BeforeEach
    void write() {
        book = new PracticeBook(scratch).holding(5);
    }

    @ParameterizedTest(name = "a commit of {0}")
    @ValueSource(ints = {1, 3, 40})
    void recordsWhatTheJournalTookThoughTheDatabaseLostItsFile(int entries) throws Exception {
        try (Ledger ledger = Ledger.open(book.folder)) {
            boolean taken = ledger.commit(Pen.WRITER, AT, () -> {
                for (int i = 0; i < entries; i++) {
                    append(ledger, 100 + i);
                }
                // H2 writes nothing to its file before the commit, so the statements above pass and the commit fails.
                takeFileAway(ledger);
            });
            assertThat(taken).as("whether the database took it").isFalse();
            assertThat(ledger.reports()).singleElement().asString().contains("The database", entries + " entries");
            assertThat(ledger.size()).isEqualTo(5 + entries);
            assertThat(ledger.entry(5 + entries)).isPresent();

            Pen pen = new Pen(ledger, new SplittableRandom(1), "after");
            pen.write(2);
        }
        assertThat(book.lines()).isEqualTo(5 + entries + 2);
        assertThat(book.open()).as("what the next opening put right").isEmpty();
        assertThat(book.verify().disagreements()).isEmpty();
        assertThat(book.verify().rows()).isEqualTo(5 + entries + 2);
    }

    @Test
    void recordsTheFirstEntryOfABookToo() throws Exception {
        PracticeBook fresh = new PracticeBook(scratch.resolve("fresh"));
        try (Ledger ledger = Ledger.open(fresh.folder)) {
            assertThat(ledger.commit(Pen.WRITER, AT, () -> {
                        append(ledger, 1);
                        takeFileAway(ledger);
                    }))
                    .isFalse();
            ledger.seal(fresh.key);
        }
        assertThat(fresh.verify().disagreements()).isEmpty();
        assertThat(fresh.verify().rows()).isEqualTo(1);
    }

    @Test
    void writesNothingWhenTheDatabaseDiesBeforeTheJournal() throws Exception {
        byte[] before = book.journal();
        try (Ledger ledger = Ledger.open(book.folder)) {
            assertThatThrownBy(() -> ledger.commit(Pen.WRITER, AT, () -> {
                        append(ledger, 100);
                        shutDown(ledger);
                    }))
                    .isInstanceOf(StoreFailed.class)
                    .hasMessageContaining("nothing was written")
                    .hasMessageContaining("bedledger rebuild");
            assertThatThrownBy(() -> ledger.commit(Pen.WRITER, AT, () -> {
                        shutDown(ledger);
                        append(ledger, 100);
                    }))
                    .as("when Axon comes to feel it first")
                    .isInstanceOf(StoreFailed.class);
        }
        assertThat(book.folder.journal()).hasBinaryContent(before);
        book.writeMore(1);
        assertThat(book.verify().disagreements()).isEmpty();
    }

    @Test
    void takesBackWhatFailedHalfWay() throws Exception {
        try (Ledger ledger = Ledger.open(book.folder)) {
            assertThatThrownBy(() -> ledger.commit(Pen.WRITER, AT, () -> {
                        append(ledger, 100);
                        throw new StackOverflowError("an error, not an exception");
                    }))
                    .isInstanceOf(StackOverflowError.class);
            assertThat(ledger.size()).isEqualTo(5);
            new Pen(ledger, new SplittableRandom(1), "after").write(1);
            assertThat(ledger.size()).isEqualTo(6);
        }
        assertThat(book.lines()).isEqualTo(6);
        assertThat(book.verify().disagreements()).isEmpty();
    }

    @Test
    void takesNoEventsOutsideACommit() {
        try (Ledger ledger = Ledger.open(book.folder)) {
            assertThatThrownBy(() -> append(ledger, 100)).hasMessageContaining("outside a commit");
            assertThat(ledger.size()).isEqualTo(5);
        }
    }

    private static void append(Ledger ledger, long number) {
        Deed deed = Pen.deed(number);
        ledger.storageEngine()
                .appendEvents(new GenericDomainEventMessage<>(
                        EntryRow.TYPE, Pen.id(number).toString(), 0, deed));
    }

    private static void takeFileAway(Ledger ledger) {
        try {
            Connection connection = ledger.connectionProvider().getConnection();
            SessionLocal session =
                    (SessionLocal) connection.unwrap(JdbcConnection.class).getSession();
            session.getDatabase().getStore().getMvStore().getFileStore().close();
        } catch (SQLException unexpected) {
            throw new IllegalStateException(unexpected);
        }
    }

    private static void shutDown(Ledger ledger) {
        try (Statement sql = ledger.connectionProvider().getConnection().createStatement()) {
            sql.execute("SHUTDOWN IMMEDIATELY");
        } catch (SQLException alreadyDown) {
            return;
        }
    }
}
