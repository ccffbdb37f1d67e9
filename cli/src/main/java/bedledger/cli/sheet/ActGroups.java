package bedledger.cli.sheet;

import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.language.Ask;
import bedledger.language.Problem;
import bedledger.language.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Gathers the rows of a sheet into acts; rows that share an act id are one act over several lots or beds. */
final class ActGroups {
    private static final String ISO = "[0-9]{4}-[0-9]{2}-[0-9]{2}";
    private final Columns columns;
    private final Set<String> headOptions;
    private final boolean decimalComma;
    private final Rejects rejects;

    ActGroups(Columns columns, Set<String> headOptions, boolean decimalComma, Rejects rejects) {
        this.columns = columns;
        this.headOptions = headOptions;
        this.decimalComma = decimalComma;
        this.rejects = rejects;
    }

    List<SheetAct> of(List<SheetFile.Row> rows) {
        Map<String, List<SheetFile.Row>> groups = new LinkedHashMap<>();
        for (SheetFile.Row row : rows) {
            if (row.cells().size() > columns.count()) {
                rejects.add(
                        row,
                        new Problem(
                                "row", "", "it has more cells than the header", "put a cell with commas in quotes"));
                continue;
            }
            String act = columns.cells(row).get("act");
            groups.computeIfAbsent(act == null ? "row " + row.number() : "act " + act, key -> new ArrayList<>())
                    .add(row);
        }
        List<SheetAct> acts = new ArrayList<>();
        groups.values().forEach(group -> act(group).ifPresent(acts::add));
        return acts;
    }

    private Optional<SheetAct> act(List<SheetFile.Row> group) {
        int before = rejects.count();
        SheetFile.Row first = group.get(0);
        String word = columns.cells(first).getOrDefault("did", "");
        Optional<ActKind> kind = Acts.byWord(word);
        if (kind.isEmpty()) {
            String near = Words.nearest(word, Acts.words())
                    .map(w -> "did you mean '" + w + "'?")
                    .orElse("see: bedledger did --help");
            rejects.add(first, new Problem("did", word, "there is no such act", near));
            return Optional.empty();
        }
        Map<String, List<String>> said = new HashMap<>();
        for (SheetFile.Row row : group) {
            columns.cells(row).forEach((column, cell) -> say(kind.get(), row, column, cell, said));
        }
        if (!said.containsKey("on")) {
            rejects.add(first, new Problem("date", "", "it is missing", "write the day of the work as 2025-07-14"));
        }
        return rejects.count() > before ? Optional.empty() : Optional.of(new SheetAct(group, word, said));
    }

    private void say(ActKind kind, SheetFile.Row row, String column, String cell, Map<String, List<String>> said) {
        if (Set.of("act", "did", Columns.REASON, Columns.LINE).contains(column)) {
            return;
        }
        String option = column.equals("date") ? "on" : column;
        Optional<Ask> ask =
                kind.asks().stream().filter(a -> a.option().equals(option)).findFirst();
        if (ask.isEmpty() && !option.equals("on") && !headOptions.contains(option)) {
            rejects.add(
                    row,
                    new Problem(
                            column,
                            cell,
                            "'" + kind.word() + "' does not ask for it",
                            "empty the cell, or see: bedledger did " + kind.word() + " --help"));
            return;
        }
        if ((option.equals("on") || option.equals("noted-on")) && !cell.matches(ISO)) {
            rejects.add(
                    row,
                    new Problem(
                            column, cell, "a sheet's days are never guessed", "write year, month, day: 2025-07-14"));
            return;
        }
        List<String> texts = said.computeIfAbsent(option, o -> new ArrayList<>());
        String text = decimalComma && ask.filter(a -> a.type() != String.class).isPresent()
                ? cell.replaceAll("([0-9]),([0-9])", "$1.$2")
                : cell;
        boolean list = ask.map(Ask::list).orElse(false);
        if (list || !texts.contains(text)) {
            texts.add(text);
        }
    }
}
