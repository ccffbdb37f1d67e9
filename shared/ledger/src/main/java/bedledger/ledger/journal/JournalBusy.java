package bedledger.ledger.journal;

/** The journal is open in another program; nothing was read or written. */
public final class JournalBusy extends JournalFailed {
    private static final long serialVersionUID = 1L;

    JournalBusy(String message) {
        super(message);
    }
}
