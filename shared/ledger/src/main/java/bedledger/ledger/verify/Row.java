package bedledger.ledger.verify;

/** One entry as a database holds it, for comparison with the journal. */
public interface Row {

    /** The entry's number, counted from 1. */
    long number();

    /** The canonical line, without a line feed. */
    byte[] lineBytes();
}
