package bedledger.projections.findings;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** The numbers of a rule book by name, as in {@code manure.days.soil}. */
public record Figures(Map<String, Figure> byName) {
    /** One number, with the unit it has and where it stands. */
    public record Figure(String name, BigDecimal value, String unit, String citation, String basis) {}

    public Figures {
        byName = Map.copyOf(byName);
    }

    static Figures read(String book) {
        String name = book + "/figures.csv";
        try (InputStream in = Figures.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("no figures " + name);
            }
            Map<String, Figure> figures = new TreeMap<>();
            try (CsvReader<NamedCsvRecord> rows =
                    CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                rows.forEach(row -> figures.put(row.getField("name"), figure(row)));
            }
            return new Figures(figures);
        } catch (IOException broken) {
            throw new UncheckedIOException(name, broken);
        }
    }

    private static Figure figure(NamedCsvRecord row) {
        return new Figure(
                row.getField("name"),
                new BigDecimal(row.getField("value")),
                row.getField("unit"),
                row.getField("citation"),
                row.getField("basis"));
    }

    public BigDecimal number(String name) {
        Figure figure = byName.get(name);
        if (figure == null) {
            throw new IllegalArgumentException("no figure '" + name + "'");
        }
        return figure.value();
    }

    public int whole(String name) {
        return number(name).intValueExact();
    }

    /** The same figures with one changed, as for another edition. */
    public Figures with(Figure changed) {
        Map<String, Figure> all = new TreeMap<>(byName);
        all.put(changed.name(), changed);
        return new Figures(all);
    }
}
