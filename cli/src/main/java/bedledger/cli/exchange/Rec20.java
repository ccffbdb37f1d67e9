package bedledger.cli.exchange;

import bedledger.language.Unit;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Units as UN/ECE Recommendation 20 codes, which EPCIS asks for; see {@code units.sources.md}. */
final class Rec20 {
    private static final Map<String, String> CODES = read();

    /** The code; empty where the unit has none here, as what is only counted. */
    static Optional<String> of(Unit unit) {
        return Optional.ofNullable(CODES.get(unit.symbol()));
    }

    private static Map<String, String> read() {
        Map<String, String> codes = new HashMap<>();
        InputStream in = Objects.requireNonNull(Rec20.class.getResourceAsStream("units.csv"));
        try (CsvReader<NamedCsvRecord> rows =
                CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            rows.forEach(row -> codes.put(row.getField("unit"), row.getField("code")));
        } catch (IOException broken) {
            throw new UncheckedIOException("units.csv", broken);
        }
        return codes;
    }

    private Rec20() {}
}
