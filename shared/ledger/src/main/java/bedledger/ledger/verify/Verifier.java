package bedledger.ledger.verify;

import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.note.VerifierKey;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.util.Collections;
import java.util.Iterator;

/**
 * Reads a book's journal, checkpoints and database and says whether they agree; it writes nothing.
 *
 * <p>One pass over each, in memory that does not grow with the book. Whatever bytes the files hold, the answer is a
 * {@link Verdict}, never an exception. What agreement proves and what not is said in FORMAT.md.
 */
public final class Verifier {

    /** The longest line that a journal may hold, 8 MiB; see FORMAT.md. */
    private static final int LONGEST_LINE = 8 * 1024 * 1024;

    private final Evidence evidence;
    private final Findings findings = new Findings();
    private long entries;

    private Verifier(Evidence evidence) {
        this.evidence = evidence;
    }

    /** Compares everything that is given. */
    public static Verdict verify(Evidence evidence) {
        return new Verifier(evidence).run();
    }

    private Verdict run() {
        VerifierKey key;
        try {
            key = VerifierKey.parse(evidence.verifierKey());
        } catch (NoteRejected rejected) {
            findings.add(Disagreement.at(
                    0,
                    Fault.KEY_UNREADABLE,
                    "verifier key",
                    "\"" + evidence.verifierKey() + "\"",
                    "name+id+key (C2SP signed-note, Ed25519)",
                    "Copy the whole line from whoever keeps the book."));
            return new Verdict(0, 0, 0, 0, 0, findings.inOrder(), 0);
        }
        try (InputStream file = orEmpty(evidence.checkpoints(), "checkpoint file");
                HeadReader own = new HeadReader("checkpoint file", file, key, findings);
                HeadReader others = new HeadReader("checkpoint kept elsewhere", againstBytes(), key, findings)) {
            return compare(own, others);
        } catch (IOException failed) {
            findings.add(unreadable("files", failed));
            return new Verdict(entries, 0, 0, 0, 0, findings.inOrder(), findings.notListed());
        }
    }

    private Verdict compare(HeadReader ownReader, HeadReader otherReader) throws IOException {
        HeadCheck own = new HeadCheck(ownReader, findings);
        HeadCheck others = new HeadCheck(otherReader, findings);
        RowCheck rows = new RowCheck(rows(), findings);
        walk(own, others, rows);
        own.finish(entries);
        others.finish(entries);
        if (evidence.rows().isPresent()) {
            rows.finish();
        }
        if (!own.anySigned() && entries > 0) {
            findings.add(noCheckpoint());
        }
        if (evidence.against().isPresent() && otherReader.seen() == 0) {
            findings.add(nothingToCompareWith(otherReader));
        }
        return new Verdict(
                entries,
                own.agreeing(),
                own.agreedSize(),
                others.agreeing(),
                rows.equal(),
                findings.inOrder(),
                findings.notListed());
    }

    private void walk(HeadCheck own, HeadCheck others, RowCheck rows) throws IOException {
        TreeHead tree = new TreeHead();
        LineCheck check = new LineCheck(findings);
        own.compare(0, tree);
        others.compare(0, tree);
        try (ByteLines lines = new ByteLines(orEmpty(evidence.journal(), "journal"), LONGEST_LINE)) {
            for (ByteLines.Line line = lines.next(); line != null; line = lines.next()) {
                if (!line.finished()) {
                    findings.add(unfinished(line));
                    return;
                }
                entries++;
                tree.add(line.bytes());
                long number = check.check(line);
                if (evidence.rows().isPresent()) {
                    rows.compare(number, line.bytes());
                }
                own.compare(entries, tree);
                others.compare(entries, tree);
            }
        }
    }

    private Iterator<? extends Row> rows() {
        return evidence.rows().isPresent() ? evidence.rows().get() : Collections.emptyIterator();
    }

    private InputStream againstBytes() {
        return new ByteArrayInputStream(evidence.against().orElse("").getBytes(StandardCharsets.UTF_8));
    }

    private InputStream orEmpty(Source source, String what) {
        try {
            return source.open();
        } catch (IOException failed) {
            findings.add(unreadable(what + " " + source.name(), failed));
            return InputStream.nullInputStream();
        }
    }

    private static Disagreement unreadable(String what, IOException failed) {
        String why = failed instanceof NoSuchFileException ? "no such file" : String.valueOf(failed.getMessage());
        return Disagreement.at(
                0, Fault.UNREADABLE, what, why, "a file that can be read", "Check the path, or restore from a backup.");
    }

    private Disagreement unfinished(ByteLines.Line line) {
        return Disagreement.at(
                entries + 1,
                Fault.LINE_UNFINISHED,
                "end of the journal",
                line.length() + " bytes without a line feed",
                "a line feed after the last entry",
                "If a write was cut short, opening the book sets these bytes aside; if not, compare with a backup.");
    }

    private Disagreement noCheckpoint() {
        return new Disagreement(
                1,
                entries,
                Fault.NO_CHECKPOINT,
                "checkpoint file",
                "no checkpoint signed by this key",
                "one at least",
                "Until one is signed nothing shows a change; if one was signed before, its file was taken away.");
    }

    private static Disagreement nothingToCompareWith(HeadReader reader) {
        return Disagreement.at(
                0,
                Fault.CHECKPOINT_UNREADABLE,
                reader.where(),
                "nothing",
                "a signed checkpoint",
                "Give the file that you kept when the checkpoint was handed to you.");
    }
}
