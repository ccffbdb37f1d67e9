package bedledger.cli.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * One act of a sheet: one row, or the rows that share an act id.
 *
 * @param word the word of {@code did}
 * @param said the texts by option
 */
record SheetAct(List<SheetFile.Row> rows, String word, Map<String, List<String>> said) {
    private static final String NOON = "12:00";
    private static final String FIRST = "0";

    /** The order of the work, as far as the cells give it; what they leave open stays in the order of the rows. */
    static final Comparator<SheetAct> BY_WORK = Comparator.comparing((SheetAct act) -> act.cell("on", ""))
            .thenComparing(act -> padded(act.cell("at", NOON), NOON.length()))
            .thenComparing(act -> padded(act.cell("place-in-day", FIRST), 3));

    int firstRow() {
        return rows.get(0).number();
    }

    private String cell(String option, String otherwise) {
        return said.getOrDefault(option, List.of(otherwise)).get(0);
    }

    private static String padded(String number, int width) {
        return "0".repeat(Math.max(0, width - number.length())) + number;
    }
}
