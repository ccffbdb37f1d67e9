package bedledger.cli.sheet;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.language.Problem;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The rows that cannot be written, each with every reason. */
final class Rejects {
    private static final int SHOWN = 20;

    private record Rejected(SheetFile.Row row, List<Problem> problems) {}

    private final Map<Integer, Rejected> byRow = new TreeMap<>();

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
        try (CsvWriter csv = CsvWriter.builder().fieldSeparator(separator).build(file)) {
            List<String> columns = new ArrayList<>(header);
            boolean again = columns.contains("reject_reason");
            if (!again) {
                columns.add("reject_reason");
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

    private static List<String> cells(Rejected rejected, List<String> columns) {
        List<String> cells = new ArrayList<>(rejected.row().cells());
        while (cells.size() < columns.size()) {
            cells.add("");
        }
        cells.set(
                columns.indexOf("reject_reason"),
                String.join(
                        " | ",
                        rejected.problems().stream()
                                .map(problem -> problem.toString().replaceAll("\\s*\n\\s*", "; "))
                                .toList()));
        cells.set(columns.indexOf("line_no"), Long.toString(rejected.row().line()));
        return cells;
    }
}
