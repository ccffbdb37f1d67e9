package bedledger.ledger.store;

import bedledger.language.Entry;
import bedledger.ledger.entry.Line;
import bedledger.ledger.entry.UnreadableEntry;
import bedledger.ledger.journal.Journal;
import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.tree.Frontier;
import bedledger.ledger.tree.Hash;
import bedledger.ledger.tree.Merkle;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

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
        reading.readWaiting();
        return new BookReader(List.copyOf(reading.entries), damage.or(() -> last.flatMap(reading::doubt)));
    }

    /** A line made an entry, or why it could not be; its leaf as far as the checkpoint speaks of it. */
    private record Taken(
            @Nullable Entry entry,
            @Nullable UnreadableEntry unreadable,
            @Nullable Hash leaf) {
        static Taken of(byte[] line, boolean sealed) {
            try {
                return new Taken(Line.read(line), null, sealed ? Merkle.leaf(line) : null);
            } catch (UnreadableEntry unreadable) {
                return new Taken(null, unreadable, null);
            }
        }
    }

    /** Lines are worth nothing to each other until they stand in order, so many of them are read on every processor at once. */
    private static final class Reading {
        private static final int MANY = 4096;

        private final List<byte[]> waiting = new ArrayList<>();
        private final List<Entry> entries = new ArrayList<>();
        private final long sealed;
        private Frontier frontier = Frontier.empty();

        Reading(long sealed) {
            this.sealed = sealed;
        }

        void add(long offset, byte[] line) {
            waiting.add(line);
            if (waiting.size() == MANY) {
                readWaiting();
            }
        }

        void readWaiting() {
            int before = entries.size();
            IntStream all = IntStream.range(0, waiting.size());
            List<Taken> taken = (waiting.size() < MANY ? all : all.parallel())
                    .mapToObj(at -> Taken.of(waiting.get(at), before + at < sealed))
                    .toList();
            taken.forEach(this::add);
            waiting.clear();
        }

        private void add(Taken taken) {
            if (taken.entry() == null) {
                throw new BookUnusable("The journal cannot be read at line " + (entries.size() + 1) + ": "
                        + Objects.requireNonNull(taken.unreadable()).getMessage() + ASK);
            }
            entries.add(taken.entry());
            if (taken.leaf() != null) {
                frontier = frontier.append(taken.leaf());
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
