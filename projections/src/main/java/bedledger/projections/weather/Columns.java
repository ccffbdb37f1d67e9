package bedledger.projections.weather;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Pattern;

/** The columns a weather CSV may have, each named after its quantity and unit; values come out in °C and mm. */
final class Columns {
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+(\\.[0-9]+)?");
    private static final Map<String, DoubleUnaryOperator> UNITS = Map.of(
            "min_c",
            DoubleUnaryOperator.identity(),
            "max_c",
            DoubleUnaryOperator.identity(),
            "mean_c",
            DoubleUnaryOperator.identity(),
            "min_f",
            Columns::fromFahrenheit,
            "max_f",
            Columns::fromFahrenheit,
            "mean_f",
            Columns::fromFahrenheit,
            "rain_mm",
            DoubleUnaryOperator.identity(),
            "rain_in",
            Columns::fromInches);
    private final FileProblems problems;
    private final Map<String, String> columnOf = new TreeMap<>();

    /**
     * Reads a header.
     *
     * @param key the column that says which day or month
     * @param quantities which of min, max, mean and rain may be there
     */
    Columns(List<String> header, String key, List<String> quantities, FileProblems problems) {
        this.problems = problems;
        Set<String> seen = new HashSet<>();
        for (String column : header) {
            String name = column.strip().toLowerCase(Locale.ROOT);
            String quantity = name.replaceAll("_.*", "");
            boolean known = name.equals(key) || (UNITS.containsKey(name) && quantities.contains(quantity));
            if (!known) {
                problems.add(1, column, "there is no such column", "use " + key + allowed(quantities));
            } else if (!seen.add(quantity)) {
                problems.add(1, column, "there are two columns for the same thing", "leave one of them out");
            }
            columnOf.put(name.equals(key) ? key : quantity, column);
        }
        if (!columnOf.containsKey(key)) {
            problems.add(1, String.join(",", header), "the column '" + key + "' is missing", "name it in line 1");
        }
    }

    private static double fromFahrenheit(double value) {
        return (value - 32) * 5 / 9;
    }

    private static double fromInches(double value) {
        return value * 25.4;
    }

    private static String allowed(List<String> quantities) {
        StringBuilder said = new StringBuilder();
        for (String quantity : quantities) {
            String units = quantity.equals("rain") ? "rain_mm or rain_in" : quantity + "_c or " + quantity + "_f";
            said.append(", ").append(units);
        }
        return said + "; leave other columns out";
    }

    boolean has(String quantity) {
        return columnOf.containsKey(quantity);
    }

    String text(NamedCsvRecord row, String quantity) {
        String column = columnOf.get(quantity);
        return column == null ? "" : row.findField(column).orElse("").strip();
    }

    /** The value in °C or mm; not a number where the cell is empty or wrong. */
    double value(NamedCsvRecord row, String quantity) {
        String text = text(row, quantity);
        if (text.isEmpty()) {
            return Double.NaN;
        }
        long line = row.getStartingLineNumber();
        if (!NUMBER.matcher(text).matches()) {
            problems.add(
                    line,
                    text,
                    "this is not a number for " + quantity,
                    "write it with a decimal point and no unit, or leave the cell empty where it is not known");
            return Double.NaN;
        }
        String name = columnOf.getOrDefault(quantity, "").strip().toLowerCase(Locale.ROOT);
        double value = UNITS.getOrDefault(name, DoubleUnaryOperator.identity()).applyAsDouble(Double.parseDouble(text));
        boolean rain = quantity.equals("rain");
        if (rain ? value < 0 || value > 2000 : value < -90 || value > 60) {
            problems.add(
                    line, text, "no day on a farm has that " + quantity, "check the number and the unit in line 1");
            return Double.NaN;
        }
        return value;
    }
}
