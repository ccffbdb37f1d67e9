package bedledger.ledger.verify;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.List;

/** The Merkle tree head by the algorithm of RFC 9162 §2.1.2, "Verifying a Tree Head Given Entries", one entry at a time. */
final class TreeHead {

    private final List<byte[]> stack = new ArrayList<>();
    private final MessageDigest sha256 = digest();
    private long entries;

    /** Step 2: push the leaf hash, then merge once for every trailing 1 bit of the entry's index. */
    void add(byte[] entry) {
        sha256.update((byte) 0x00);
        stack.add(sha256.digest(entry));
        for (long index = entries; (index & 1) == 1; index >>= 1) {
            merge(stack);
        }
        entries++;
    }

    /** Step 3: merge what is left from the right. */
    byte[] root() {
        if (stack.isEmpty()) {
            return sha256.digest();
        }
        List<byte[]> rest = new ArrayList<>(stack);
        while (rest.size() > 1) {
            merge(rest);
        }
        return rest.get(0).clone();
    }

    private void merge(List<byte[]> hashes) {
        byte[] right = hashes.remove(hashes.size() - 1);
        byte[] left = hashes.remove(hashes.size() - 1);
        sha256.update((byte) 0x01);
        sha256.update(left);
        hashes.add(sha256.digest(right));
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform must offer SHA-256", impossible);
        }
    }
}
