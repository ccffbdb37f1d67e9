package bedledger.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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

    /** Words longer than this may be broken anywhere, so that they never push a table over the edge of screen or paper. */
    private static final int LONG = 20;

    private static final Pattern LONG_WORD = Pattern.compile("\\S{" + (LONG + 1) + ",}");

    /** A stretch of the text: a long word, or what stands between. */
    record Run(String text, boolean isLong) {}

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

    List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        Matcher words = LONG_WORD.matcher(text);
        int done = 0;
        while (words.find()) {
            runs.add(new Run(text.substring(done, words.start()), false));
            runs.add(new Run(words.group(), true));
            done = words.end();
        }
        runs.add(new Run(text.substring(done), false));
        return runs.stream().filter(run -> !run.text().isEmpty()).toList();
    }
}
