package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** What would be, had residue been hauled off: beside what is recorded, and never written. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WhatIfTest {
    private static final JsonMapper JSON = new JsonMapper();
    private final Desk desk;

    WhatIfTest(@TempDir Path folder) {
        desk = Season.quickly(folder);
    }

    @BeforeAll
    void addWeather() {
        desk.lay("normals.csv", Weathers.NORMALS);
        desk.run("weather --add normals.csv --book farm").done();
    }

    private JsonNode json(String line) throws IOException {
        return JSON.readTree(desk.run(line + " --json --book farm").done().out());
    }

    private static double best(JsonNode three, String side) {
        return three.path(side).path("figure").path("best").asDouble(Double.NaN);
    }

    @Test
    void nitrogenAsSupposedAndWhatLeavesMakeUpWhatIsRecorded() throws IOException {
        JsonNode supposed =
                json("nitrogen K1 --on 2025-08-10 --if-hauled-off 60%").path("supposed");
        assertThat(supposed.path("supposed").asText()).startsWith("60 %").contains("hauled off");
        JsonNode inIt = supposed.path("beds").path(0).path("kilograms").path("in it");
        double recorded = best(inIt, "recorded");
        double after = best(inIt, "supposed");
        assertThat(after).isPositive().isLessThan(recorded);
        assertThat(after + inIt.path("difference").path("best").asDouble()).isCloseTo(recorded, within(1e-12));
    }

    @Test
    void nothingOfTheShootsIsLeftToFeedIfAllWasHauledOff() throws IOException {
        JsonNode line = json("nitrogen K1 --on 2025-08-10 --if-hauled-off")
                .path("supposed")
                .path("beds")
                .path(0)
                .path("kilograms")
                .path("PNW 636");
        assertThat(best(line, "recorded")).isPositive();
        assertThat(best(line, "supposed")).isLessThan(best(line, "recorded"));
        assertThat(line.path("supposed").path("pieces").asInt())
                .isEqualTo(line.path("recorded").path("pieces").asInt());
        assertThat(line.path("supposed").path("unknown").asInt())
                .as("hauled off to the last leaf is nothing, not unknown")
                .isLessThanOrEqualTo(line.path("recorded").path("unknown").asInt());
    }

    /** The kohlrabi of October was never weighed, so nobody knows what would have left with it. */
    @Test
    void whatLeavesIsNotKnownWhereTheResidueIsNot() throws IOException {
        JsonNode supposed = json("nitrogen K1 --if-hauled-off").path("supposed");
        assertThat(supposed.path("beds").path(0).path("kilograms").path("in it").has("difference"))
                .isFalse();
        assertThat(desk.run("nitrogen K1 --if-hauled-off --book farm").done().out())
                .contains("kohlrabi", "not known");
    }

    @Test
    void theRecordedSideIsThatOfThePageWithoutASupposition() throws IOException {
        JsonNode plain = json("nitrogen K1 K5");
        JsonNode asked = json("nitrogen K1 K5 --if-hauled-off");
        assertThat(plain.has("supposed")).isFalse();
        assertThat(asked.path("totals")).isEqualTo(plain.path("totals"));
        JsonNode ready = json("ready K1 --on 2025-08-10");
        JsonNode readyIf = json("ready K1 --on 2025-08-10 --if-hauled-off 60%");
        assertThat(ready.has("supposed")).isFalse();
        assertThat(readyIf.path("beds")).isEqualTo(ready.path("beds"));
    }

    @Test
    void aBedIsReadyNoLaterWithLessOnIt() throws IOException {
        JsonNode ready = json("ready K1 --on 2025-08-10 --if-hauled-off 80%");
        JsonNode recorded = ready.path("beds").path(0);
        JsonNode supposed = ready.path("supposed").path("beds").path(0);
        assertThat(supposed.path("leftKilograms").path("best").asDouble())
                .isPositive()
                .isLessThan(recorded.path("leftKilograms").path("best").asDouble());
        for (int use = 0; use < 3; use++) {
            assertThat(supposed.path("dates").path(use).path("earliest").asText())
                    .isNotEmpty()
                    .isLessThanOrEqualTo(
                            recorded.path("dates").path(use).path("earliest").asText());
        }
    }

    @Test
    void saysThatItIsSupposedAndWritesNothing() {
        int before = desk.entries("farm").size();
        assertThat(desk.run("nitrogen K1 --if-hauled-off --book farm").done().out())
                .contains("(supposed, not", "as recorded", "if hauled off");
        assertThat(desk.run("ready K1 --if-hauled-off --on 2025-08-10 --book farm")
                        .done()
                        .out())
                .contains("as recorded", "if hauled off", "Your own look");
        assertThat(desk.entries("farm")).hasSize(before);
    }

    @Test
    void refusesToSupposeWithoutABed() {
        desk.run("ready --if-hauled-off --book farm").refused(Exit.USAGE, "needs the beds");
        desk.run("nitrogen --flip 2025-07-01 --book farm").refused(Exit.USAGE, "go with --if-hauled-off");
    }

    @Test
    void aBookInPoundsHearsNothingOfKilograms() {
        String page = desk.run("ready K1 --on 2025-08-10 --book farm").done().out();
        assertThat(page).contains(" lb ").doesNotContainPattern("\\bkg\\b");
        assertThat(desk.run("bed K1 --on 2025-08-10 --book farm").done().out()).doesNotContainPattern("left: .* kg");
    }
}
