package bedledger.ledger.store;

import bedledger.language.Entry;
import bedledger.ledger.entry.Line;
import bedledger.ledger.entry.UnreadableEntry;
import bedledger.ledger.journal.Journal;
import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.tree.Frontier;
import bedledger.ledger.tree.Merkle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a whole book from its journal, without the database and without a lock, and holds it against the last checkpoint as it reads.
 *
 * @param entries every entry, in the order written
 * @param doubt a sentence for people where the journal does not agree with the last checkpoint; reading goes on, for {@code verify}
 *     says more
 */
public record BookReader(List<Entry> entries, Optional<String> doubt) {
    private static final String ASK = " Ask: bedledger verify";

    /** Throws {@link BookUnusable} where the folder is no book or a line cannot be read. */
    public static BookReader of(BookFolder folder) {
        folder.verifierKey();
        folder.requireJournal();
        try {
            return read(folder, SealedHead.read(folder).checkpoint(), Optional.empty());
        } catch (NoteRejected damaged) {
            return read(folder, Optional.empty(), Optional.of("The last checkpoint cannot be read." + ASK));
        }
    }

    private static BookReader read(BookFolder folder, Optional<Checkpoint> last, Optional<String> damage) {
        Reading reading = new Reading(last.map(Checkpoint::size).orElse(0L));
        Journal.read(folder.journal(), 0, reading::add);
        return new BookReader(List.copyOf(reading.entries), damage.or(() -> last.flatMap(reading::doubt)));
    }

    private static final class Reading {
        private final List<Entry> entries = new ArrayList<>();
        private final long sealed;
        private Frontier frontier = Frontier.empty();

        Reading(long sealed) {
            this.sealed = sealed;
        }

        void add(long offset, byte[] line) {
            try {
                entries.add(Line.read(line));
            } catch (UnreadableEntry unreadable) {
                throw new BookUnusable("The journal cannot be read at line " + (entries.size() + 1) + ": "
                        + unreadable.getMessage() + ASK);
            }
            if (frontier.size() < sealed) {
                frontier = frontier.append(Merkle.leaf(line));
            }
        }

        Optional<String> doubt(Checkpoint checkpoint) {
            if (entries.size() < checkpoint.size()) {
                return Optional.of("The last checkpoint speaks of " + checkpoint.size()
                        + " entries, but the journal holds " + entries.size() + "." + ASK);
            }
            return frontier.root().equals(checkpoint.rootHash())
                    ? Optional.empty()
                    : Optional.of("The journal is not the one that the last checkpoint was signed over." + ASK);
        }
    }
}
