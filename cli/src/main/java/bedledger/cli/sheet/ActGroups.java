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
        SheetFile.Row first = group.get(0);
        String word = columns.cells(first).getOrDefault("did", "");
        Map<String, List<String>> said = new HashMap<>();
        Acts.byWord(word).ifPresentOrElse(kind -> say(kind, group, said), () -> rejects.add(first, noSuchAct(word)));
        if (group.stream().noneMatch(rejects::has)) {
            return Optional.of(new SheetAct(group, word, said));
        }
        group.stream()
                .filter(row -> !rejects.has(row))
                .toList()
                .forEach(row -> rejects.add(
                        row,
                        new Problem(
                                "act",
                                columns.cells(row).getOrDefault("act", ""),
                                "another row of this act is refused, and an act is written whole or not at all",
                                "mend that row")));
        return Optional.empty();
    }

    private static Problem noSuchAct(String word) {
        if (word.isEmpty()) {
            return new Problem("did", "", "it is missing", "write what was done: sow, harvest, sell …");
        }
        String near = Words.nearest(word, Acts.words())
                .map(w -> "did you mean '" + w + "'?")
                .orElse("see: bedledger did --help");
        return new Problem("did", word, "there is no such act", near);
    }

    private void say(ActKind kind, List<SheetFile.Row> group, Map<String, List<String>> said) {
        for (SheetFile.Row row : group) {
            Map<String, String> cells = columns.cells(row);
            String word = cells.getOrDefault("did", kind.word());
            if (!word.equals(kind.word())) {
                rejects.add(
                        row,
                        new Problem(
                                "did",
                                word,
                                "the first row of this act says '" + kind.word() + "'",
                                "give it an act id of its own"));
            }
            cells.forEach((column, cell) -> say(kind, row, column, cell, said));
        }
        if (!said.containsKey("on") && group.stream().noneMatch(rejects::has)) {
            rejects.add(
                    group.get(0), new Problem("date", "", "it is missing", "write the day of the work as 2025-07-14"));
        }
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
