package bedledger.ledger.verify;

import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.note.VerifierKey;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads signed checkpoints one after another, reports what is none, and gives the rest in growing size. */
final class HeadReader implements Closeable {

    private static final String COMPARE =
            "Compare the file with an older copy; whoever holds one can show what was signed.";

    private final String where;
    private final ByteLines lines;
    private final NoteLines notes;
    private final VerifierKey key;
    private final Findings findings;
    private long ordinal;
    private long largest;

    HeadReader(String where, InputStream in, VerifierKey key, Findings findings) {
        this.where = where;
        this.lines = new ByteLines(in, NoteLines.LONGEST_NOTE);
        this.notes = new NoteLines(lines);
        this.key = key;
        this.findings = findings;
    }

    /** Notes read so far, good or bad. */
    long seen() {
        return ordinal;
    }

    String where() {
        return where;
    }

    /** The next checkpoint that can be compared, or nothing at the end. */
    @Nullable
    Head next() throws IOException {
        byte[] note = notes.next();
        while (note != null) {
            ordinal++;
            Head head = read(note);
            if (head != null) {
                return head;
            }
            note = notes.next();
        }
        return null;
    }

    private @Nullable Head read(byte[] bytes) {
        SignedNote note;
        Checkpoint checkpoint;
        try {
            note = SignedNote.parse(bytes);
            checkpoint = Checkpoint.parse(note.text());
        } catch (NoteRejected rejected) {
            return reported(Fault.CHECKPOINT_UNREADABLE, "no signed checkpoint", "one (C2SP tlog-checkpoint)");
        }
        try {
            note.verify(List.of(key));
        } catch (NoteRejected rejected) {
            return reported(
                    Fault.CHECKPOINT_NOT_SIGNED,
                    "size " + checkpoint.size() + " without a valid signature by " + key.name(),
                    "its signature");
        }
        if (!checkpoint.origin().equals(key.name())) {
            return reported(Fault.CHECKPOINT_OF_ANOTHER_LOG, "origin " + checkpoint.origin(), "origin " + key.name());
        }
        if (checkpoint.size() < largest) {
            return reported(
                    Fault.CHECKPOINT_SHRINKS,
                    "size " + checkpoint.size(),
                    "at least " + largest + ", signed before it");
        }
        largest = checkpoint.size();
        return new Head(ordinal, checkpoint);
    }

    private @Nullable Head reported(Fault fault, String found, String expected) {
        findings.add(Disagreement.at(0, fault, where + ", checkpoint " + ordinal, found, expected, COMPARE));
        return null;
    }

    @Override
    public void close() throws IOException {
        lines.close();
    }
}
