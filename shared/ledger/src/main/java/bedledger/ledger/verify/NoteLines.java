package bedledger.ledger.verify;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Cuts a checkpoint file into notes: each ends at the empty line after its signatures. */
final class NoteLines {

    /** Three short lines and at most a hundred signatures fit many times over. */
    static final int LONGEST_NOTE = 64 * 1024;

    /** The long dash and space of C2SP signed-note, U+2014 U+0020, with which no line of a checkpoint begins. */
    private static final byte[] SIGNATURE = "\u2014 ".getBytes(StandardCharsets.UTF_8);

    private final ByteLines lines;
    private boolean gapSeen;
    private boolean ended;

    NoteLines(ByteLines lines) {
        this.lines = lines;
    }

    /** The bytes of the next note, well-formed or not; nothing at the end of the file. */
    byte @Nullable [] next() throws IOException {
        ByteArrayOutputStream note = new ByteArrayOutputStream();
        boolean afterSignature = false;
        while (!ended) {
            ByteLines.Line line = lines.next();
            if (line == null) {
                ended = true;
                break;
            }
            gapSeen = line.length() == 0;
            if (gapSeen && afterSignature) {
                return note.toByteArray();
            }
            append(note, line);
            afterSignature = startsWith(line.bytes(), SIGNATURE);
        }
        // A gap at the very end announces a note that never came: hand it on, so that it is reported.
        boolean nothingLeft = note.size() == 0 && !gapSeen;
        gapSeen = false;
        return nothingLeft ? null : note.toByteArray();
    }

    private static boolean startsWith(byte[] line, byte[] head) {
        return line.length >= head.length && Arrays.equals(line, 0, head.length, head, 0, head.length);
    }

    private static void append(ByteArrayOutputStream note, ByteLines.Line line) {
        if (note.size() <= LONGEST_NOTE) {
            note.writeBytes(line.bytes());
            if (line.finished()) {
                note.write('\n');
            }
        }
    }
}
