package bedledger.cli.packet;

import bedledger.cli.packet.InspectView.Inspected;
import bedledger.language.Entry;
import bedledger.ledger.entry.Line;
import bedledger.ledger.entry.UnreadableEntry;
import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.EntryProof;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.note.VerifierKey;
import bedledger.ledger.tree.Merkle;
import bedledger.ledger.tree.ProofRejected;
import bedledger.ledger.tree.Proofs;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Checks the proof that one entry lies under a checkpoint. Its file carries no key: without one given, nothing is proved. */
final class EntryInspection {
    private static final String WHERE = "the proof";

    private final Given given;
    private final List<Difference> differences = new ArrayList<>();
    private final List<String> countersigned = new ArrayList<>();
    private long sealed;
    private @Nullable String key;
    private Optional<Entry> entry = Optional.empty();
    private long number;

    private EntryInspection(Given given) {
        this.given = given;
    }

    static Inspected of(String file, byte[] bytes, Given given) {
        EntryInspection inspection = new EntryInspection(given);
        try {
            inspection.check(EntryProof.parse(bytes), bytes);
        } catch (NoteRejected unreadable) {
            inspection.add("not-a-proof", SealCheck.shown(String.valueOf(unreadable.getMessage())), "C2SP tlog-proof");
        }
        return inspection.view(file);
    }

    private void check(EntryProof proof, byte[] bytes) {
        Checkpoint checkpoint = Checkpoint.parse(proof.checkpoint().text());
        sealed = checkpoint.size();
        number = proof.index() + 1;
        if (!Arrays.equals(proof.text().getBytes(StandardCharsets.UTF_8), bytes)) {
            add("proof-unreadable", "a second spelling", "C2SP tlog-proof as it is written");
        }
        try {
            Proofs.verifyInclusion(
                    Merkle.leaf(proof.line()), proof.index(), checkpoint.size(), proof.path(), checkpoint.rootHash());
        } catch (ProofRejected fails) {
            add("proof-fails", "hashes that do not lead from the line to the root", "RFC 9162 §2.1.3");
        }
        checkSignature(proof, checkpoint);
        Countersigned.find(WHERE, proof.checkpoint(), given.cosigners(), countersigned, differences);
        read(proof);
    }

    private void checkSignature(EntryProof proof, Checkpoint checkpoint) {
        Optional<String> own = given.keys().stream()
                .filter(one -> one.startsWith(checkpoint.origin() + "+"))
                .findFirst();
        if (own.isEmpty()) {
            differences.add(new Difference(
                    number,
                    number,
                    "no-key",
                    WHERE,
                    "no key of " + checkpoint.origin() + " among those given",
                    "the key of this log",
                    "Give the key that the farm handed you: --key KEY"));
            return;
        }
        key = own.get();
        try {
            proof.checkpoint().verify(List.of(VerifierKey.parse(own.get())));
        } catch (NoteRejected fails) {
            add("checkpoint-not-signed", "a checkpoint that the key did not sign", "its signature");
        }
    }

    private void read(EntryProof proof) {
        try {
            entry = Optional.of(Line.read(proof.line()));
            if (entry.get().number() != number) {
                add("number-out-of-order", "entry " + entry.get().number() + " at place " + number, "the same");
            }
        } catch (UnreadableEntry | IllegalArgumentException | IllegalStateException unreadable) {
            add(
                    "entry-unreadable",
                    SealCheck.shown(String.valueOf(unreadable.getMessage())),
                    "an entry of a known kind");
        }
    }

    private void add(String fault, String found, String expected) {
        differences.add(new Difference(number, number, fault, WHERE, found, expected, Difference.ASK));
    }

    private Inspected view(String file) {
        boolean agrees = differences.isEmpty();
        List<String> proved = new ArrayList<>();
        if (agrees) {
            proved.add("This entry stood as number " + number + " in the log when its checkpoint over " + sealed
                    + " entries was signed, with the key that you gave: "
                    + entry.map(EntryInspection::line).orElse(""));
            countersigned.forEach(by -> proved.add("Countersigned: " + by + "."));
        }
        return new Inspected(
                file,
                "entry",
                null,
                false,
                agrees,
                number,
                sealed,
                entry.map(one -> one.writtenAt().toString()).orElse(null),
                key,
                agrees,
                0,
                countersigned,
                0,
                false,
                null,
                proved,
                agrees
                        ? List.of(
                                "What was corrected or struck later: that stands in other entries.",
                                "That what is written was done: a seal shows that a record was not changed, not that"
                                        + " it is true.")
                        : List.of(),
                differences);
    }

    private static String line(Entry entry) {
        return new String(Line.write(entry), StandardCharsets.UTF_8);
    }
}
