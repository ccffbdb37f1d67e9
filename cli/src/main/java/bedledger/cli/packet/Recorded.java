package bedledger.cli.packet;

import bedledger.language.Acts;
import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.ledger.entry.Line;
import bedledger.ledger.entry.UnreadableEntry;
import bedledger.ledger.tree.Frontier;
import bedledger.ledger.tree.Hash;
import bedledger.ledger.tree.LeafSource;
import bedledger.ledger.tree.Merkle;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The entries of a log and their leaf hashes, gathered line by line. */
final class Recorded {
    private static final String DOCUMENT =
            "\"name\":\"" + Acts.of(BookKeeping.DocumentAttached.class).name() + "\"";

    private final boolean keeps;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Entry> attached = new ArrayList<>();
    private final ByteArrayOutputStream hashes = new ByteArrayOutputStream();

    private long size;
    private @Nullable Entry first;
    private @Nullable Entry last;
    private byte[] lastLine = {};

    private Recorded(boolean keeps) {
        this.keeps = keeps;
    }

    /** Keeps every entry. */
    static Recorded whole() {
        return new Recorded(true);
    }

    /** Reads and keeps only the first entry, the last, and those with a document: neither memory nor time grows much with the log. */
    static Recorded passing() {
        return new Recorded(false);
    }

    /** Takes the next line, without its line feed; throws {@link UnreadableEntry} where it cannot be read, and keeps nothing of it. */
    void add(byte[] line) {
        lastLine = line;
        if (!keeps && first != null && !speaksOfADocument(line)) {
            size++;
            last = null;
            return;
        }
        Entry entry = Line.read(line);
        first = first == null ? entry : first;
        last = entry;
        size++;
        if (entry.fact() instanceof BookKeeping.DocumentAttached) {
            attached.add(entry);
        }
        if (keeps) {
            entries.add(entry);
            hashes.writeBytes(Merkle.leaf(line).bytes());
        }
    }

    /** In a canonical line a name is spelt in one way only; the verifier names those that are not canonical. */
    private static boolean speaksOfADocument(byte[] line) {
        return new String(line, StandardCharsets.ISO_8859_1).contains(DOCUMENT);
    }

    /** Reads the last entry, where it was not; throws {@link UnreadableEntry} as above. */
    void finish() {
        if (last == null && size > 0) {
            size--;
            last = Line.read(lastLine);
            size++;
        }
    }

    List<Entry> entries() {
        return entries;
    }

    /** 32 bytes for each entry. */
    byte[] leaves() {
        return hashes.toByteArray();
    }

    long size() {
        return size;
    }

    /** The entries with a document. */
    List<Entry> attached() {
        return attached;
    }

    Optional<BookKeeping.BookOpened> opened() {
        return first == null || !(first.fact() instanceof BookKeeping.BookOpened opened)
                ? Optional.empty()
                : Optional.of(opened);
    }

    Entry first() {
        return Objects.requireNonNull(first, "there is an entry");
    }

    Entry last() {
        return Objects.requireNonNull(last, "there is an entry");
    }

    /** The root over the first entries. */
    Hash root(long size) {
        byte[] all = leaves();
        Frontier tree = Frontier.empty();
        for (int at = 0; at < size; at++) {
            tree = tree.append(leaf(all, at));
        }
        return tree.root();
    }

    /** The leaves as a source for proofs, copied once. */
    LeafSource source() {
        byte[] all = leaves();
        return index -> leaf(all, index);
    }

    private static Hash leaf(byte[] all, long index) {
        int from = Math.toIntExact(index * Hash.LENGTH);
        return Hash.of(Arrays.copyOfRange(all, from, from + Hash.LENGTH));
    }
}
