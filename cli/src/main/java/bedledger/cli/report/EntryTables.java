package bedledger.cli.report;

import bedledger.language.Acts;
import bedledger.language.Ask;
import bedledger.language.Entry;
import bedledger.language.Fact;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Tables of entries: any kinds under the columns of an audit, or one kind with a column for each thing it asks for. */
record EntryTables(Asked asked, AuditCells cells) {
    /** What a kind asks for beyond this stands together in one column, each with its name: more columns fit neither screen nor paper. */
    private static final int ASKED_APART = 5;

    /** Entries of any kinds; columns in which nothing stands are left out. */
    Table mixed(String id, String caption, String none, List<Entry> entries) {
        return table(
                id,
                caption,
                none,
                AuditCells.COLUMNS,
                entries.stream().map(cells::row).toList());
    }

    /** One kind, a column for each thing it asks for, so far as any entry says it. */
    Table ofKind(String id, String caption, String none, Class<? extends Fact> kind, Function<Entry, String> anchor) {
        List<Entry> entries = asked.ofKinds(List.of(kind));
        List<Ask> said = Acts.of(kind).asks().stream()
                .filter(ask -> entries.stream()
                        .anyMatch(
                                entry -> !cells.parts().value(ask, entry.fact()).isEmpty()))
                .toList();
        List<Ask> apart = said.subList(0, Math.min(said.size(), ASKED_APART));
        List<Ask> together = said.subList(apart.size(), said.size());
        List<String> columns = new ArrayList<>(List.of("date"));
        apart.forEach(ask -> columns.add(FactParts.title(ask)));
        columns.addAll(List.of("further", "who", "files", "written (lag)", "corrected?", "entry"));
        List<Row> rows = entries.stream()
                .map(entry ->
                        cells.marked(entry, kindCells(entry, apart, together)).anchored(anchor.apply(entry)))
                .toList();
        return table(id, caption, none, columns, rows);
    }

    Table ofKind(String id, String caption, String none, Class<? extends Fact> kind) {
        return ofKind(id, caption, none, kind, entry -> "");
    }

    private List<Cell> kindCells(Entry entry, List<Ask> apart, List<Ask> together) {
        List<Cell> row = new ArrayList<>(List.of(cells.date(entry)));
        apart.forEach(ask -> row.add(Cell.of(cells.parts().value(ask, entry.fact()))));
        List<Phrase> further = new ArrayList<>(List.of(Phrase.joined(
                together.stream()
                        .map(ask -> cells.parts().named(ask, entry.fact()))
                        .filter(each -> !each.isEmpty())
                        .toList(),
                "; ")));
        further.addAll(FactParts.head(entry));
        row.add(Cell.of(further));
        row.addAll(List.of(
                cells.who(entry),
                cells.files(entry),
                cells.written(entry),
                cells.corrected(entry),
                cells.number(entry)));
        return row;
    }

    /** A table without the columns in which nothing stands. */
    static Table table(String id, String caption, String none, List<String> columns, List<Row> rows) {
        List<Integer> used = new ArrayList<>();
        for (int column = 0; column < columns.size(); column++) {
            int at = column;
            if (rows.stream().anyMatch(row -> !row.cells().get(at).isEmpty())) {
                used.add(column);
            }
        }
        return Table.of(
                id,
                caption,
                none,
                used.stream().map(columns::get).toList(),
                rows.stream()
                        .map(row -> new Row(
                                row.anchor(),
                                row.style(),
                                used.stream().map(row.cells()::get).toList()))
                        .toList());
    }
}
