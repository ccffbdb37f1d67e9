package bedledger.cli.exchange;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The codes of the ICASA data dictionary for what a book holds; see {@code icasa.sources.md}. */
final class Icasa {
    private static final Map<String, String> CODES = read();

    /** The code; empty text where the dictionary has none for it. */
    static String code(String of, @Nullable String ours) {
        return ours == null ? "" : CODES.getOrDefault(of + " " + ours.toLowerCase(Locale.ROOT), "");
    }

    private static Map<String, String> read() {
        Map<String, String> codes = new HashMap<>();
        InputStream in = Objects.requireNonNull(Icasa.class.getResourceAsStream("icasa.csv"));
        try (CsvReader<NamedCsvRecord> rows =
                CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            rows.forEach(row -> codes.put(row.getField("of") + " " + row.getField("ours"), row.getField("code")));
        } catch (IOException broken) {
            throw new UncheckedIOException("icasa.csv", broken);
        }
        return codes;
    }

    private Icasa() {}
}
