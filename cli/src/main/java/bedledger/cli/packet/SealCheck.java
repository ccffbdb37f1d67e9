package bedledger.cli.packet;

import bedledger.language.Words;
import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.ConsistencyProof;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.packet.MemberNames;
import bedledger.ledger.packet.Members;
import bedledger.ledger.verify.Disagreement;
import bedledger.ledger.verify.Evidence;
import bedledger.ledger.verify.Fault;
import bedledger.ledger.verify.Source;
import bedledger.ledger.verify.Verdict;
import bedledger.ledger.verify.Verifier;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Lines, root and signature, by the verifier that shares no code with what writes; then each checkpoint that was kept. */
final class SealCheck {
    private static final String KEPT = "checkpoint kept elsewhere";
    private static final String OWN = "checkpoint file";
    /** Faults that the keeper's checkpoint cannot be blamed on: they lie in the lines, and are named once. */
    private static final Set<Fault> OF_CHECKPOINTS = Set.of(
            Fault.CHECKPOINT_UNREADABLE,
            Fault.CHECKPOINT_NOT_SIGNED,
            Fault.CHECKPOINT_OF_ANOTHER_LOG,
            Fault.CHECKPOINT_SHRINKS,
            Fault.ROOT_DIFFERS,
            Fault.LOG_CUT);

    private final Members members;
    private final String key;
    private final List<String> since;
    private long heldSince;

    SealCheck(Members members, String key, List<String> since) {
        this.members = members;
        this.key = key;
        this.since = since;
    }

    /** Entries under the latest kept checkpoint that agrees. */
    long heldSince() {
        return heldSince;
    }

    /** What the packet says of itself; what the kept checkpoints add goes to the differences too, behind it. */
    Verdict run(List<Difference> differences, Said said) throws IOException {
        Evidence evidence = Evidence.of(
                new Source(MemberNames.LINES, () -> members.open(MemberNames.LINES)),
                new Source(MemberNames.CHECKPOINT, () -> members.open(MemberNames.CHECKPOINT)),
                key);
        if (!members.has(MemberNames.LINES) || !members.has(MemberNames.CHECKPOINT)) {
            return new Verdict(0, 0, 0, 0, 0, List.of(), 0);
        }
        Verdict verdict = Verifier.verify(since.isEmpty() ? evidence : evidence.against(String.join("\n", since)));
        List<Disagreement> own = new ArrayList<>();
        List<Disagreement> kept = new ArrayList<>();
        for (Disagreement one : verdict.disagreements()) {
            (one.where().startsWith(KEPT) && OF_CHECKPOINTS.contains(one.fault()) ? kept : own).add(one);
        }
        if (kept.isEmpty() && verdict.againstAgreeing() > 0) {
            heldSince = since.stream().mapToLong(SealCheck::largest).max().orElse(0);
        }
        own.forEach(one -> differences.add(narrowed(difference(one), one.fault())));
        kept.forEach(one -> differences.add(difference(one)));
        if (own.isEmpty() && verdict.checkpoints() != 1) {
            differences.add(Difference.in(
                    MemberNames.CHECKPOINT, "checkpoints", verdict.checkpoints() + " signed checkpoints", "one"));
        }
        return new Verdict(verdict.entries(), verdict.checkpoints(), verdict.sealed(), 0, 0, own, verdict.notListed());
    }

    /** What a kept checkpoint covers is as it was signed; so what differs from the packet's own lies behind it. */
    private Difference narrowed(Difference one, Fault fault) {
        return fault == Fault.ROOT_DIFFERS && heldSince >= one.first() && heldSince < one.last()
                ? new Difference(
                        heldSince + 1,
                        one.last(),
                        one.fault(),
                        one.where(),
                        one.found(),
                        one.expected(),
                        one.whatToDo())
                : one;
    }

    private static long largest(String notes) {
        long largest = 0;
        for (String block : notes.split("\n\n", -1)) {
            try {
                largest = Math.max(largest, Checkpoint.parse(block + "\n").size());
            } catch (NoteRejected signatures) {
                // by turns a text and its signatures
            }
        }
        return largest;
    }

    private static Difference difference(Disagreement one) {
        return new Difference(
                one.first(),
                one.last(),
                Words.of(one.fault()),
                one.where()
                        .replace("journal line", MemberNames.LINES + ", line")
                        .replace("end of the journal", "end of " + MemberNames.LINES)
                        .replace("verifier key", MemberNames.KEY)
                        .replace(OWN + ", checkpoint 1", MemberNames.CHECKPOINT)
                        .replace(OWN, MemberNames.CHECKPOINT)
                        .replace(KEPT, "the checkpoint that you kept"),
                shown(one.found()),
                shown(one.expected()),
                one.whatToDo());
    }

    /** Holds a consistency proof in the packet against the one that the lines give. */
    static void consistency(Members members, Recorded recorded, long sealed, List<Difference> differences)
            throws IOException {
        if (!members.has(MemberNames.CONSISTENCY)) {
            return;
        }
        try {
            ConsistencyProof there = ConsistencyProof.parse(members.bytes(MemberNames.CONSISTENCY));
            boolean possible = there.older() >= 1 && there.older() <= sealed;
            if (!possible
                    || !there.path()
                            .equals(bedledger.ledger.tree.Proofs.consistency(
                                    there.older(), sealed, recorded.source()))) {
                differences.add(Difference.in(
                        MemberNames.CONSISTENCY,
                        "proof-differs",
                        "a proof since " + there.older() + " entries that fails",
                        "the one that the lines give"));
            } else if (!java.util.Arrays.equals(there.checkpoint().toBytes(), members.bytes(MemberNames.CHECKPOINT))) {
                differences.add(Difference.in(
                        MemberNames.CONSISTENCY, "proof-differs", "another checkpoint", "the one of checkpoint.txt"));
            }
        } catch (NoteRejected unreadable) {
            differences.add(Difference.in(
                    MemberNames.CONSISTENCY, "proof-unreadable", "no consistency proof", "one (C2SP tlog-witness)"));
        }
    }

    /** At most a line's worth of what a hostile packet may hold. */
    static String shown(String text) {
        String plain = text.replace('\n', '⏎');
        return plain.length() > 200 ? plain.substring(0, 200) + "…" : plain;
    }
}
