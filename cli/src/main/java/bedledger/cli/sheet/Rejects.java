package bedledger.cli.sheet;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.language.Problem;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The rows that cannot be written, each with every reason. */
final class Rejects {
    private static final int SHOWN = 20;
    private static final String COLUMN = "reject_reason";

    private record Rejected(SheetFile.Row row, List<Problem> problems) {}

    private final Map<Integer, Rejected> byRow = new TreeMap<>();

    boolean has(SheetFile.Row row) {
        return byRow.containsKey(row.number());
    }

    void add(SheetFile.Row row, Problem problem) {
        byRow.computeIfAbsent(row.number(), number -> new Rejected(row, new ArrayList<>()))
                .problems()
                .add(problem);
    }

    void add(SheetAct act, List<Problem> problems) {
        act.rows().forEach(row -> problems.forEach(problem -> add(row, problem)));
    }

    int count() {
        return byRow.size();
    }

    void print(PrintStream err) {
        byRow.values().stream().limit(SHOWN).forEach(rejected -> {
            err.println("  row " + rejected.row().number() + " (line "
                    + rejected.row().line() + ")");
            rejected.problems()
                    .forEach(problem -> err.println("    " + problem.toString().replace("\n", "\n    ")));
        });
        if (byRow.size() > SHOWN) {
            err.println("  … and " + (byRow.size() - SHOWN) + " more rows.");
        }
    }

    /** Writes the rejected rows as they were, with the reason and the line, to be mended and read again. */
    void write(Path file, List<String> header, char separator) {
        requireFree(file);
        try (CsvWriter csv = CsvWriter.builder().fieldSeparator(separator).build(file)) {
            List<String> columns = new ArrayList<>(header);
            boolean again = columns.contains(COLUMN);
            if (!again) {
                columns.add(COLUMN);
                columns.add("line_no");
            }
            csv.writeRecord(columns);
            for (Rejected rejected : byRow.values()) {
                csv.writeRecord(cells(rejected, columns));
            }
        } catch (IOException failed) {
            throw new Failure(
                    Exit.CANNOT_CREATE,
                    "The rejected rows could not be written to '" + file + "': " + failed.getMessage());
        }
    }

    /** An earlier file of rejected rows may be written over, nothing else. */
    private static void requireFree(Path file) {
        try {
            if (Files.exists(file) && !Files.readString(file).contains(COLUMN)) {
                throw new Failure(
                        Exit.CANNOT_CREATE,
                        "'" + file + "' is there already and holds no rejected rows; nothing was written."
                                + " Give --rejects a name that is not taken.");
            }
        } catch (IOException unreadable) {
            throw new Failure(
                    Exit.CANNOT_CREATE,
                    "'" + file + "' is there already and cannot be read; nothing was written."
                            + " Give --rejects a name that is not taken.");
        }
    }

    private static List<String> cells(Rejected rejected, List<String> columns) {
        List<String> cells = new ArrayList<>(rejected.row().cells());
        while (cells.size() < columns.size()) {
            cells.add("");
        }
        cells.set(
                columns.indexOf(COLUMN),
                String.join(
                        " | ",
                        rejected.problems().stream()
                                .map(problem -> problem.toString().replaceAll("\\s*\n\\s*", "; "))
                                .toList()));
        cells.set(columns.indexOf("line_no"), Long.toString(rejected.row().line()));
        return cells;
    }
}
