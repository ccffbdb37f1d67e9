package bedledger.cli.report;

/** A run of text within a phrase; {@code href} is empty but for a link within the report. */
record Piece(Kind kind, String text, String href) {
    enum Kind {
        PLAIN,
        LINK,
        STRUCK,
        STRONG,
        /** Not to be broken over two lines, such as a day. */
        WHOLE,
        CODE
    }

    static Piece plain(String text) {
        return new Piece(Kind.PLAIN, text, "");
    }

    boolean isPlain() {
        return kind == Kind.PLAIN;
    }

    boolean isLink() {
        return kind == Kind.LINK;
    }

    boolean isStruck() {
        return kind == Kind.STRUCK;
    }

    boolean isStrong() {
        return kind == Kind.STRONG;
    }

    boolean isWhole() {
        return kind == Kind.WHOLE;
    }

    boolean isCode() {
        return kind == Kind.CODE;
    }
}
