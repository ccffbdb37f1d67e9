package bedledger.cli.packet;

import java.util.Set;

/**
 * One thing in a packet that does not agree.
 *
 * @param first the first entry it concerns, counted from 1; 0 where it concerns none, or it is not known which
 * @param last the last entry it concerns
 * @param fault what kind of thing
 * @param where the member, and the line in it where there is one
 */
record Difference(long first, long last, String fault, String where, String found, String expected, String whatToDo) {
    /** Faults for which a file could not be looked through at all, so that nothing is known of what it holds. */
    private static final Set<String> NOT_READ = Set.of("not-a-packet", "not-a-proof", "unreadable", "too-large");

    static final String ASK = "Ask the farm for the packet again, and keep this one.";

    static Difference in(String where, String fault, String found, String expected) {
        return new Difference(0, 0, fault, where, found, expected, ASK);
    }

    static Difference at(long entry, String where, String fault, String found, String expected) {
        return new Difference(entry, entry, fault, where, found, expected, ASK);
    }

    /** Whether it kept the file from being looked through. */
    boolean keptFromReading() {
        return NOT_READ.contains(fault);
    }

    /** One sentence for people. */
    String words() {
        return which() + where + ": found " + found + ", expected " + expected + ". " + whatToDo;
    }

    /** Without what to do, for a table. */
    String brief() {
        return which() + where + ": " + found;
    }

    private String which() {
        if (first == 0) {
            return "";
        }
        return (first == last ? "entry " + first : "entries " + first + " to " + last) + ", ";
    }
}
