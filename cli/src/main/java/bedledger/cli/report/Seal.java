package bedledger.cli.report;

import bedledger.cli.prove.Verify;
import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.Checkpoints;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.verify.Disagreement;
import bedledger.ledger.verify.Evidence;
import bedledger.ledger.verify.Verdict;
import bedledger.ledger.verify.Verifier;
import java.util.List;
import java.util.Optional;

/**
 * The last checkpoint, and whether journal and checkpoints agreed when the report was made.
 *
 * @param key the book's verifier key
 * @param note the signed note as it stands in the book; empty if there is none
 * @param root its root in base64; empty if there is none
 * @param size the entries it covers
 */
record Seal(String key, String note, String root, long size, Verdict verdict) {
    private static final int ROOT_IN_FOOT = 12;

    static Seal of(BookFolder folder) {
        String key = folder.verifierKey().toString();
        Verdict verdict = Verifier.verify(Evidence.of(folder.journal(), folder.checkpoints(), key));
        try {
            Optional<SignedNote> last = Checkpoints.in(folder.checkpoints()).last();
            Optional<Checkpoint> checkpoint = last.map(note -> Checkpoint.parse(note.text()));
            return new Seal(
                    key,
                    last.map(SignedNote::toString).orElse(""),
                    checkpoint.map(known -> known.rootHash().base64()).orElse(""),
                    checkpoint.map(Checkpoint::size).orElse(0L),
                    verdict);
        } catch (NoteRejected damaged) {
            return new Seal(key, "", "", 0, verdict);
        }
    }

    static Seal of(String key, SignedNote note, Verdict verdict) {
        Checkpoint known = Checkpoint.parse(note.text());
        return new Seal(key, note.toString(), known.rootHash().base64(), known.size(), verdict);
    }

    boolean hasNote() {
        return !note.isEmpty();
    }

    boolean agrees() {
        return verdict.agrees();
    }

    List<String> disagreements() {
        return verdict.disagreements().stream().map(Disagreement::toString).toList();
    }

    /** How far the signatures reach, for a report over so many entries. */
    String reach(long entries) {
        if (note.isEmpty()) {
            return "No checkpoint was signed yet: no entry of this report is sealed.";
        }
        long sealed = Math.min(verdict.sealed(), entries);
        return sealed + " of the " + entries + " entries of this report lie under a signed checkpoint; "
                + (entries - sealed) + " were written after it.";
    }

    List<String> proves() {
        return Verify.PROVES;
    }

    String foot() {
        return root.isEmpty() ? "no checkpoint" : "checkpoint " + size + " " + root.substring(0, ROOT_IN_FOOT) + "…";
    }
}
