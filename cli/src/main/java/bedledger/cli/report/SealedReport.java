package bedledger.cli.report;

import bedledger.cli.read.ReadBook;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.verify.Verdict;
import java.io.IOException;
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
                Asked.of(book, day), Seal.of(key, note, verdict), LeafHashes.of(leaves.clone(), book.zone()), made);
    }

    public void write(Writer out) throws IOException {
        audit.write(out);
    }
}
