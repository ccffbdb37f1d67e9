package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.Entry;
import bedledger.language.Harvesting;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** A whole season goes into one book line by line, and into another through one sheet; both hold and answer the same. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SeasonTest {
    private Desk said;
    private Desk sheet;

    SeasonTest(@TempDir Path saidFolder, @TempDir Path sheetFolder) throws IOException {
        said = Season.lineByLine(saidFolder);
        sheet = Season.begun(sheetFolder);
        try (InputStream in = Objects.requireNonNull(SeasonTest.class.getResourceAsStream("hollow-lane-2025.csv"))) {
            sheet.lay("season.csv", in.readAllBytes());
        }
    }

    @BeforeAll
    void writeTheSheet() {
        sheet.run("import season.csv --book farm --written 2025-12-31").done();
        sheet.run("correct " + cabbages() + " --why \"the slip says 130, not 310\" --quantity 130lb --book farm"
                        + " --written 2025-12-31T21:00")
                .done();
    }

    private long cabbages() {
        return sheet.entries("farm").stream()
                .filter(entry -> entry.fact() instanceof Harvesting.Harvested harvested
                        && harvested.lot().name().equals("CAB-0703"))
                .findFirst()
                .map(Entry::number)
                .orElseThrow();
    }

    private static List<String> payloads(Desk desk) {
        return desk.entries("farm").stream().map(Season::payload).sorted().toList();
    }

    @Test
    void bothJournalsHoldTheSamePayloads() {
        assertThat(payloads(said))
                .hasSizeGreaterThan(90)
                .doesNotHaveDuplicates()
                .isEqualTo(payloads(sheet));
    }

    @Test
    void bothBooksAnswerTheSameToEveryQuestionThatDoesNotAskWhenSomethingWasWritten() {
        Map<String, JsonNode> answers = Answers.of(said, "farm");
        assertThat(answers).hasSizeGreaterThan(15);
        assertThat(Answers.of(sheet, "farm")).isEqualTo(answers);
    }

    @Test
    void bothLogsVerify() {
        assertThat(said.run("verify --book farm").done().out()).contains("Everything agrees.");
        assertThat(sheet.run("verify --book farm").done().out()).contains("Everything agrees.");
    }
}
