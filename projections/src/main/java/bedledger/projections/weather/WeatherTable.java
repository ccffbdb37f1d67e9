package bedledger.projections.weather;

import bedledger.projections.tables.TableFile;
import bedledger.projections.tables.TableFile.Row;
import bedledger.projections.tables.Tables;
import java.util.Map;
import java.util.stream.Collectors;

/** The few figures that weather is read and stood in for by. */
final class WeatherTable {
    private static final Map<String, Double> VALUES = new TableFile("weather", Tables.EDITION)
            .rows(row -> row).stream().collect(Collectors.toMap(row -> row.text("key"), WeatherTable::value));

    private WeatherTable() {}

    private static double value(Row row) {
        return row.number("value");
    }

    static double get(String key) {
        Double value = VALUES.get(key);
        if (value == null) {
            throw new IllegalStateException("The weather table has no row '" + key + "'.");
        }
        return value;
    }

    static int days(String key) {
        return (int) get(key);
    }
}
