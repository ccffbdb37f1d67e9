package bedledger.ledger.store;

import bedledger.language.Entry;
import bedledger.ledger.entry.Line;
import bedledger.ledger.entry.UnreadableEntry;
import bedledger.ledger.journal.Journal;
import bedledger.ledger.tree.Merkle;

/**
 * Walks over the journal lines that a database lacks, and writes nothing: they must be entries, each the next, and lead through the
 * last checkpoint.
 */
final class Unwritten {
    private final SealedHead sealed;
    private final Head stored;
    private Head head;
    private boolean same;

    /** From a head on, which may be before the one that the database told. */
    Unwritten(Head from, Head stored, SealedHead sealed) {
        this.head = from;
        this.stored = stored;
        this.sealed = sealed;
        this.same = from.frontier().equals(stored.frontier());
    }

    /** How far the database would come. */
    Head in(Journal journal) {
        journal.lines(head.journalBytes(), this::add);
        return head;
    }

    /** Whether the journal holds the very entries that the database told of. */
    boolean holdsTheStored() {
        return same;
    }

    private void add(long offset, byte[] line) {
        head = after(head, read(head, offset, line), offset, line);
        same |= head.frontier().equals(stored.frontier());
        sealed.requireAgreesWith(head);
    }

    static Head after(Head head, Entry entry, long offset, byte[] line) {
        return new Head(
                head.frontier().append(Merkle.leaf(line)), offset + line.length + 1, Line.written(entry.writtenAt()));
    }

    static Entry read(Head head, long offset, byte[] line) {
        Entry entry;
        try {
            entry = Line.read(line);
        } catch (UnreadableEntry unreadable) {
            throw new Disagreement("The journal cannot be read at byte " + offset + ": " + unreadable.getMessage());
        }
        if (entry.number() != head.size() + 1) {
            throw new Disagreement("The journal goes from entry " + head.size() + " to entry " + entry.number()
                    + " at byte " + offset + ".");
        }
        return entry;
    }
}
