package bedledger.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.ledger.entry.Deed;
import bedledger.ledger.entry.UnreadableEntry;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import org.axonframework.eventhandling.DomainEventMessage;
import org.axonframework.eventhandling.GenericDomainEventMessage;
import org.axonframework.eventsourcing.eventstore.EventStorageEngine;
import org.axonframework.modelling.command.AggregateStreamCreationException;
import org.axonframework.modelling.command.ConcurrencyException;
import org.axonframework.serialization.SimpleSerializedObject;
import org.axonframework.serialization.UnknownSerializedType;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What Axon writes to and reads from the book through its own interfaces. */
class AxonStorageTest {
    private static final Instant AT = Instant.parse("2026-03-02T19:00:00Z");
    private static final String ACT = Pen.id(500).toString();

    @TempDir
    Path scratch;

    private PracticeBook book;

    @BeforeEach
    void write() {
        book = new PracticeBook(scratch).holding(3);
    }

    @Test
    void givesTheEventsOfAnActInTheirOrder() {
        try (Ledger ledger = Ledger.open(book.folder)) {
            ledger.commit(Pen.WRITER, AT, () -> append(ledger, event(0, 1), event(1, 2)));
            EventStorageEngine axon = ledger.storageEngine();
            List<? extends DomainEventMessage<?>> events =
                    axon.readEvents(ACT).asStream().toList();
            assertThat(events).extracting(DomainEventMessage::getSequenceNumber).containsExactly(0L, 1L);
            assertThat(events)
                    .extracting(event -> (Object) event.getPayload())
                    .containsExactly(Pen.deed(1), Pen.deed(2));
            assertThat(events).allSatisfy(event -> {
                assertThat(event.getTimestamp()).isEqualTo(AT);
                assertThat(event.getType()).isEqualTo("Act");
                assertThat(event.getMetaData()).isEmpty();
            });
            assertThat(axon.lastSequenceNumberFor(ACT)).contains(1L);
            assertThat(axon.readEvents(null, false)).hasSize(5);
            assertThat(axon.readEvents(Pen.id(77).toString()).asStream()).isEmpty();
        }
    }

    /** H2 hides the broken constraint behind a batch failure; Axon has to hear of it as what it is. */
    @Test
    void hearsOfTwoWritersOfOneAct() throws Exception {
        byte[] journal;
        try (Ledger ledger = Ledger.open(book.folder)) {
            ledger.commit(Pen.WRITER, AT, () -> append(ledger, event(0, 1), event(1, 2)));
            journal = book.journal();
            assertThatThrownBy(() -> ledger.commit(Pen.WRITER, AT, () -> append(ledger, event(1, 3))))
                    .isInstanceOf(ConcurrencyException.class);
            assertThatThrownBy(() -> ledger.commit(Pen.WRITER, AT, () -> append(ledger, event(0, 3))))
                    .isInstanceOf(AggregateStreamCreationException.class);
            assertThatThrownBy(() -> ledger.commit(Pen.WRITER, AT, () -> append(ledger, event(2, 3), event(2, 4))))
                    .as("twice in one commit")
                    .isInstanceOf(ConcurrencyException.class);
            assertThat(ledger.size()).isEqualTo(5);
            assertThat(book.folder.journal()).hasBinaryContent(journal);
            ledger.commit(Pen.WRITER, AT, () -> append(ledger, event(2, 5)));
            assertThat(ledger.size()).isEqualTo(6);
        }
        assertThat(book.verify().disagreements()).isEmpty();
    }

    @ParameterizedTest(name = "the name {0}")
    @ValueSource(
            strings = {
                "java.net.URL",
                "bedledger.ledger.store.AxonStorageTest$Trap",
                "bedledger.ledger.entry.Deed",
                "deed",
                ""
            })
    void makesNothingOfANameThatIsNoKind(String name) throws Exception {
        forge("name", name);
        try (Ledger ledger = Ledger.open(book.folder)) {
            String act = Pen.id(1).toString();
            assertThatThrownBy(() ->
                            ledger.storageEngine().readEvents(act).asStream().forEach(DomainEventMessage::getPayload))
                    .isInstanceOf(UnreadableEntry.class)
                    .hasMessageContaining("'" + name + "' is not known to this program");
            assertThatThrownBy(() -> ledger.entry(1)).isInstanceOf(UnreadableEntry.class);
            assertThat(Sprung.trap).as("whether the named class was touched").isFalse();
        }
    }

    @ParameterizedTest(name = "revision {0}")
    @ValueSource(strings = {"2", "99999999", "-1", "one", ""})
    void makesNothingOfARevisionItDoesNotKnow(String revision) throws Exception {
        forge("revision", revision);
        try (Ledger ledger = Ledger.open(book.folder)) {
            String act = Pen.id(1).toString();
            assertThatThrownBy(() ->
                            ledger.storageEngine().readEvents(act).asStream().forEach(DomainEventMessage::getPayload))
                    .isInstanceOf(UnreadableEntry.class)
                    .hasMessageContaining("Update Bedledger");
            assertThatThrownBy(() -> ledger.entry(1)).isInstanceOf(UnreadableEntry.class);
        }
    }

    @Test
    void knowsStoredNamesOnlyByTheKindsOfAct() {
        DeedSerializer serializer = new DeedSerializer();
        for (ActKind kind : Acts.all()) {
            var stored = new SimpleSerializedObject<>(new byte[0], byte[].class, kind.name(), "1");
            assertThat(serializer.classForType(stored.getType())).isEqualTo(Deed.class);
        }
        for (String name : List.of("java.net.URL", Deed.class.getName(), String.class.getName(), "")) {
            var stored = new SimpleSerializedObject<>(new byte[0], byte[].class, name, "1");
            assertThat(serializer.classForType(stored.getType())).isEqualTo(UnknownSerializedType.class);
            assertThatThrownBy(() -> serializer.deserialize(stored)).isInstanceOf(UnreadableEntry.class);
        }
        var written = serializer.serialize(Pen.deed(1), byte[].class);
        assertThat(written.getType().getName()).isEqualTo("care.weeded");
        assertThat(written.getType().getRevision()).isEqualTo("1");
        assertThat(serializer.<byte[], Deed>deserialize(written)).isEqualTo(Pen.deed(1));
    }

    /** A class that tells on whoever loads it. */
    static final class Trap {
        static {
            Sprung.trap = true;
        }

        private Trap() {}
    }

    private static final class Sprung {
        static boolean trap;

        private Sprung() {}
    }

    private void forge(String column, String value) throws SQLException {
        String file = book.folder.databaseFile().toString().replace(".mv.db", "");
        try (Connection connection = DriverManager.getConnection("jdbc:h2:file:" + file);
                var sql = connection.prepareStatement("UPDATE entry SET " + column + " = ? WHERE number = 1")) {
            sql.setString(1, value);
            assertThat(sql.executeUpdate()).isEqualTo(1);
        }
    }

    private static GenericDomainEventMessage<Deed> event(long sequence, long deed) {
        return new GenericDomainEventMessage<>(EntryRow.TYPE, ACT, sequence, Pen.deed(deed));
    }

    private static void append(Ledger ledger, DomainEventMessage<?>... events) {
        ledger.storageEngine().appendEvents(events);
    }
}
