package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What {@code --json} prints is described by one JSON Schema each, which takes nothing else. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SchemaTest {
    private static final JsonSchemaFactory FACTORY = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);
    private static final SchemaValidatorsConfig STRICT =
            SchemaValidatorsConfig.builder().formatAssertionsEnabled(true).build();
    private final Desk desk;

    SchemaTest(@TempDir Path folder) {
        desk = Season.quickly(folder);
    }

    @BeforeAll
    void threeMoreBooks() {
        desk.run("new empty --farm \"Ash Corner\"").done();
        desk.copy("farm", "changed");
        desk.copy("farm", "timed");
        desk.run("did haul K3 --weight 20lb --roots cut --people 2 --minutes 20 --on 2025-12-01 --book timed")
                .done();
        desk.run("did flail K4 --people 1 --minutes 9 --on 2025-12-01 --book timed")
                .done();
        desk.mend("changed/journal.jsonl", "310 lb", "311 lb");
        desk.run("packet --book farm --out packets/farm.zip").done();
        desk.run("packet --book farm --entry 60 --out packets/entry.tlog-proof").done();
        desk.lay("packets/none.zip", "no packet");
        desk.lay("normals.csv", Weathers.NORMALS);
        desk.run("weather --add normals.csv --book farm").done();
    }

    static Stream<Map.Entry<String, String>> commands() {
        return Stream.of(
                Map.entry("today", "today --book farm --on 2025-07-13"),
                Map.entry("today", "today --book empty --as-known-on 2025-07-13"),
                Map.entry("due", "due --book farm --on 2025-07-13 --days 60"),
                Map.entry("due", "due --book empty"),
                Map.entry("beds", "beds --book farm --on 2025-07-13"),
                Map.entry("beds", "beds --book farm --as-known-on 2025-07-13"),
                Map.entry("beds", "beds --book empty"),
                Map.entry("bed", "bed K1 --book farm"),
                Map.entry("bed", "bed G4 --book farm --on 2025-03-01 --as-known-on 2025-06-01"),
                Map.entry("entry", "entry 60 --book farm"),
                Map.entry("entry", "entry 3 --book farm"),
                Map.entry("entries", "entry --book farm"),
                Map.entry("check", "check --book farm --on 2025-12-31"),
                Map.entry("check", "check --book farm --as-known-on 2025-07-01"),
                Map.entry("check", "check --book empty"),
                Map.entry("check", "check --book farm --reading land-clean-from-same-date=off"),
                Map.entry("returned", "returned --book farm --by piece"),
                Map.entry("returned", "returned --book farm --by bed --with-typical"),
                Map.entry("returned", "returned --book farm --by crop"),
                Map.entry("returned", "returned --book farm --by flip --as-known-on 2025-09-01"),
                Map.entry("returned", "returned --book farm --by season"),
                Map.entry("returned", "returned --book empty"),
                Map.entry("returned", "returned K1 K5 --if-hauled-off --book farm"),
                Map.entry("returned", "returned G2 G4 --if-hauled-off 60% --pulled --flip 2025-11-01 --book farm"),
                Map.entry("hours", "hours --book farm"),
                Map.entry("hours", "hours K1 K2 --by flip --as-known-on 2025-08-01 --book farm"),
                Map.entry("hours", "hours --by crop --book timed"),
                Map.entry("hours", "hours --by bed --book empty"),
                Map.entry("nitrogen", "nitrogen --book farm"),
                Map.entry("nitrogen", "nitrogen K3 --book farm --by bed --on 2025-10-31"),
                Map.entry("nitrogen", "nitrogen --book empty --by season"),
                Map.entry("soil", "soil --book farm --mean-temperature 10.5 --ph 6.8 --clay 18"),
                Map.entry("soil", "soil K1 --book farm --as-known-on 2025-09-01"),
                Map.entry("soil", "soil --book empty"),
                Map.entry(
                        "blend",
                        "blend \"grass clippings 10kg, leaves 2m3 C:N 60\" --with straw --c-to-n 30 --water 60%"),
                Map.entry("blend", "blend \"spent hops 10kg\" --with leaves"),
                Map.entry("blend", "blend --book farm"),
                Map.entry("gaps", "gaps --book farm --on 2025-12-31"),
                Map.entry("gaps", "gaps --book empty"),
                Map.entry("balance", "balance beet --book farm"),
                Map.entry("balance", "balance cabbage --book farm --to 2025-12-31"),
                Map.entry("balance", "balance \"Feather meal 13-0-0\" --book farm"),
                Map.entry("trace", "trace invoice 214 --book farm"),
                Map.entry("trace", "trace BT-9 --book farm --as-known-on 2025-09-01"),
                Map.entry("mock-audit", "mock-audit --book farm --on 2025-12-31 --trace 9 --balance 9"),
                Map.entry("mock-audit", "mock-audit --book farm --as-known-on 2025-09-01 --seed x"),
                Map.entry("mock-audit", "mock-audit --book empty"),
                Map.entry("report", "report --book farm --on 2025-12-31"),
                Map.entry("ready", "ready --book farm --on 2025-08-10"),
                Map.entry("ready", "ready K1 --book farm --on 2025-07-20 --for transplants --as-known-on 2025-08-20"),
                Map.entry("ready", "ready --book empty"),
                Map.entry("ready", "ready K1 K5 --if-hauled-off 60% --book farm --on 2025-08-10"),
                Map.entry("nitrogen", "nitrogen K1 K5 --if-hauled-off --book farm"),
                Map.entry("weather", "weather --book farm --from 2025-01-01 --to 2025-12-31"),
                Map.entry("weather", "weather --book empty"),
                Map.entry("bed", "bed K1 --book farm --on 2025-07-20"),
                Map.entry("report-agronomist", "report --for agronomist --book farm --on 2025-12-31"),
                Map.entry("report-agronomist", "report --for agronomist --book empty"),
                Map.entry("seasons", "seasons --book farm --on 2025-12-31"),
                Map.entry("seasons", "seasons K1 --of nitrogen --by season --book farm --as-known-on 2025-09-01"),
                Map.entry("seasons", "seasons --of carbon --book empty"),
                Map.entry("rules", "rules"),
                Map.entry("rules", "rules --rules eu"),
                Map.entry("check", "check --book farm --rules eu --on 2025-12-31"),
                Map.entry("rules-tables", "rules --tables"),
                Map.entry("inspect", "inspect packets/farm.zip"),
                Map.entry("inspect", "inspect packets/none.zip"),
                Map.entry("inspect", "inspect packets"),
                Map.entry("verify", "verify --book farm"),
                Map.entry("verify", "verify --book changed"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("commands")
    void describesWhatIsPrinted(Map.Entry<String, String> asked) throws Exception {
        JsonNode printed = printed(asked.getValue());
        assertThat(schema(asked.getKey()).validate(printed)).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("commands")
    void takesNothingThatIsNotDescribedAndMissesWhatIsNotThere(Map.Entry<String, String> asked) throws Exception {
        ObjectNode printed = (ObjectNode) printed(asked.getValue());
        JsonSchema schema = schema(asked.getKey());
        String first = printed.fieldNames().next();
        assertThat(schema.validate(printed.deepCopy().put("more", 1))).isNotEmpty();
        assertThat(schema.validate(printed.deepCopy().without(List.of(first)))).isNotEmpty();
        assertThat(schema.validate(printed.deepCopy().putNull(first))).isNotEmpty();
    }

    @Test
    void everyCommandThatPrintsJsonHasItsSchema() {
        List<String> described = commands().map(Map.Entry::getKey).distinct().toList();
        for (Command command : Commands.ALL) {
            if (desk.run(command.name() + " --help").done().out().contains("--json")) {
                assertThat(described).contains(command.name());
            }
        }
    }

    @Test
    void aChangedBookShowsItsDisagreements() throws Exception {
        JsonNode verified = printed("verify --book changed");
        assertThat(verified.get("agrees").asBoolean()).isFalse();
        assertThat(verified.at("/disagreements/0/first").asLong()).isEqualTo(60);
    }

    @Test
    void everyObjectOfASchemaIsClosed() throws Exception {
        for (String name : commands().map(Map.Entry::getKey).distinct().toList()) {
            try (InputStream in = open(name)) {
                JsonNode schema = Answers.JSON.readTree(in);
                List<JsonNode> objects = schema.findParents("type").stream()
                        .filter(node -> node.get("type").asText().equals("object"))
                        .toList();
                assertThat(objects)
                        .isNotEmpty()
                        .allSatisfy(node ->
                                assertThat(node.has("additionalProperties")).isTrue());
            }
        }
    }

    private JsonNode printed(String command) throws Exception {
        return Answers.JSON.readTree(desk.run(command + " --json").out());
    }

    private static JsonSchema schema(String name) throws Exception {
        try (InputStream in = open(name)) {
            return FACTORY.getSchema(in, STRICT);
        }
    }

    private static InputStream open(String name) {
        return Objects.requireNonNull(
                SchemaTest.class.getResourceAsStream("schemas/" + name + ".schema.json"), "no schema of " + name);
    }
}
