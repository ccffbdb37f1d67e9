package bedledger.ledger.store;

import bedledger.ledger.journal.Journal;
import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.Checkpoints;
import bedledger.ledger.tree.Merkle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.axonframework.eventsourcing.eventstore.EventStorageEngine;
import org.axonframework.eventsourcing.eventstore.jdbc.EventSchema;
import org.axonframework.eventsourcing.eventstore.jdbc.JdbcEventStorageEngine;
import org.axonframework.serialization.Serializer;

/** One opening of a book's journal and database, brought to agree. */
final class Opening {
    private static final int ALREADY_OPEN = 90020;
    private static final int BATCH = 1000;

    private final Journal journal;
    private final Database database;
    private final SealedTransactions transactions;
    private final Query query;
    private final List<String> reports;

    private Opening(Journal journal, Database database, Head head, List<String> reports) {
        this.journal = journal;
        this.database = database;
        this.transactions = new SealedTransactions(database, journal, head);
        this.query = new Query(database.connection());
        this.reports = List.copyOf(reports);
    }

    static Opening of(BookFolder folder, String more) {
        Journal journal = Journal.open(folder.journal());
        try {
            return of(folder, more, journal);
        } catch (IOException | SQLException failed) {
            journal.close();
            throw new BookUnusable(
                    "The database of the book could not be made ready (" + firstLine(failed)
                            + "); nothing was written. Check that the disk is there and not full, then run 'bedledger rebuild'.",
                    failed);
        } catch (RuntimeException failed) {
            journal.close();
            throw failed;
        }
    }

    private static Opening of(BookFolder folder, String more, Journal journal) throws IOException, SQLException {
        List<String> reports = new ArrayList<>();
        journal.recovery().report().ifPresent(reports::add);
        Database database = openOrAnew(folder, more, reports);
        try {
            Head head = database.head();
            if (head == null || (head.size() == 0 && journal.length() > 0)) {
                boolean damaged = head == null;
                database.abandon();
                setDatabaseAside(folder);
                database = Database.open(folder, more);
                head = Head.empty();
                if (damaged) {
                    reports.add("The database had lost entries; it was made anew from the journal.");
                }
            }
            Head level = level(folder, journal, database, head, reports);
            return new Opening(journal, database, level, reports);
        } catch (SQLException | RuntimeException failed) {
            database.abandon();
            throw failed;
        }
    }

    private static Database openOrAnew(BookFolder folder, String more, List<String> reports)
            throws IOException, SQLException {
        try {
            return Database.open(folder, more);
        } catch (SQLException unreadable) {
            if (unreadable.getErrorCode() == ALREADY_OPEN) {
                throw new BookUnusable("The database of the book in '" + folder.root()
                        + "' is open in another program. Close it there, then try again. Nothing was written.");
            }
            setDatabaseAside(folder);
            Database anew = Database.open(folder, more);
            reports.add("The database could not be read (" + firstLine(unreadable)
                    + "); it was set aside and made anew from the journal.");
            return anew;
        }
    }

    /** Brings the database up to the journal; a journal that is behind is a disagreement. */
    private static Head level(BookFolder folder, Journal journal, Database database, Head head, List<String> reports)
            throws SQLException {
        if (journal.length() < head.journalBytes()) {
            throw new Disagreement("The journal of the book is shorter than the database knows: " + journal.length()
                    + " bytes, where entry " + head.size() + " ended at byte " + head.journalBytes() + ".");
        }
        Head level = head;
        if (journal.length() > head.journalBytes()) {
            level = new Replay(database, head).from(journal);
            database.connection().commit();
            if (head.size() > 0) {
                reports.add("The database was behind; " + (level.size() - head.size())
                        + " entries were brought up from the journal.");
            }
        } else {
            requireSameLast(journal, database, head);
        }
        requireCheckpoint(folder, level);
        return level;
    }

    private static void requireSameLast(Journal journal, Database database, Head head) throws SQLException {
        Optional<byte[]> last = journal.lastLine();
        boolean same = last.isEmpty()
                ? head.size() == 0
                : Merkle.leaf(last.get()).equals(new Query(database.connection()).leaf(head.size()));
        if (!same) {
            throw new Disagreement("The last line of the journal is not entry " + head.size() + " of the database.");
        }
    }

    private static void requireCheckpoint(BookFolder folder, Head head) {
        Optional<Checkpoint> last =
                Checkpoints.in(folder.checkpoints()).last().map(note -> Checkpoint.parse(note.text()));
        Predicate<Checkpoint> ahead = checkpoint -> checkpoint.size() > head.size();
        if (last.filter(ahead).isPresent()) {
            throw new Disagreement("The last checkpoint speaks of " + last.get().size() + " entries; the journal holds "
                    + head.size() + ".");
        }
        boolean differs = last.filter(checkpoint -> checkpoint.size() == head.size()
                        && !checkpoint.rootHash().equals(head.frontier().root()))
                .isPresent();
        if (differs) {
            throw new Disagreement("The journal is not the one that the last checkpoint was signed over.");
        }
    }

    static void setDatabaseAside(BookFolder folder) {
        Path file = folder.databaseFile();
        try {
            if (Files.exists(file)) {
                Path aside = Files.createDirectories(folder.root().resolve("set-aside"));
                Files.move(file, aside.resolve("book.mv.db"), StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException failed) {
            throw new BookUnusable("The damaged database '" + file + "' could not be set aside: " + failed.getMessage()
                    + ". Move it away by hand; the journal holds everything.");
        }
    }

    private static String firstLine(Exception failed) {
        return String.valueOf(failed.getMessage()).lines().findFirst().orElse("no reason given");
    }

    EventStorageEngine engine(Serializer serializer) {
        return JdbcEventStorageEngine.builder()
                .snapshotSerializer(serializer)
                .eventSerializer(serializer)
                .persistenceExceptionResolver(new DuplicateKey())
                .connectionProvider(transactions)
                .transactionManager(transactions)
                .dataType(byte[].class)
                .batchSize(BATCH)
                .lowestGlobalSequence(1)
                .appendEvents(new EntryAppender(transactions, database))
                .schema(EventSchema.builder()
                        .eventTable("entry")
                        .globalIndexColumn("number")
                        .timestampColumn("written_at")
                        .eventIdentifierColumn("event_id")
                        .aggregateIdentifierColumn("act")
                        .sequenceNumberColumn("sequence")
                        .typeColumn("type")
                        .payloadTypeColumn("name")
                        .payloadRevisionColumn("revision")
                        .payloadColumn("payload")
                        .metaDataColumn("meta")
                        .build())
                .build();
    }

    SealedTransactions transactions() {
        return transactions;
    }

    Query query() {
        return query;
    }

    List<String> reports() {
        return reports;
    }

    void close() throws SQLException {
        try {
            database.close();
        } finally {
            journal.close();
        }
    }

    void abandon() {
        database.abandon();
        journal.close();
    }
}
