package bedledger.ledger.note;

import bedledger.ledger.tree.Hash;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What the two proofs of C2SP have in common: lines, then hashes one a line, an empty line, and a signed checkpoint. */
final class ProofText {

    /** No tree of 2^63 leaves needs more. */
    static final int MOST_HASHES = 126;

    private static final Pattern DECIMAL = Pattern.compile("0|[1-9][0-9]{0,18}");
    private static final String GAP = "\n\n";

    private final String what;
    private final List<String> lines;
    private final byte[] note;
    private int next;

    private ProofText(String what, List<String> lines, byte[] note) {
        this.what = what;
        this.lines = lines;
        this.note = note;
    }

    static ProofText parse(String what, byte[] bytes) {
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException malformed) {
            throw refused(what, "it is not UTF-8");
        }
        int gap = text.indexOf(GAP);
        if (gap < 0) {
            throw refused(what, "it has no empty line with a checkpoint after it");
        }
        return new ProofText(
                what,
                List.of(text.substring(0, gap).split("\n", -1)),
                text.substring(gap + GAP.length()).getBytes(StandardCharsets.UTF_8));
    }

    static String print(String head, List<Hash> hashes, SignedNote note) {
        StringBuilder text = new StringBuilder(head);
        hashes.forEach(hash -> text.append(hash.base64()).append('\n'));
        return text.append('\n').append(note).toString();
    }

    boolean startsWith(String head) {
        return next < lines.size() && lines.get(next).startsWith(head);
    }

    /** What follows these words on the next line. */
    String after(String head) {
        if (!startsWith(head)) {
            throw refused(what, "a line that begins with \"" + head.strip() + "\" is missing");
        }
        return lines.get(next++).substring(head.length());
    }

    long number(String head) {
        String text = after(head);
        try {
            if (DECIMAL.matcher(text).matches()) {
                return Long.parseLong(text);
            }
        } catch (NumberFormatException tooLarge) {
            // refused as any other
        }
        throw refused(what, "\"" + text + "\" is no plain whole number");
    }

    List<Hash> hashes() {
        List<Hash> hashes = new ArrayList<>();
        for (; next < lines.size(); next++) {
            if (hashes.size() == MOST_HASHES) {
                throw refused(what, "it has more hashes than any tree");
            }
            try {
                hashes.add(Hash.parseBase64(lines.get(next)));
            } catch (IllegalArgumentException notAHash) {
                throw refused(what, "its line " + (next + 1) + " is no SHA-256 value in base64");
            }
        }
        return List.copyOf(hashes);
    }

    SignedNote checkpoint() {
        SignedNote signed = SignedNote.parse(note);
        Checkpoint.parse(signed.text());
        return signed;
    }

    private static NoteRejected refused(String what, String why) {
        return new NoteRejected("The " + what + " was refused: " + why + ". Ask for it again.");
    }
}
