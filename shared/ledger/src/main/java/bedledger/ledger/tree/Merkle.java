package bedledger.ledger.tree;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** The hashes of RFC 9162 §2.1.1, whose prefixes keep a leaf from being passed off as a node. */
public final class Merkle {

    private static final byte LEAF = 0x00;
    private static final byte NODE = 0x01;
    private static final Hash EMPTY = Hash.of(sha256().digest());

    private Merkle() {}

    /** The hash of one entry: SHA-256(0x00 ‖ entry). */
    public static Hash leaf(byte[] entry) {
        MessageDigest digest = sha256();
        digest.update(LEAF);
        return Hash.of(digest.digest(entry));
    }

    /** The hash over two subtrees: SHA-256(0x01 ‖ left ‖ right). */
    public static Hash node(Hash left, Hash right) {
        MessageDigest digest = sha256();
        digest.update(NODE);
        digest.update(left.bytes());
        return Hash.of(digest.digest(right.bytes()));
    }

    /** The root of a tree without leaves: SHA-256 of nothing. */
    public static Hash emptyRoot() {
        return EMPTY;
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform must offer SHA-256", impossible);
        }
    }
}
