package bedledger.cli.packet;

import bedledger.ledger.note.CosignerKey;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.note.SignedNote;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Who countersigned a checkpoint, and when, among those whose keys the inspector brought along. */
final class Countersigned {
    static void find(
            String where, SignedNote note, List<CosignerKey> cosigners, List<String> by, List<Difference> differences) {
        for (CosignerKey cosigner : cosigners) {
            try {
                cosigner.countersigned(note).ifPresent(at -> by.add(where + " by " + cosigner.name() + " at " + at));
            } catch (NoteRejected fails) {
                differences.add(Difference.in(
                        where,
                        "countersignature-fails",
                        "a countersignature by " + cosigner.name() + " that fails",
                        "one over this checkpoint"));
            }
        }
    }

    /** The same of a checkpoint that was kept; one that cannot be read is named elsewhere. */
    static void find(String kept, List<CosignerKey> cosigners, List<String> by, List<Difference> differences) {
        try {
            SignedNote note = SignedNote.parse(kept.getBytes(StandardCharsets.UTF_8));
            find("the checkpoint that you kept", note, cosigners, by, differences);
        } catch (NoteRejected several) {
            // several in one file, or none
        }
    }

    private Countersigned() {}
}
