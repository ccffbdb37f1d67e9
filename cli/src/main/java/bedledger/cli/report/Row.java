package bedledger.cli.report;

import java.util.List;

/**
 * One row of a table; its cells are as many as the table's columns.
 *
 * @param anchor its id, or empty
 * @param style a class of the style sheet, or empty
 */
record Row(String anchor, String style, List<Cell> cells) {
    Row {
        cells = List.copyOf(cells);
    }

    static Row of(Cell... cells) {
        return new Row("", "", List.of(cells));
    }

    static Row of(List<Cell> cells) {
        return new Row("", "", cells);
    }

    boolean isAnchored() {
        return !anchor.isEmpty();
    }

    boolean isStyled() {
        return !style.isEmpty();
    }

    Row anchored(String id) {
        return new Row(id, style, cells);
    }

    Row styled(String name) {
        return new Row(anchor, name, cells);
    }
}
