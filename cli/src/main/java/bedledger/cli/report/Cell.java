package bedledger.cli.report;

import java.util.List;

/**
 * One cell of a table.
 *
 * @param header whether it names its row
 * @param style a class of the style sheet, or empty
 * @param span how many columns it takes
 */
record Cell(boolean header, String style, int span, List<Phrase> lines) {
    Cell {
        lines = List.copyOf(lines);
    }

    static Cell of(String text) {
        return of(Phrase.of(text));
    }

    static Cell of(Phrase phrase) {
        return of(List.of(phrase));
    }

    static Cell of(List<Phrase> lines) {
        return new Cell(
                false, "", 1, lines.stream().filter(line -> !line.isEmpty()).toList());
    }

    /** A day or a short figure that is not to be broken over two lines. */
    static Cell whole(String text) {
        return new Cell(false, "whole", 1, List.of(Phrase.of(text)));
    }

    static Cell number(String text) {
        return new Cell(false, "number", 1, List.of(Phrase.of(text)));
    }

    /** Lines under a row, across all columns. */
    static Cell across(int columns, List<Phrase> lines) {
        return new Cell(false, "", columns, lines);
    }

    boolean spans() {
        return span > 1;
    }

    /** The same cell as the name of its row. */
    Cell asHeader() {
        return new Cell(true, style, span, lines);
    }

    Cell styled(String name) {
        return new Cell(header, name, span, lines);
    }

    boolean isStyled() {
        return !style.isEmpty();
    }

    boolean isOneLine() {
        return lines.size() == 1;
    }

    boolean isEmpty() {
        return lines.stream().allMatch(Phrase::isEmpty);
    }

    Cell crossedOut() {
        return new Cell(
                header, style, span, lines.stream().map(Phrase::crossedOut).toList());
    }
}
