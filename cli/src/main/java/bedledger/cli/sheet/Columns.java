package bedledger.cli.sheet;

import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.language.Ask;
import bedledger.language.Words;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** What each column of a sheet holds: {@code date}, {@code did}, {@code act}, or an option of {@code did} by the same name. */
final class Columns {
    /** Added by us to a file of rejected rows, so that it can be mended and read again. */
    static final String REASON = "reject-reason";

    static final String LINE = "line-no";
    private static final Set<String> OWN = Set.of("date", "did", "act", REASON, LINE);
    /** As a spreadsheet writes it inside a cell: one line break, however spelt. */
    private static final Pattern LINE_BREAK = Pattern.compile("\\r\\n?");

    private final List<String> names;

    private Columns(List<String> names) {
        this.names = names;
    }

    /** Reads the header; {@code problems} gets a sentence for every column that is unknown or stands twice. */
    static Columns of(List<String> header, Set<String> headOptions, List<String> problems) {
        Set<String> known = new TreeSet<>(OWN);
        known.addAll(headOptions);
        Acts.all().stream()
                .map(ActKind::asks)
                .forEach(asks -> asks.stream().map(Ask::option).forEach(known::add));
        known.remove("on");
        List<String> names = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String written : header) {
            String name =
                    written.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
            if (!known.contains(name)) {
                problems.add("there is no column '" + written + "'"
                        + Words.nearest(name, List.copyOf(known))
                                .map(near -> "; did you mean '" + near + "'?")
                                .orElse("; leave it out, or put its text under 'note'"));
            } else if (!seen.add(name)) {
                problems.add("the column '" + written + "' stands twice");
            }
            names.add(name);
        }
        if (!names.contains("date") || !names.contains("did")) {
            problems.add("the columns 'date' and 'did' are needed");
            separator(header).ifPresent(problems::add);
        }
        return new Columns(List.copyOf(names));
    }

    /** A sheet whose whole header is one cell was most likely written with another separator. */
    private static Optional<String> separator(List<String> header) {
        if (header.size() != 1) {
            return Optional.empty();
        }
        String cell = header.get(0);
        String between = cell.contains(";") ? "';'" : cell.contains("\t") ? "tab" : cell.contains(",") ? "','" : "";
        return between.isEmpty()
                ? Optional.empty()
                : Optional.of("its cells seem to stand apart by " + between + ": add --separator " + between);
    }

    int count() {
        return names.size();
    }

    /** The cells of a row that hold something, by column. */
    Map<String, String> cells(SheetFile.Row row) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int at = 0; at < Math.min(names.size(), row.cells().size()); at++) {
            String cell =
                    LINE_BREAK.matcher(row.cells().get(at)).replaceAll("\n").strip();
            if (!cell.isEmpty()) {
                cells.put(names.get(at), cell);
            }
        }
        return cells;
    }
}
