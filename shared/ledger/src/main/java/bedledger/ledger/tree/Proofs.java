package bedledger.ledger.tree;

import bedledger.ledger.tree.ProofRejected.Reason;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Makes and checks the two proofs of RFC 9162: an entry is in the log, and an older log is the beginning of a newer. */
public final class Proofs {

    private Proofs() {}

    /**
     * The path from a leaf to the root, PATH(m, D_n) of RFC 9162 §2.1.3.1.
     *
     * @param index counted from 0
     * @param size leaves in the tree, more than the index
     * @return the sibling hashes, leaf first
     */
    public static List<Hash> inclusion(long index, long size, LeafSource leaves) {
        requireRange(index >= 0 && index < size, "entry index " + index, size);
        List<Hash> path = new ArrayList<>();
        climb(index, 0, size, leaves, path);
        return List.copyOf(path);
    }

    private static void climb(long index, long from, long to, LeafSource leaves, List<Hash> path) {
        if (to - from == 1) {
            return;
        }
        long middle = from + split(to - from);
        if (index < middle) {
            climb(index, from, middle, leaves, path);
            path.add(treeHash(middle, to, leaves));
        } else {
            climb(index, middle, to, leaves, path);
            path.add(treeHash(from, middle, leaves));
        }
    }

    /**
     * The proof that the first leaves are unchanged, PROOF(m, D_n) of RFC 9162 §2.1.4.1.
     *
     * @param older leaves in the older tree; the newer size gives an empty proof, 0 is refused where the newer is not 0
     * @param newer leaves in the newer tree
     */
    public static List<Hash> consistency(long older, long newer, LeafSource leaves) {
        requireComparable(older, newer);
        List<Hash> proof = new ArrayList<>();
        if (older < newer) {
            subProof(older, 0, newer, true, leaves, proof);
        }
        return List.copyOf(proof);
    }

    private static void subProof(long end, long from, long to, boolean whole, LeafSource leaves, List<Hash> proof) {
        if (end == to) {
            if (!whole) {
                proof.add(treeHash(from, to, leaves));
            }
            return;
        }
        long middle = from + split(to - from);
        if (end <= middle) {
            subProof(end, from, middle, whole, leaves, proof);
            proof.add(treeHash(middle, to, leaves));
        } else {
            subProof(end, middle, to, false, leaves, proof);
            proof.add(treeHash(from, middle, leaves));
        }
    }

    private static Hash treeHash(long from, long to, LeafSource leaves) {
        if (to - from == 1) {
            return leaves.leaf(from);
        }
        long middle = from + split(to - from);
        return Merkle.node(treeHash(from, middle, leaves), treeHash(middle, to, leaves));
    }

    /** The largest power of two strictly less than the size, where RFC 9162 §2.1.1 splits a tree. */
    private static long split(long size) {
        return Long.highestOneBit(size - 1);
    }

    /**
     * Checks that a leaf is in a tree, by RFC 9162 §2.1.3.2.
     *
     * @throws ProofRejected where it does not follow, with the reason
     */
    public static void verifyInclusion(Hash leaf, long index, long size, List<Hash> path, Hash root) {
        requireRange(index >= 0 && index < size, "entry index " + index, size);
        Deque<Hash> rest = new ArrayDeque<>(path);
        long node = index;
        long last = size - 1;
        Hash hash = leaf;
        while (last > 0) {
            // At a right edge without sibling the node is carried up as it is and takes nothing from the path.
            if ((node & 1) == 1) {
                hash = Merkle.node(take(rest, path), hash);
            } else if (node < last) {
                hash = Merkle.node(hash, take(rest, path));
            }
            node >>= 1;
            last >>= 1;
        }
        requireUsedUp(rest, path);
        requireRoot(Reason.ROOT_DIFFERS, hash, root);
    }

    /**
     * Checks that an older tree is the beginning of a newer one, by RFC 9162 §2.1.4.2.
     *
     * <p>That a tree begins with the empty one proves nothing, so an older size of 0 is refused unless the newer is 0 too.
     *
     * @throws ProofRejected where it does not follow, with the reason
     */
    public static void verifyConsistency(long older, long newer, List<Hash> proof, Hash olderRoot, Hash newerRoot) {
        requireComparable(older, newer);
        Deque<Hash> rest = new ArrayDeque<>(proof);
        if (older == newer) {
            requireUsedUp(rest, proof);
            requireRoot(Reason.ROOT_DIFFERS, olderRoot, newerRoot);
            return;
        }
        ConsistencyWalk.check(older, newer, rest, proof, olderRoot, newerRoot);
    }

    static Hash take(Deque<Hash> rest, List<Hash> proof) {
        if (rest.isEmpty()) {
            throw new ProofRejected(Reason.TOO_SHORT, proof.size() + " hashes", "more");
        }
        return rest.removeFirst();
    }

    static void requireUsedUp(Deque<Hash> rest, List<Hash> proof) {
        if (!rest.isEmpty()) {
            throw new ProofRejected(
                    Reason.TOO_LONG, proof.size() + " hashes", Integer.toString(proof.size() - rest.size()));
        }
    }

    static void requireRoot(Reason reason, Hash found, Hash expected) {
        if (!found.equals(expected)) {
            throw new ProofRejected(reason, "root " + found, "root " + expected);
        }
    }

    private static void requireComparable(long older, long newer) {
        boolean bothEmpty = older == 0 && newer == 0;
        requireRange(bothEmpty || (older > 0 && older <= newer), "older size " + older, newer);
    }

    private static void requireRange(boolean within, String what, long size) {
        if (!within) {
            throw new ProofRejected(Reason.OUT_OF_RANGE, what, "one that fits a tree of " + size + " entries");
        }
    }
}
