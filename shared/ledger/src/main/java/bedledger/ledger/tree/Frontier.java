package bedledger.ledger.tree;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/**
 * A whole tree in at most 63 hashes: the roots of its full subtrees, largest (leftmost) first.
 *
 * <p>Enough to append and to give the root, so it can be kept in the row of the last entry and roll back with it.
 *
 * @param size number of leaves
 * @param peaks one hash per set bit of the size, from the highest bit down
 */
public record Frontier(long size, List<Hash> peaks) {

    /** Checks that there is one peak for each full subtree. */
    public Frontier {
        peaks = List.copyOf(peaks);
        if (size < 0 || peaks.size() != Long.bitCount(size)) {
            throw new IllegalArgumentException("A tree frontier of " + peaks.size() + " hashes for " + size
                    + " entries was refused: a tree of n entries has one full subtree per set bit of n"
                    + " (RFC 9162 §2.1). Rebuild it from the journal.");
        }
    }

    /** The tree without leaves. */
    public static Frontier empty() {
        return new Frontier(0, List.of());
    }

    /** The tree with one more leaf; this one stays as it is. */
    public Frontier append(Hash leaf) {
        List<Hash> grown = new ArrayList<>(peaks);
        Hash carried = leaf;
        for (long full = size; (full & 1) == 1; full >>= 1) {
            carried = Merkle.node(grown.remove(grown.size() - 1), carried);
        }
        grown.add(carried);
        return new Frontier(size + 1, grown);
    }

    /** The Merkle tree hash of all leaves so far. */
    public Hash root() {
        if (peaks.isEmpty()) {
            return Merkle.emptyRoot();
        }
        Hash root = peaks.get(peaks.size() - 1);
        for (int i = peaks.size() - 2; i >= 0; i--) {
            root = Merkle.node(peaks.get(i), root);
        }
        return root;
    }

    /** Eight bytes of size, highest first, then the peaks. */
    public byte[] toBytes() {
        ByteBuffer out = ByteBuffer.allocate(Long.BYTES + peaks.size() * Hash.LENGTH);
        out.putLong(size);
        peaks.forEach(peak -> out.put(peak.bytes()));
        return out.array();
    }

    /**
     * Reads what {@link #toBytes} wrote.
     *
     * @throws IllegalArgumentException where size and number of hashes do not belong together
     */
    public static Frontier parse(byte[] bytes) {
        if (bytes.length < Long.BYTES || (bytes.length - Long.BYTES) % Hash.LENGTH != 0) {
            throw new IllegalArgumentException("A tree frontier of " + bytes.length
                    + " bytes was refused: it is 8 bytes of size and 32 for each hash. Rebuild it from the journal.");
        }
        ByteBuffer in = ByteBuffer.wrap(bytes);
        long size = in.getLong();
        List<Hash> peaks = new ArrayList<>();
        while (in.hasRemaining()) {
            byte[] peak = new byte[Hash.LENGTH];
            in.get(peak);
            peaks.add(Hash.of(peak));
        }
        return new Frontier(size, peaks);
    }
}
