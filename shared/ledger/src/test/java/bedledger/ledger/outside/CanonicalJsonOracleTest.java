package bedledger.ledger.outside;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedledger.ledger.json.CanonicalJson;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.erdtman.jcs.JsonCanonicalizer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Random values against another program's canonical form: io.github.erdtman:java-json-canonicalization 1.1 (Apache-2.0). */
class CanonicalJsonOracleTest {

    private static final int DOCUMENTS = 500;
    private static final String ALPHABET = "aAzZ0 _\"\\/\b\f\n\r\t\u0000\u001f\u007f\u0080éßø€\u2028\ufb33\uffff";
    private static final long LARGEST = (1L << 53) - 1;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 4);
    }

    @ParameterizedTest(name = "500 documents from seed {0}")
    @MethodSource("seeds")
    void agreesWithAnotherProgram(long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        int longer = 0;
        for (int i = 0; i < DOCUMENTS; i++) {
            ObjectNode value = object(random, 4);
            byte[] ours = CanonicalJson.write(value);
            byte[] theirs = new JsonCanonicalizer(value.toString()).getEncodedUTF8();
            assertThat(ours)
                    .as("document %s of seed %s", i, seed)
                    .asString(UTF_8)
                    .isEqualTo(new String(theirs, UTF_8));
            assertThat(CanonicalJson.readStrict(ours)).isEqualTo(CanonicalJson.readStrict(theirs));
            longer += ours.length > 100 ? 1 : 0;
        }
        assertThat(longer).as("documents that are more than a few names").isGreaterThan(DOCUMENTS / 4);
    }

    private static JsonNode value(SplittableRandom random, int depth) {
        JsonNodeFactory json = JsonNodeFactory.instance;
        return switch (random.nextInt(depth > 0 ? 7 : 5)) {
            case 0 -> json.nullNode();
            case 1 -> json.booleanNode(random.nextBoolean());
            case 2 -> json.numberNode(random.nextLong(-1000, 1000));
            case 3 -> json.numberNode(random.nextLong(-LARGEST, LARGEST + 1));
            case 4 -> json.textNode(text(random));
            case 5 -> array(random, depth - 1);
            default -> object(random, depth - 1);
        };
    }

    private static ArrayNode array(SplittableRandom random, int depth) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        for (int i = random.nextInt(5); i > 0; i--) {
            array.add(value(random, depth));
        }
        return array;
    }

    private static ObjectNode object(SplittableRandom random, int depth) {
        ObjectNode object = JsonNodeFactory.instance.objectNode();
        for (int i = random.nextInt(8); i > 0; i--) {
            object.set(text(random), value(random, depth));
        }
        return object;
    }

    private static String text(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(6); i > 0; i--) {
            if (random.nextInt(6) == 0) {
                text.appendCodePoint(random.nextInt(0x10000, 0x110000));
            } else {
                text.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
            }
        }
        return text.toString();
    }
}
