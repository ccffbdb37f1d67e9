package bedledger.ledger.store;

import bedledger.ledger.tree.Frontier;

/**
 * How far the log has come.
 *
 * @param frontier the compact Merkle tree over all entries; its size is the number of entries
 * @param journalBytes length of the journal that holds them
 * @param lastWritten when the last of them was written, as stored; empty before the first
 */
record Head(Frontier frontier, long journalBytes, String lastWritten) {
    static Head empty() {
        return new Head(Frontier.empty(), 0, "");
    }

    long size() {
        return frontier.size();
    }
}
