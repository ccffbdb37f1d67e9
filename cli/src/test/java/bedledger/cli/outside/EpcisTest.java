package bedledger.cli.outside;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Against the JSON Schema of GS1 EPCIS 2.0 (ISO/IEC 19987), kept as a test resource with its source beside it; formats are asserted, for
 * else the schema lets a business step pass that CBV 2.0 (ISO/IEC 19988) does not have.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EpcisTest {
    private static final JsonMapper JSON = new JsonMapper();
    private JsonNode document = JSON.createObjectNode();

    @BeforeAll
    void handOut(@TempDir Path folder) throws Exception {
        document = JSON.readTree(Handed.season(folder).export("epcis", "--base", "https://farm.example/fern"));
    }

    private static JsonSchema schema() throws Exception {
        try (InputStream in =
                Objects.requireNonNull(EpcisTest.class.getResourceAsStream("/outside/epcis-2.0.schema.json"))) {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7)
                    .getSchema(
                            in,
                            SchemaValidatorsConfig.builder()
                                    .formatAssertionsEnabled(true)
                                    .build());
        }
    }

    private List<JsonNode> events(String act) {
        return StreamSupport.stream(document.at("/epcisBody/eventList").spliterator(), false)
                .filter(event -> event.get("bl:act").asText().equals(act))
                .toList();
    }

    @Test
    void theSchemaOfGs1TakesIt() throws Exception {
        assertThat(document.at("/epcisBody/eventList")).hasSizeGreaterThan(13);
        assertThat(schema().validate(document)).isEmpty();
    }

    static Stream<Named<Consumer<ObjectNode>>> harms() {
        return Stream.of(
                Named.of("no zone", event -> event.remove("eventTimeZoneOffset")),
                Named.of("no action", event -> event.remove("action")),
                Named.of("no lot", event -> event.remove("quantityList")),
                Named.of("a unit of UCUM", event -> ((ObjectNode) event.at("/quantityList/0")).put("uom", "kg")),
                Named.of("origin of what is only observed", event -> event.put("action", "OBSERVE")),
                Named.of("a step that CBV has not", event -> event.put("bizStep", "harvesting")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("harms")
    void theSchemaOfGs1RefusesWhatIsWrong(Consumer<ObjectNode> harm) throws Exception {
        JsonNode harmed = document.deepCopy();
        ObjectNode harvest = (ObjectNode)
                StreamSupport.stream(harmed.at("/epcisBody/eventList").spliterator(), false)
                        .filter(event -> event.get("bl:act").asText().equals("harvest"))
                        .findFirst()
                        .orElseThrow();
        harm.accept(harvest);
        assertThat(schema().validate(harmed)).isNotEmpty();
    }

    /** EPCIS 2.0, error declarations (the section, 7.4.1.2, is from memory): the event stays, and names its correction. */
    @Test
    void aCorrectedHarvestStaysAndNamesItsCorrection() {
        List<JsonNode> harvests = events("harvest").stream()
                .filter(event -> event.at("/ilmd/bl:lot").asText().equals("2025/CAR-A"))
                .toList();
        assertThat(harvests).hasSize(2);
        assertThat(harvests.get(0).at("/errorDeclaration/reason").asText()).isEqualTo("incorrect_data");
        assertThat(harvests.get(0).at("/errorDeclaration/correctiveEventIDs/0"))
                .isEqualTo(harvests.get(1).get("eventID"));
        assertThat(harvests.get(1).has("errorDeclaration")).isFalse();
        assertThat(harvests.get(1).at("/quantityList/0/quantity").asInt()).isEqualTo(92);
        assertThat(events("donate").get(0).at("/errorDeclaration/reason").asText())
                .isEqualTo("did_not_occur");
    }

    @Test
    void joiningAndSplittingTransform() {
        JsonNode join = events("join-lots").get(0);
        assertThat(join.get("type").asText()).isEqualTo("TransformationEvent");
        assertThat(join.get("inputQuantityList")).hasSize(2);
        assertThat(join.at("/outputQuantityList/0/epcClass").asText())
                .isEqualTo("https://farm.example/fern/lot/2025/CAR-STORE");
        assertThat(events("split-lot").get(0).get("outputQuantityList")).hasSize(2);
    }

    @Test
    void aSaleNamesInvoiceBuyerAndEveryLot() {
        JsonNode sale = events("sell").get(0);
        assertThat(sale.get("bizStep").asText()).isEqualTo("shipping");
        assertThat(sale.at("/bizTransactionList/0/bizTransaction").asText())
                .isEqualTo("https://farm.example/fern/invoice/77/2025");
        assertThat(sale.at("/destinationList/0/destination").asText())
                .isEqualTo("https://farm.example/fern/party/Caf%C3%A9%20%26%20Sons%2C%20town");
        assertThat(sale.at("/quantityList/0/uom").asText()).isEqualTo("KGM");
        assertThat(sale.at("/quantityList/1").has("uom")).isFalse();
        assertThat(sale.at("/bl:counted/0").asText()).isEqualTo("https://farm.example/fern/lot/2025/LET-A in heads");
    }

    @Test
    void theHourIsThatOfTheFarmAndSaysWhenItIsNotKnown() {
        assertThat(events("harvest").get(0).get("eventTime").asText()).isEqualTo("2025-06-10T07:30:00.000-04:00");
        assertThat(events("harvest").get(0).has("bl:timeOfDay")).isFalse();
        assertThat(events("sell").get(0).get("bl:timeOfDay").asText()).isEqualTo("not recorded");
    }
}
