package bedledger.ledger.journal;

/** Takes the lines of a journal one by one. */
@FunctionalInterface
public interface LineConsumer {

    /**
     * Takes one line.
     *
     * @param offset of the line's first byte in the journal
     * @param line its bytes without the line feed; the consumer may keep them
     */
    void accept(long offset, byte[] line);
}
