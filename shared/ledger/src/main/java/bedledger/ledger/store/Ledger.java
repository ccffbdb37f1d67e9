package bedledger.ledger.store;

import bedledger.language.ActId;
import bedledger.language.Entry;
import bedledger.language.PersonId;
import bedledger.language.Place;
import bedledger.ledger.journal.JournalFailed;
import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.Checkpoints;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.note.SigningKey;
import bedledger.ledger.tree.Frontier;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.axonframework.common.jdbc.ConnectionProvider;
import org.axonframework.common.transaction.TransactionManager;
import org.axonframework.eventsourcing.eventstore.EventStorageEngine;
import org.axonframework.serialization.Serializer;

/**
 * A book open for writing: one writer at a time, every commit forced in the journal before it is acknowledged.
 *
 * <p>Opening compares the database with the journal. A database that is behind, emptied or unreadable is brought up from the journal;
 * a journal that is behind the database or the last checkpoint is a {@link Disagreement}, and nothing is written.
 */
public final class Ledger implements AutoCloseable {
    private final BookFolder folder;
    private final String more;
    private final Serializer serializer = new DeedSerializer();
    private Opening open;

    private Ledger(BookFolder folder, String more, boolean anew) {
        folder.requireUsable();
        this.folder = folder;
        this.more = more;
        this.open = Opening.of(folder, more, anew);
    }

    /** Makes a new book's folder, with the key that will sign its checkpoints. Throws {@link BookUnusable} where a book is already. */
    public static void create(BookFolder folder, SigningKey key) {
        folder.make(key.verifier());
    }

    public static Ledger open(BookFolder folder) {
        return open(folder, Database.NO_REUSE);
    }

    static Ledger open(BookFolder folder, String more) {
        return new Ledger(folder, more, false);
    }

    /** What opening had to put right, as sentences for people; empty in the normal case. */
    public List<String> reports() {
        return open.reports();
    }

    public long size() {
        return open.transactions().head().size();
    }

    public Frontier frontier() {
        return open.transactions().head().frontier();
    }

    /** When the last entry was written; empty before the first. */
    public Optional<Instant> lastWritten() {
        String at = open.transactions().head().lastWritten();
        return at.isEmpty() ? Optional.empty() : Optional.of(Instant.parse(at));
    }

    /** Every entry of every act of which some entry touches one of the places, in the order written. */
    public List<Entry> touching(Collection<? extends Place> places) {
        return open.query().touching(places);
    }

    /** The keys ({@link Place#key()}) of all places so far that begin like this. */
    public List<String> placeKeys(String beginning) {
        return open.query().placeKeys(beginning);
    }

    /** The last place in a day given to an entry of that day; 0 if there is none. */
    public int lastPlaceIn(LocalDate day) {
        return open.query().lastPlaceIn(day);
    }

    /** Every entry of every act of which some entry is stored under this name, in the order written. */
    public List<Entry> ofKind(String name) {
        return open.query().ofKind(name);
    }

    public Optional<Entry> entry(long number) {
        return open.query().entry(number);
    }

    public List<Entry> act(ActId act) {
        return open.query().act(act);
    }

    /** Axon's storage of this book. */
    public EventStorageEngine storageEngine() {
        return AxonStorage.over(open.transactions(), open.database(), serializer);
    }

    public TransactionManager transactionManager() {
        return open.transactions();
    }

    public ConnectionProvider connectionProvider() {
        return open.transactions();
    }

    public Serializer serializer() {
        return serializer;
    }

    /**
     * Runs the work, in which Axon publishes events, as one commit: when this returns, its entries are acknowledged for good.
     *
     * @return whether the storage engine goes on; if not, the database was closed and opened again (it had not taken the entries, and
     *     was brought up from the journal; or it had grown, and was compacted), and any Axon configuration made from the old storage
     *     engine must be made again
     * @throws BookUnusable where nothing was written; or, saying so, where the entries are in the book and it could not be opened again
     */
    public boolean commit(PersonId writtenBy, Instant writtenAt, Runnable work) {
        try {
            open.transactions().commit(writtenBy, writtenAt, work);
        } catch (CommittedInJournalOnly committed) {
            open.database().abandon();
            reopen(StoreFailed.reason(committed.failure()));
            return false;
        }
        if (open.database().needsCompacting()) {
            compact();
            return false;
        }
        return true;
    }

    private void compact() {
        try {
            open.database().close();
        } catch (SQLException failed) {
            open.database().abandon();
        }
        reopen("it could not be compacted");
    }

    private void reopen(String why) {
        try {
            open = open.again(folder, more);
        } catch (BookUnusable | JournalFailed failed) {
            throw new BookUnusable(
                    "What you wrote is recorded; do not write it again. But the database of the book failed (" + why
                            + "). Check that the disk is there and not full: the next opening brings the database up from the"
                            + " journal.",
                    failed);
        }
    }

    /** Signs the log as it stands and keeps the checkpoint; the last one again if nothing was written since. */
    public SignedNote seal(SigningKey key) {
        Checkpoints kept = Checkpoints.in(folder.checkpoints());
        Checkpoint now =
                new Checkpoint(key.verifier().name(), size(), frontier().root());
        Optional<SignedNote> last = kept.last();
        if (last.isPresent() && last.get().text().equals(now.text())) {
            return last.get();
        }
        SignedNote note = key.sign(now.text());
        kept.append(note);
        return note;
    }

    /** Makes the database anew from the journal; the old one is set aside. Returns what was done, as sentences for people. */
    public static List<String> rebuild(BookFolder folder) {
        try (Ledger ledger = new Ledger(folder, Database.NO_REUSE, true)) {
            return ledger.reports();
        }
    }

    @Override
    public void close() {
        try {
            open.close();
        } catch (SQLException failed) {
            open.abandon();
        }
    }
}
