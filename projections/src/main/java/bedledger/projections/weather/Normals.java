package bedledger.projections.weather;

import bedledger.language.Refused;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Monthly normals: mean daily minimum and maximum of each month, or its mean temperature alone, and its rain.
 *
 * <p>CSV with columns {@code month} (1 to 12), {@code min_c} and {@code max_c} (or {@code _f}), or {@code mean_c} alone, and
 * {@code rain_mm} or {@code rain_in}, the sum of the month.
 */
public final class Normals {
    private static final List<String> QUANTITIES = List.of("min", "max", "mean", "rain");
    private static final int MONTHS = 12;
    private final String name;
    private final boolean meansOnly;
    private final double[] min;
    private final double[] max;
    private final double[] rain;

    private Normals(String name, Reading reading) {
        this.name = name;
        this.meansOnly = reading.meansOnly;
        this.min = reading.min;
        this.max = reading.max;
        this.rain = reading.rain;
    }

    /**
     * Reads a whole file; the reader is closed.
     *
     * @throws Refused for an unknown column, a month missing or given twice, a value that cannot be: all by line
     */
    public static Normals read(String name, Reader text) {
        Reading reading = new Reading(new FileProblems(name));
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(text)) {
            reading.take(csv.iterator());
        } catch (CsvParseException wrong) {
            reading.problems.add(1, "", "this is not CSV: " + wrong.getMessage(), "save it as CSV with commas");
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        reading.problems.refuse();
        return new Normals(name, reading);
    }

    public String name() {
        return name;
    }

    /** Whether it holds the mean temperature only, so that minimum and maximum are both taken to be it. */
    public boolean meansOnly() {
        return meansOnly;
    }

    /** Whether it holds rain for every month. */
    public boolean hasRain() {
        return Arrays.stream(rain).noneMatch(Double::isNaN);
    }

    double min(LocalDate day) {
        return min[day.getMonthValue() - 1];
    }

    double max(LocalDate day) {
        return max[day.getMonthValue() - 1];
    }

    /** The rain of a day in mm, let fall on every so many days; not a number where the month's is not known. */
    double rain(LocalDate day) {
        return Spells.rain(
                day, rain[day.getMonthValue() - 1] / YearMonth.from(day).lengthOfMonth());
    }

    public String words() {
        String degrees = meansOnly ? "mean temperature of 12 months" : "minimum and maximum of 12 months";
        return degrees + (hasRain() ? ", with rain" : ", no rain");
    }

    private static final class Reading {
        final FileProblems problems;
        final double[] min = unknown();
        final double[] max = unknown();
        final double[] rain = unknown();
        final boolean[] seen = new boolean[MONTHS];
        boolean meansOnly;

        Reading(FileProblems problems) {
            this.problems = problems;
        }

        private static double[] unknown() {
            double[] values = new double[MONTHS];
            Arrays.fill(values, Double.NaN);
            return values;
        }

        void take(Iterator<NamedCsvRecord> rows) {
            if (!rows.hasNext()) {
                problems.add(
                        1, "", "there is no month in it", "line 1 names the columns, then one line for each month");
                return;
            }
            NamedCsvRecord first = rows.next();
            Columns columns = new Columns(first.getHeader(), "month", QUANTITIES, problems);
            meansOnly = columns.has("mean");
            if (meansOnly ? columns.has("min") || columns.has("max") : !columns.has("min") || !columns.has("max")) {
                problems.add(
                        1,
                        String.join(",", first.getHeader()),
                        "it needs min and max, or mean alone",
                        "name them min_c and max_c, or mean_c");
            }
            problems.refuse();
            month(first, columns);
            rows.forEachRemaining(row -> month(row, columns));
            IntStream.range(0, MONTHS)
                    .filter(month -> !seen[month])
                    .forEach(month -> problems.add(
                            1, "", "month " + (month + 1) + " is missing", "give all twelve, one line for each"));
        }

        private void month(NamedCsvRecord row, Columns columns) {
            String text = columns.text(row, "month");
            long line = row.getStartingLineNumber();
            int month = text.matches("0?[1-9]|1[0-2]") ? Integer.parseInt(text) - 1 : -1;
            if (month < 0 || seen[month]) {
                String why = month < 0 ? "this is not a month" : "this month is in the file twice";
                problems.add(line, text, why, "write the months as 1 to 12");
                return;
            }
            seen[month] = true;
            min[month] = columns.value(row, meansOnly ? "mean" : "min");
            max[month] = columns.value(row, meansOnly ? "mean" : "max");
            rain[month] = columns.value(row, "rain");
            if (Double.isNaN(min[month]) || Double.isNaN(max[month]) || min[month] > max[month]) {
                problems.add(
                        line, text, "its temperatures are missing or the wrong way round", "give both, in °C or °F");
            }
        }
    }
}
