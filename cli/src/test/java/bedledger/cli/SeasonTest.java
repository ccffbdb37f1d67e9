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
    private static final List<String> DAYS = List.of("2025-04-25", "2025-07-13", "2025-08-14", Season.END);
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
        Map<String, JsonNode> answers = Answers.of(said, "farm", DAYS);
        assertThat(answers).hasSizeGreaterThan(15);
        Answers.same(Answers.of(sheet, "farm", DAYS), answers);
    }

    @Test
    void bothLogsVerify() {
        assertThat(said.run("verify --book farm").done().out()).contains("Everything agrees.");
        assertThat(sheet.run("verify --book farm").done().out()).contains("Everything agrees.");
    }

    private String bed(String question) {
        return said.run("bed K1 --book farm " + question).done().out();
    }

    @Test
    void knowsTheFirstFigureUntilTheDayItWasCorrected() {
        assertThat(bed("--as-known-on 2025-07-10"))
                .contains("as known on 2025-07-10", "quantity 310 lb")
                .doesNotContain("REPLACED", "130 lb");
        assertThat(bed("--as-known-on 2025-07-11"))
                .containsSubsequence("quantity 310 lb", "REPLACED by #62: the slip", "quantity 130 lb", "corrects #60");
    }

    @Test
    void countsOnlyTheFigureInForceAsItWasKnown() {
        JsonNode before = Answers.read(said.run("returned --by crop --json --as-known-on 2025-07-10 --book farm"));
        JsonNode after = Answers.read(said.run("returned --by crop --json --as-known-on 2025-07-11 --book farm"));
        assertThat(cabbage(before)).isGreaterThan(cabbage(after)).isPositive();
        assertThat(cabbage(after)).isPositive();
    }

    private static double cabbage(JsonNode returned) {
        for (JsonNode total : returned.get("totals")) {
            if (total.get("of").asText().contains("cabbage")) {
                return total.at("/measures/dry/kilograms/best").asDouble();
            }
        }
        throw new AssertionError("no cabbage in " + returned);
    }

    @Test
    void knowsALateEntryFromTheDayItWasWrittenAndPutsItOnTheDayOfTheWork() {
        assertThat(bed("--as-known-on 2025-07-18")).doesNotContain("harrow");
        assertThat(bed("--as-known-on 2025-07-19"))
                .containsSubsequence("2025-07-12       tarp: K1 K2", "2025-07-15  4 d  harrow: K1 K2");
        assertThat(bed("--on " + Season.END))
                .containsSubsequence("tarp: K1 K2", "4 d  harrow: K1 K2", "check-tarp: K1");
        assertThat(said.run("beds --on 2025-07-16 --book farm").done().out()).contains("silage film since 2025-07-12");
    }

    @Test
    void judgesOnlyWhatWasKnown() {
        String before = said.run("check --all --as-known-on 2025-08-08 --book farm")
                .done()
                .out();
        assertThat(before).contains("Findings on 2025-08-08").doesNotContain("PEP-0715");
        assertThat(said.run("check --all --as-known-on 2025-08-09 --book farm")
                        .done()
                        .out())
                .contains("PEP-0715");
    }

    @Test
    void saysThatSomethingWasNotKnownYet() {
        said.run("bed K1 --as-known-on 2025-02-09 --book farm")
                .refused(Exit.REFUSED, "no bed 'K1', as known on 2025-02-09");
        said.run("entry 62 --as-known-on 2025-07-10 --book farm").refused(Exit.REFUSED, "no entry #62, as known on");
        assertThat(said.run("beds --as-known-on 2025-02-09 --book farm").done().out())
                .contains("No beds yet.");
    }

    @Test
    void everyTableFitsEightyColumns() {
        for (String day : List.of("2025-07-13", "2025-08-10", Season.END)) {
            said.run("beds --book farm --on " + day).done().fits();
            said.run("check --all --book farm --on " + day).done().fits();
            for (String by : List.of("piece", "bed", "crop", "flip", "season")) {
                said.run("returned --with-typical --book farm --by " + by + " --on " + day)
                        .done()
                        .fits();
            }
        }
        for (String bed : List.of("K1", "K2", "K5", "G1", "G2", "G4")) {
            said.run("bed --book farm " + bed).done().fits();
        }
        said.run("rules").done().fits();
        said.run("rules --tables --book farm").done().fits();
    }
}
