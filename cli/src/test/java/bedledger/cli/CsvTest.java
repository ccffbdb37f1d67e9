package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code --csv} prints is read back as it was, and a spreadsheet runs none of it as a formula. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CsvTest {
    private final Desk desk;

    CsvTest(@TempDir Path folder) {
        desk = Season.quickly(folder);
        desk.run("correct 39 --why =HYPERLINK(1) --material \"net, fine\" --book farm")
                .done();
    }

    private List<NamedCsvRecord> rows(String command) {
        String text = desk.run(command + " --csv --book farm").done().out();
        assertThat(text).as("line ends of RFC 4180").endsWith("\r\n");
        List<NamedCsvRecord> rows = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder()
                .allowExtraFields(false)
                .allowMissingFields(false)
                .ofNamedCsvRecord(text)) {
            csv.forEach(rows::add);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return rows;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "beds",
                "bed K1",
                "entry 60",
                "check",
                "returned --by piece",
                "returned --by bed",
                "rules",
                "rules --tables",
                "report"
            })
    void everyRowHasACellForEveryColumn(String command) {

        boolean dated = !command.startsWith("rules") && !command.startsWith("entry");
        assertThat(rows(dated ? command + " --on " + Season.END : command)).isNotEmpty();
    }

    @Test
    void holdsTheSameAsTheJson() {
        List<JsonNode> timeline = new ArrayList<>();
        Answers.read(desk.run("bed K1 --json --book farm")).get("timeline").forEach(timeline::add);
        List<NamedCsvRecord> rows = rows("bed K1");
        assertThat(rows).hasSameSizeAs(timeline);
        for (int at = 0; at < rows.size(); at++) {
            assertThat(rows.get(at).getField("entry"))
                    .isEqualTo(timeline.get(at).get("entry").asText());
            assertThat(rows.get(at).getField("words"))
                    .isEqualTo(timeline.get(at).get("words").asText());
        }
    }

    @Test
    void runsNoFormula() {
        assertThat(rows("bed K1"))
                .anySatisfy(row -> assertThat(row.getField("reason")).isEqualTo("'=HYPERLINK(1)"))
                .allSatisfy(row -> assertThat(row.getFields()).noneMatch(cell -> cell.matches("(?s)[=+@\\t\\r].*")));
    }

    @Test
    void takesJsonOrCsvButNotBoth() {
        desk.run("beds --json --csv --book farm").refused(Exit.USAGE, "Give --json or --csv, not both.");
    }
}
