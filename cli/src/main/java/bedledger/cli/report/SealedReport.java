package bedledger.cli.report;

import bedledger.cli.paper.Paper;
import bedledger.cli.read.ReadBook;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.verify.Verdict;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.time.Instant;
import java.time.LocalDate;

/** The audit report as a packet holds it: made of the lines and one checkpoint alone, so that whoever has these can make it again. */
public final class SealedReport {
    private final Audit audit;

    /**
     * Prepares the report.
     *
     * @param made stands in its title
     * @param leaves the leaf hash of every entry, 32 bytes each
     * @param key the verifier key under which the note was checked
     */
    public SealedReport(
            ReadBook book, LocalDate day, Instant made, byte[] leaves, String key, SignedNote note, Verdict verdict) {
        audit = Audit.of(
                Asked.of(book, day),
                Seal.of(key, note, verdict),
                LeafHashes.of(leaves.clone(), book.zone()),
                made,
                Audit.LATE_FROM);
    }

    /** The same as a tagged PDF, PDF/A-3a and PDF/UA-1; the same bytes for the same report, whatever zlib the Java has. */
    public void writePaper(OutputStream out) throws IOException {
        audit.writePaper(Paper.Kept.PDF_A_3A, Paper.Packing.NONE, out);
    }

    public void write(Writer out) throws IOException {
        audit.write(out);
    }
}
