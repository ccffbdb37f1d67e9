package bedledger.ledger.note;

import bedledger.ledger.tree.Hash;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * That one entry is in a log, C2SP tlog-proof; the extra data are the entry's line. It checks no hash: that is for the reader.
 *
 * @param line the entry's line without line feed
 * @param index counted from 0
 * @param path from the leaf's sibling to the root's child
 * @param checkpoint the signed head of the tree
 */
@SuppressWarnings("ArrayRecordComponent") // handed on, never compared
public record EntryProof(byte[] line, long index, List<Hash> path, SignedNote checkpoint) {

    private static final String FIRST = "c2sp.org/tlog-proof@v1";
    private static final String WHAT = "proof of an entry (C2SP tlog-proof)";

    /** Keeps its own copies. */
    public EntryProof {
        line = line.clone();
        path = List.copyOf(path);
    }

    /** Whether a file says that it is such a proof. */
    public static boolean isOne(byte[] start) {
        byte[] first = (FIRST + "\n").getBytes(StandardCharsets.US_ASCII);
        return start.length >= first.length && Arrays.equals(start, 0, first.length, first, 0, first.length);
    }

    /**
     * Reads a proof in its one spelling.
     *
     * @throws NoteRejected for anything else, also without the entry's line
     */
    public static EntryProof parse(byte[] bytes) {
        ProofText text = ProofText.parse(WHAT, bytes);
        if (!text.after(FIRST).isEmpty()) {
            throw new NoteRejected("The " + WHAT + " was refused: its first line is another. Ask for it again.");
        }
        byte[] line = Base64Text.parse(text.after("extra "), "extra data");
        return new EntryProof(line, text.number("index "), text.hashes(), text.checkpoint());
    }

    @Override
    public byte[] line() {
        return line.clone();
    }

    /** The file's text. */
    public String text() {
        String head = FIRST + "\nextra " + Base64Text.print(line) + "\nindex " + index + "\n";
        return ProofText.print(head, path, checkpoint);
    }
}
