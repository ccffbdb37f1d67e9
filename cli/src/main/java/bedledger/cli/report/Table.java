package bedledger.cli.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A table of the report.
 *
 * @param id unique in the report
 * @param none what to say where there are no rows
 * @param groups the rows, in groups; one group without a title where they are not grouped
 */
record Table(String id, String caption, String none, List<Column> columns, boolean any, Iterable<Group> groups) {
    /** More columns than this do not fit a narrow screen, so the table scrolls there. */
    private static final int COLUMNS_THAT_FIT = 3;

    /** A column's heading. */
    record Column(String title, String style) {
        boolean isStyled() {
            return !style.isEmpty();
        }
    }

    /** Rows under one heading, or under none. */
    record Group(String title, int width, Iterable<Row> rows) {
        boolean hasTitle() {
            return !title.isEmpty();
        }
    }

    Table {
        columns = List.copyOf(columns);
    }

    static Table of(String id, String caption, String none, List<String> columns, List<Row> rows) {
        return over(id, caption, none, columns, !rows.isEmpty(), rows);
    }

    /** A table whose rows are made one by one as they are written. */
    static Table over(String id, String caption, String none, List<String> columns, boolean any, Iterable<Row> rows) {
        return new Table(id, caption, none, headings(columns), any, List.of(new Group("", columns.size(), rows)));
    }

    static Table grouped(String id, String caption, String none, List<String> columns, List<Group> groups) {
        return new Table(id, caption, none, headings(columns), !groups.isEmpty(), groups);
    }

    private static List<Column> headings(List<String> columns) {
        return columns.stream().map(title -> new Column(title, "")).toList();
    }

    /** The same table, the headings of some columns set as those of numbers. */
    Table numbersIn(int from, int to) {
        List<Column> styled = new ArrayList<>(columns);
        for (int at = from; at < to; at++) {
            styled.set(at, new Column(columns.get(at).title(), "number"));
        }
        return new Table(id, caption, none, styled, any, groups);
    }

    boolean scrolls() {
        return columns.size() > COLUMNS_THAT_FIT;
    }
}
