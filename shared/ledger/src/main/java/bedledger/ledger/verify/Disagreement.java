package bedledger.ledger.verify;

/**
 * One thing that does not agree.
 *
 * @param first the first entry it may concern, counted from 1; 0 where it concerns no entry
 * @param last the last entry it may concern; the same as the first where it is known to the entry
 * @param fault what kind of thing
 * @param where which file, line or checkpoint
 * @param found what is there
 * @param expected what should be there
 * @param whatToDo what the reader can do now
 */
public record Disagreement(
        long first, long last, Fault fault, String where, String found, String expected, String whatToDo) {

    /** Checks the range. */
    public Disagreement {
        if (first < 0 || last < first) {
            throw new IllegalArgumentException("The entries " + first + " to " + last + " are no range");
        }
    }

    static Disagreement at(long entry, Fault fault, String where, String found, String expected, String whatToDo) {
        return new Disagreement(entry, entry, fault, where, found, expected, whatToDo);
    }

    boolean concernsNoEntry() {
        return first == 0;
    }

    /** The entry or range, in words. */
    public String entries() {
        if (first == 0) {
            return "no entry";
        }
        return first == last ? "entry " + first : "entries " + first + " to " + last;
    }

    /** One sentence for people. */
    @Override
    public String toString() {
        return entries() + ", " + where + ": found " + found + ", expected " + expected + ". " + whatToDo;
    }
}
