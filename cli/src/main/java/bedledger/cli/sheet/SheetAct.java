package bedledger.cli.sheet;

import java.util.List;
import java.util.Map;

/**
 * One act of a sheet: one row, or the rows that share an act id.
 *
 * @param word the word of {@code did}
 * @param said the texts by option
 */
record SheetAct(List<SheetFile.Row> rows, String word, Map<String, List<String>> said) {
    int firstRow() {
        return rows.get(0).number();
    }

    String day() {
        return said.getOrDefault("on", List.of("")).get(0);
    }
}
