package bedledger.cli.outside;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Against the text of RFC 7946. */
class GeoJsonTest {
    @TempDir
    Path folder;

    /** 3.3: a collection has features; 3.2: a feature has geometry, null where it is unlocated, properties, and an id that is text or number; 4: no crs. */
    @Test
    void bedsAreUnlocatedFeatures() throws Exception {
        JsonNode all = new JsonMapper().readTree(Handed.season(folder).export("geojson", "--on", "2025-06-01"));
        assertThat(all.get("type").asText()).isEqualTo("FeatureCollection");
        assertThat(all.has("crs")).isFalse();
        assertThat(all.get("features")).hasSize(4).allSatisfy(feature -> {
            assertThat(feature.get("type").asText()).isEqualTo("Feature");
            assertThat(feature.has("geometry")).isTrue();
            assertThat(feature.get("geometry").isNull()).isTrue();
            assertThat(feature.get("properties").isObject()).isTrue();
            assertThat(feature.get("id").isTextual()).isTrue();
            assertThat(feature.at("/properties/squareMetres").asDouble()).isEqualTo(15);
        });
        assertThat(all.get("note").asText()).contains("no position");
        assertThat(all.at("/features/0/properties/crops/0").asText()).isEqualTo("carrot");
    }
}
