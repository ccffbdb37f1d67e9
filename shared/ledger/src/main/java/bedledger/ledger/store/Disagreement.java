package bedledger.ledger.store;

/** Journal, database and checkpoints tell different stories that no crash explains; nothing is written until that is settled. */
public final class Disagreement extends BookUnusable {
    private static final long serialVersionUID = 1L;

    static Disagreement journalBehind(long journalBytes, Head stored) {
        return new Disagreement("The journal of the book is shorter than the database knows: " + journalBytes
                + " bytes, where entry " + stored.size() + " ended at byte " + stored.journalBytes() + ".");
    }

    Disagreement(String message) {
        super(message + " Nothing was written. Look with: bedledger verify; then take the book from a copy you trust.");
    }
}
