package bedledger.ledger.store;

import bedledger.ledger.journal.Journal;
import bedledger.ledger.tree.Merkle;
import java.io.IOException;
import java.nio.file.Files;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Brings the database of a book up to its journal.
 *
 * <p>Everything is compared before anything is written: a journal that is behind the database or the last checkpoint is a
 * {@link Disagreement}, and leaves both as they are.
 */
final class Levelling {
    private static final int ALREADY_OPEN = 90020;

    private final BookFolder folder;
    private final String more;
    private final Journal journal;
    private final List<String> reports = new ArrayList<>();
    private @Nullable Database database;
    private @Nullable String damage;

    Levelling(BookFolder folder, String more, Journal journal, Optional<String> report) {
        this.folder = folder;
        this.more = more;
        this.journal = journal;
        report.ifPresent(reports::add);
    }

    Opening open(boolean anew) {
        try {
            return level(anew);
        } catch (IOException | SQLException failed) {
            abandon();
            throw new BookUnusable(
                    "The database of the book could not be made ready (" + StoreFailed.reason(failed)
                            + "); nothing was written. Check that the disk is there and not full, then run 'bedledger rebuild'.",
                    failed);
        } catch (RuntimeException failed) {
            abandon();
            throw failed;
        }
    }

    private Opening level(boolean anew) throws IOException, SQLException {
        boolean wasThere = Files.exists(folder.databaseFile());
        Head stored = stored(wasThere);
        requireNotBehind(stored);
        if (anew && wasThere) {
            damage = "was made anew from the journal, as asked";
        }
        Head from = damage == null ? stored : Head.empty();
        Head level = target(from, stored);
        return new Opening(journal, written(from, level, wasThere), level, reports);
    }

    private Head target(Head from, Head stored) throws SQLException {
        SealedHead sealed = SealedHead.in(folder);
        sealed.requireAgreesWith(from);
        Head level = from;
        if (journal.length() > from.journalBytes()) {
            Unwritten unwritten = new Unwritten(from, stored, sealed);
            level = unwritten.in(journal);
            if (!unwritten.holdsTheStored()) {
                reports.add("The old database held other entries than the journal: its first " + stored.size()
                        + " come to another root. It is kept in the folder set-aside. Find out which of the two was"
                        + " changed before you trust either: bedledger verify --against an older CHECKPOINT.");
            }
        } else {
            requireSameLast(from);
        }
        sealed.requireReachedBy(level.size());
        return level;
    }

    /** What the database says; what it cannot say is damage. */
    private Head stored(boolean wasThere) throws IOException, SQLException {
        try {
            Database opened = Database.open(folder, more);
            database = opened;
            Head head = opened.head();
            if (head == null || (wasThere && head.size() == 0 && journal.length() > 0)) {
                damage = "had lost entries; it was set aside and made anew from the journal";
                return Head.empty();
            }
            return head;
        } catch (SQLException unreadable) {
            if (unreadable.getErrorCode() == ALREADY_OPEN) {
                throw new BookUnusable("The database of the book in '" + folder.root()
                        + "' is open in another program. Close it there, then try again. Nothing was written.");
            }
            damage = "could not be read (" + StoreFailed.reason(unreadable)
                    + "); it was set aside and made anew from the journal";
            return Head.empty();
        }
    }

    private void requireNotBehind(Head stored) {
        if (journal.length() < stored.journalBytes()) {
            throw Disagreement.journalBehind(journal.length(), stored);
        }
    }

    private void requireSameLast(Head stored) throws SQLException {
        Optional<byte[]> last = journal.lastLine();
        boolean same = last.isEmpty()
                ? stored.size() == 0
                : database != null
                        && Merkle.leaf(last.get()).equals(new Query(database.connection()).leaf(stored.size()));
        if (!same) {
            throw new Disagreement("The last line of the journal is not entry " + stored.size() + " of the database.");
        }
    }

    private Database written(Head from, Head level, boolean wasThere) throws IOException, SQLException {
        Database current = damage == null && database != null ? database : remade();
        if (level.size() > from.size()) {
            new Replay(current, from).from(journal);
            report(from, level, wasThere);
        }
        return current;
    }

    private Database remade() throws IOException, SQLException {
        abandon();
        folder.setDatabaseAside();
        Database made = Database.open(folder, more);
        database = made;
        return made;
    }

    private void report(Head from, Head level, boolean wasThere) {
        String said = damage;
        if (said == null) {
            said = (wasThere ? "was behind" : "was missing") + "; it was brought up from the journal";
        }
        reports.add("The database " + said + ": " + (level.size() - from.size()) + " entries.");
    }

    private void abandon() {
        if (database != null) {
            database.abandon();
            database = null;
        }
    }
}
