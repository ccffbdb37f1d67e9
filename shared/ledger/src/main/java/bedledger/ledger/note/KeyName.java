package bedledger.ledger.note;

/** What C2SP signed-note allows as a key's name: not empty, no Unicode spaces, no plus sign. */
final class KeyName {

    private KeyName() {}

    static boolean allowed(String name) {
        return !name.isEmpty()
                && name.codePoints()
                        .noneMatch(c -> c == '+'
                                || Character.isWhitespace(c)
                                || Character.isSpaceChar(c)
                                || Character.isISOControl(c)
                                || (c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE));
    }

    static String require(String name) {
        if (!allowed(name)) {
            throw new NoteRejected("The key name \"" + name
                    + "\" was refused: a name has no spaces and no + (C2SP signed-note)."
                    + " Name the book like an address, such as example.org/farm.");
        }
        return name;
    }
}
