package bedledger.ledger.store;

import bedledger.language.Entry;
import bedledger.ledger.entry.Line;
import bedledger.ledger.entry.UnreadableEntry;
import bedledger.ledger.journal.Journal;
import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.Checkpoints;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.tree.Frontier;
import bedledger.ledger.tree.Merkle;
import java.nio.file.Files;
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
        if (!Files.exists(folder.journal())) {
            throw new BookUnusable("The journal '" + folder.journal() + "' is missing. Take it from your backup.");
        }
        Optional<Checkpoint> last = lastCheckpoint(folder);
        Reading reading = new Reading(last.map(Checkpoint::size).orElse(0L));
        Journal.read(folder.journal(), 0, reading::add);
        return new BookReader(List.copyOf(reading.entries), last.flatMap(reading::doubt));
    }

    private static Optional<Checkpoint> lastCheckpoint(BookFolder folder) {
        try {
            return Checkpoints.in(folder.checkpoints()).last().map(note -> Checkpoint.parse(note.text()));
        } catch (NoteRejected damaged) {
            return Optional.empty();
        }
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
