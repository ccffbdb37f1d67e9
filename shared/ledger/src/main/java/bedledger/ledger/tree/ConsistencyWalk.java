package bedledger.ledger.tree;

import bedledger.ledger.tree.ProofRejected.Reason;
import java.util.Deque;
import java.util.List;

/** The loop of RFC 9162 §2.1.4.2 for 0 < older < newer: one proof climbs to both roots at once. */
final class ConsistencyWalk {

    private ConsistencyWalk() {}

    static void check(long older, long newer, Deque<Hash> rest, List<Hash> proof, Hash olderRoot, Hash newerRoot) {
        // Step 2: where the older size is a power of two its root is the first node of the path.
        if (Long.bitCount(older) == 1) {
            rest.addFirst(olderRoot);
        }
        int ones = Long.numberOfTrailingZeros(~(older - 1));
        long fn = (older - 1) >> ones;
        long sn = (newer - 1) >> ones;
        Hash fr = Proofs.take(rest, proof);
        Hash sr = fr;
        while (sn > 0) {
            if ((fn & 1) == 1 || fn == sn) {
                Hash left = Proofs.take(rest, proof);
                fr = Merkle.node(left, fr);
                sr = Merkle.node(left, sr);
                while ((fn & 1) == 0 && fn != 0) {
                    fn >>= 1;
                    sn >>= 1;
                }
            } else {
                sr = Merkle.node(sr, Proofs.take(rest, proof));
            }
            fn >>= 1;
            sn >>= 1;
        }
        Proofs.requireUsedUp(rest, proof);
        Proofs.requireRoot(Reason.OLDER_ROOT_DIFFERS, fr, olderRoot);
        Proofs.requireRoot(Reason.ROOT_DIFFERS, sr, newerRoot);
    }
}
