package bedledger.cli.packet;

import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.ledger.entry.Line;
import bedledger.ledger.entry.UnreadableEntry;
import bedledger.ledger.tree.Frontier;
import bedledger.ledger.tree.Hash;
import bedledger.ledger.tree.LeafSource;
import bedledger.ledger.tree.Merkle;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The entries of a log and their leaf hashes, gathered line by line. */
final class Recorded {
    private final List<Entry> entries = new ArrayList<>();
    private final ByteArrayOutputStream hashes = new ByteArrayOutputStream();

    /** Takes the next line, without its line feed; throws {@link UnreadableEntry} where it cannot be read, and keeps nothing of it. */
    void add(byte[] line) {
        entries.add(Line.read(line));
        hashes.writeBytes(Merkle.leaf(line).bytes());
    }

    List<Entry> entries() {
        return entries;
    }

    /** 32 bytes for each entry. */
    byte[] leaves() {
        return hashes.toByteArray();
    }

    long size() {
        return entries.size();
    }

    Optional<BookKeeping.BookOpened> opened() {
        return entries.isEmpty() || !(entries.get(0).fact() instanceof BookKeeping.BookOpened opened)
                ? Optional.empty()
                : Optional.of(opened);
    }

    Entry last() {
        return entries.get(entries.size() - 1);
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
