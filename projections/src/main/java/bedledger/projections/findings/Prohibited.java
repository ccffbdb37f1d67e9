package bedledger.projections.findings;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A substance that a rule book leaves out, known by words.
 *
 * @param words any of which names it
 * @param outcome what the use of it is: not met, or to be asked where there are conditions
 * @param from first day of use this line is for
 * @param to last such day; null while it is in force
 * @param says the condition, or why
 */
record Prohibited(
        String name,
        List<Pattern> words,
        Outcome outcome,
        LocalDate from,
        @Nullable LocalDate to,
        String citation,
        String says) {
    /** Rotenone came into the list as (f), and what followed moved on a letter: 83 FR 66559 of 2018-12-27; the day from memory. */
    static final LocalDate RELETTERED = LocalDate.of(2019, 1, 28);

    Prohibited {
        words = List.copyOf(words);
    }

    static List<Prohibited> read(String book) {
        String name = book + "/prohibited.csv";
        try (InputStream in = Prohibited.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("no list " + name);
            }
            List<Prohibited> all = new ArrayList<>();
            try (CsvReader<NamedCsvRecord> rows =
                    CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                rows.forEach(row -> all.add(of(row)));
            }
            return all;
        } catch (IOException broken) {
            throw new UncheckedIOException(name, broken);
        }
    }

    private static Prohibited of(NamedCsvRecord row) {
        String to = row.getField("to");
        return new Prohibited(
                row.getField("name"),
                Arrays.stream(row.getField("words").split(";")).map(Said::whole).toList(),
                Outcome.parse(row.getField("outcome")),
                LocalDate.parse(row.getField("from")),
                to.isEmpty() ? null : LocalDate.parse(to),
                row.getField("citation"),
                row.getField("says"));
    }

    boolean isNamedIn(String text) {
        String folded = text.toLowerCase(Locale.ROOT);
        return words.stream().anyMatch(word -> word.matcher(folded).find());
    }

    boolean inForceOn(LocalDate day) {
        return !day.isBefore(from) && (to == null || !day.isAfter(to));
    }
}
