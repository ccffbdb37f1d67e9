package bedledger.ledger.note;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Notes one after another, one empty line between two, taken apart.
 *
 * @param notes the bytes of each complete note
 * @param end offset behind the last complete note; what follows was never finished
 */
record NoteFile(List<byte[]> notes, int end) {

    private static final String GAP = "\n\n";

    /** How a block of signatures begins, byte for byte; no origin can, since a key name has no space. */
    private static final String SIGNATURE_HEAD =
            new String(NoteSignature.HEAD.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);

    /** Takes bytes apart that start at the beginning of a note. One char here is one byte, whatever its meaning. */
    static NoteFile parse(byte[] bytes) {
        return parse(new String(bytes, StandardCharsets.ISO_8859_1), 0);
    }

    /** Takes bytes apart that start anywhere in a file, from the first note that begins in them. */
    static NoteFile parseTail(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        int start = text.indexOf(GAP);
        while (start >= 0 && text.startsWith(SIGNATURE_HEAD, start + GAP.length())) {
            start = text.indexOf(GAP, start + GAP.length());
        }
        return start < 0 ? new NoteFile(List.of(), 0) : parse(text, start + GAP.length());
    }

    private static NoteFile parse(String text, int from) {
        List<byte[]> notes = new ArrayList<>();
        int start = from;
        int end = from;
        while (start < text.length()) {
            int signatures = text.indexOf(GAP, start);
            int next = signatures < 0 ? -1 : text.indexOf(GAP, signatures + GAP.length());
            boolean last = next < 0;
            if (signatures < 0 || signatures + GAP.length() == text.length() || (last && !text.endsWith("\n"))) {
                break;
            }
            end = last ? text.length() : next + 1;
            notes.add(text.substring(start, end).getBytes(StandardCharsets.ISO_8859_1));
            start = end + 1;
        }
        return new NoteFile(notes, end);
    }
}
