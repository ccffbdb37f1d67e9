package bedledger.ledger.verify;

import java.io.IOException;
import java.util.Base64;
import org.jspecify.annotations.Nullable;

/** Holds a row of checkpoints against the tree as it grows; what agreed before narrows what can be wrong after. */
final class HeadCheck {

    private final HeadReader reader;
    private final Findings findings;
    private @Nullable Head next;
    private long agreeing;
    private long agreedSize;
    private long signed;
    private boolean differed;

    HeadCheck(HeadReader reader, Findings findings) throws IOException {
        this.reader = reader;
        this.findings = findings;
        this.next = reader.next();
    }

    /** Compares every checkpoint of the size that the tree has now. */
    void compare(long size, TreeHead tree) throws IOException {
        while (next != null && next.size() == size) {
            signed++;
            compare(next, tree.root());
            next = reader.next();
        }
    }

    private void compare(Head head, byte[] root) {
        if (head.hasRoot(root)) {
            agreeing++;
            agreedSize = head.size();
        } else if (!differed) {
            // Every later root covers the same entries and differs with this one; once is enough.
            differed = true;
            differs(head, root);
        }
    }

    private void differs(Head head, byte[] root) {
        long first = Math.min(agreedSize + 1, head.size());
        findings.add(new Disagreement(
                first,
                head.size(),
                Fault.ROOT_DIFFERS,
                reader.where() + ", checkpoint " + head.ordinal(),
                "root " + base64(root) + " over the entries",
                "root " + base64(head.checkpoint().rootBytes()) + " as signed",
                "Compare these entries with a backup or a packet from that time."));
    }

    private static String base64(byte[] root) {
        return Base64.getEncoder().encodeToString(root);
    }

    /** What is left after the last entry was signed for more entries than there are. */
    void finish(long entries) throws IOException {
        if (next == null) {
            return;
        }
        Head head = next;
        signed++;
        findings.add(new Disagreement(
                entries + 1,
                head.size(),
                Fault.LOG_CUT,
                reader.where() + ", checkpoint " + head.ordinal(),
                entries + " entries",
                head.size() + " entries, as signed",
                "Entries are gone from the end; restore them from a backup or a packet."));
        while (next != null) {
            next = reader.next();
        }
    }

    /** Says whether there was any checkpoint whose signature holds. */
    boolean anySigned() {
        return signed > 0;
    }

    long agreeing() {
        return agreeing;
    }

    long agreedSize() {
        return agreedSize;
    }
}
