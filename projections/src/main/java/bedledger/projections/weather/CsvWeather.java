package bedledger.projections.weather;

import bedledger.language.Refused;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Reads daily weather from CSV (RFC 4180): columns {@code date}, then {@code min_c} or {@code min_f}, {@code max_c} or
 * {@code max_f}, and {@code rain_mm} or {@code rain_in}, in any order; an empty cell is not known.
 */
public final class CsvWeather {
    private static final List<String> QUANTITIES = List.of("min", "max", "rain");
    private static final LocalDate EARLIEST = LocalDate.of(1850, 1, 1);
    private static final LocalDate LATEST = LocalDate.of(2199, 12, 31);
    private final FileProblems problems;
    private final SortedMap<Long, double[]> days = new TreeMap<>();

    private CsvWeather(FileProblems problems) {
        this.problems = problems;
    }

    /**
     * Reads a whole file; the reader is closed.
     *
     * @throws Refused for an unknown column, a day given twice, a value that cannot be: all by line, nothing is taken
     */
    public static DailyFile read(String name, Reader text) {
        CsvWeather reading = new CsvWeather(new FileProblems(name));
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(text)) {
            reading.take(csv.iterator());
        } catch (CsvParseException wrong) {
            reading.problems.add(1, "", "this is not CSV: " + wrong.getMessage(), "save it as CSV with commas");
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        reading.problems.refuse();
        return new DailyFile(name, Origin.CSV_FILE, Optional.empty(), reading.days, 0);
    }

    private void take(Iterator<NamedCsvRecord> rows) {
        if (!rows.hasNext()) {
            problems.add(1, "", "there is no day in it", "line 1 names the columns, each further line is one day");
            return;
        }
        NamedCsvRecord first = rows.next();
        Columns columns = new Columns(first.getHeader(), "date", QUANTITIES, problems);
        if (!columns.has("min") || !columns.has("max")) {
            problems.add(
                    1,
                    String.join(",", first.getHeader()),
                    "it needs a column for the minimum and one for the maximum",
                    "name them min_c and max_c, or min_f and max_f");
        }
        problems.refuse();
        day(first, columns);
        rows.forEachRemaining(row -> day(row, columns));
    }

    private void day(NamedCsvRecord row, Columns columns) {
        double[] values = {columns.value(row, "min"), columns.value(row, "max"), columns.value(row, "rain")};
        long line = row.getStartingLineNumber();
        if (values[0] > values[1]) {
            problems.add(
                    line,
                    columns.text(row, "min") + " to " + columns.text(row, "max"),
                    "the minimum is above the maximum",
                    "swap them, or leave both empty");
        }
        String text = columns.text(row, "date");
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.isBefore(EARLIEST) || date.isAfter(LATEST)) {
                problems.add(line, text, "no weather is on record for such a year", "check the date");
            } else if (days.put(date.toEpochDay(), values) != null) {
                problems.add(line, text, "this day is in the file twice", "leave one of the two out");
            }
        } catch (DateTimeParseException notADay) {
            problems.add(line, text, "this is not a day", "write it like 2025-07-12");
        }
    }
}
