package bedledger.ledger.verify;

/** The ways in which a book can fail to agree with itself. */
public enum Fault {
    /** The verifier key is none. */
    KEY_UNREADABLE,
    /** A file or the database could not be read. */
    UNREADABLE,
    /** A line longer than any entry. */
    LINE_TOO_LONG,
    /** A line that is not the one spelling of a JSON value. */
    LINE_NOT_CANONICAL,
    /** A line that lacks what every entry has. */
    LINE_INCOMPLETE,
    /** Bytes after the last line feed. */
    LINE_UNFINISHED,
    /** Numbers left out. */
    NUMBER_MISSING,
    /** A number that was there already, or is out of order. */
    NUMBER_OUT_OF_ORDER,
    /** An entry written before the one that stands before it. */
    TIME_GOES_BACK,
    /** There is no checkpoint to compare with. */
    NO_CHECKPOINT,
    /** Something in the checkpoint file is no signed checkpoint. */
    CHECKPOINT_UNREADABLE,
    /** A checkpoint that this key did not sign. */
    CHECKPOINT_NOT_SIGNED,
    /** A checkpoint of another log. */
    CHECKPOINT_OF_ANOTHER_LOG,
    /** A checkpoint smaller than an earlier one. */
    CHECKPOINT_SHRINKS,
    /** The entries do not lead to the root that was signed. */
    ROOT_DIFFERS,
    /** Fewer entries than were signed. */
    LOG_CUT,
    /** A row that says something else than the line. */
    ROW_DIFFERS,
    /** A line without a row. */
    ROW_MISSING,
    /** A row without a line. */
    ROW_EXTRA
}
