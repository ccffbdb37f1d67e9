package bedledger.language;

final class Text {
    private static final int MOST = 2000;

    /** Free text: something, no control characters but line breaks, no half of a surrogate pair, at most 2,000 characters. */
    static String checked(String text) {
        String stripped = text.strip();
        if (stripped.isEmpty()) {
            throw new BadValue(text, "it is empty", "write something, or leave the option out");
        }
        if (stripped.length() > MOST) {
            throw new BadValue(
                    stripped.substring(0, 30) + "…",
                    "it is longer than 2,000 characters",
                    "shorten it, or attach a document");
        }
        boolean odd = stripped.codePoints()
                .anyMatch(c -> (Character.isISOControl(c) && c != '\n' && c != '\t')
                        || Character.getType(c) == Character.SURROGATE);
        if (odd) {
            throw new BadValue(text, "it holds characters that cannot be written", "type it again");
        }
        return stripped;
    }

    private Text() {}
}
