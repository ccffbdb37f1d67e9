package bedledger.ledger.tree;

/** A proof that does not prove what it was given for; {@link #reason} names the fault. */
public final class ProofRejected extends RuntimeException {

    /** What is wrong with a proof. */
    public enum Reason {
        /** The index lies outside the tree, or the older tree is larger than the newer. */
        OUT_OF_RANGE,
        /** Fewer hashes than the shape of the tree asks for. */
        TOO_SHORT,
        /** More hashes than the shape of the tree asks for. */
        TOO_LONG,
        /** The hashes lead to another root than the older tree's. */
        OLDER_ROOT_DIFFERS,
        /** The hashes lead to another root than the tree's. */
        ROOT_DIFFERS
    }

    private final Reason reason;

    ProofRejected(Reason reason, String found, String expected) {
        super("The proof was refused (" + reason + "): found " + found + ", expected " + expected
                + " (RFC 9162 §2.1). Ask for the proof again, and compare both checkpoints with an older copy.");
        this.reason = reason;
    }

    /** The fault, for callers that tell them apart. */
    public Reason reason() {
        return reason;
    }
}
