package bedledger.ledger.outside;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import bedledger.ledger.json.CanonicalJson;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * RFC 8785 §3.2.2 to §3.2.4, and the six files of the test data that its author publishes beside it
 * (cyberphone/json-canonicalization, testdata, commit 19d51d7f, Apache-2.0; values retyped, SHA-256 of the outputs as found
 * there).
 */
class CanonicalJsonVectorsTest {

    private static final String ARRAYS = "[56,{\"1\":[],\"10\":null,\"d\":true}]";
    private static final String FRENCH = "{\"peach\":\"This sorting order\",\"péché\":\"is wrong according to French\","
            + "\"pêche\":\"but canonicalization MUST\",\"sin\":\"ignore locale\"}";
    private static final String STRUCTURES =
            "{\"\":\"empty\",\"1\":{\"\\n\":56,\"f\":{\"F\":5,\"f\":\"hi\"}},\"10\":{},"
                    + "\"111\":[{\"E\":\"no\",\"e\":\"yes\"}],\"A\":{},\"a\":{}}";
    private static final String UNICODE = "{\"Unnormalized Unicode\":\"A\u030a\"}";
    private static final String WEIRD = "{\"\\n\":\"Newline\",\"\\r\":\"Carriage Return\",\"1\":\"One\","
            + "\"</script>\":\"Browser Challenge\",\"\u0080\":\"Control\u007f\","
            + "\"ö\":\"Latin Small Letter O With Diaeresis\",\"€\":\"Euro Sign\",\"\ud83d\ude02\":\"Smiley\","
            + "\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}";

    /** The whole of the file values, RFC 8785 §3.2.4. */
    private static final String VALUES = "7b226c69746572616c73223a5b6e756c6c2c747275652c66616c73655d2c226e756d62657273"
            + "223a5b3333333333333333332e333333333333332c31652b33302c342e352c302e3030322c31652d32375d2c22737472696e67"
            + "223a22e282ac245c75303030665c6e4127425c225c5c5c5c5c222f227d";

    @Test
    void spellsArrays() {
        assertSpelled(
                "[ 56 ,\n{ \"d\":true, \"10\":null , \"1\":[ ] }]",
                ARRAYS,
                "099601b171cafed97c333f8878d68e7f8c8f795412adb34b2fdcf0e7c7beac42");
    }

    @Test
    void sortsByCodeUnitsWhateverTheLanguage() {
        assertSpelled(
                "{\"sin\":\"ignore locale\",\"p\\u00eache\":\"but canonicalization MUST\","
                        + "\"p\\u00e9ch\\u00e9\":\"is wrong according to French\",\"peach\":\"This sorting order\"}",
                FRENCH,
                "d99d0ebdcb0033cb858cfa830ae46bc0fb3309413b271f1da828c89901a27ed5");
    }

    @Test
    void sortsInsideOut() {
        assertSpelled(
                "{\"a\":{},\"A\":{},\"111\":[{\"e\":\"yes\",\"E\":\"no\"}],\"10\":{},"
                        + "\"1\":{\"f\":{\"f\":\"hi\",\"F\":5},\"\\n\":56},\"\":\"empty\"}",
                STRUCTURES,
                "605f65004ec2db7692522a0852c22f1c989e036d547e88963d1a3143cf3195d5");
    }

    @Test
    void leavesUnicodeAsItWasTyped() {
        assertSpelled(
                "{\"Unnormalized Unicode\":\"A\\u030A\"}",
                UNICODE,
                "0d99aad92a125196ff887876643fd3206786a84ddce2cee52ba4ad256d2381d3");
    }

    @Test
    void sortsAPairOfSurrogatesBeforeALaterPlaneZeroCharacter() {
        assertSpelled(
                "{\"\\ufb33\":\"Hebrew Letter Dalet With Dagesh\",\"\\ud83d\\ude02\":\"Smiley\",\"\\u20ac\":\"Euro Sign\","
                        + "\"\\u00f6\":\"Latin Small Letter O With Diaeresis\",\"\\u0080\":\"Control\\u007f\","
                        + "\"\\u003c\\/script>\":\"Browser Challenge\",\"1\":\"One\",\"\\r\":\"Carriage Return\","
                        + "\"\\n\":\"Newline\"}",
                WEIRD,
                "6af595a9aa80110b964b4de3f82a05fa6ae7423005019bacfa2620dddc4e94d1");
    }

    @Test
    void refusesTheFileWithFractionsThoughItIsCanonical() {
        byte[] values = HexFormat.of().parseHex(VALUES);
        assertThat(Sha256.hex(values)).isEqualTo("2d5e01a318d0f0879ab568c4be289c8b1f64ef8921a53c6277d5e069978baacb");
        assertThat(CanonicalJson.isCanonical(values)).isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CanonicalJson.write(CanonicalJson.readStrict(values)))
                .withMessageContaining("/numbers/0")
                .withMessageContaining("decimal string");
    }

    @Test
    void spellsTheStringOfThatFile() {
        String typed = "\"\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\\"\\/\"";
        assertThat(CanonicalJson.write(CanonicalJson.readStrict(typed.getBytes(UTF_8))))
                .asString(UTF_8)
                .isEqualTo("\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"");
    }

    /** RFC 8785 §3.2.2.2, RFC 8259 §2 and §7, RFC 7493 §2.1 to §2.3. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            a name used twice                      | {"a":1,"a":1}
            a name used twice, spelled differently | {"a":1,"\\u0061":2}
            half a pair, first half                | "\\ud83d"
            half a pair, second half               | "\\ude02"
            half a pair in a name                  | {"\\ud83d":1}
            pair the wrong way round               | "\\ude02\\ud83d"
            half a pair before a letter            | "\\ud83dx"
            a fraction                             | 0.1
            a fraction that is whole               | 56.0
            an exponent                            | 1e3
            beyond 2^53-1                          | 9007199254740992
            below -(2^53-1)                        | -9007199254740992
            far beyond                             | 295147905179352830000
            not a number                           | NaN
            infinity                               | Infinity
            a leading zero                         | 01
            a plus sign                            | +1
            something after the value              | {} {}
            a comma too many                       | [1,]
            a comment                              | [1] // one
            single quotes                          | {'a':1}
            no value                               | ''
            only a space                           | ' '
            an unescaped control character         | "\u0001"
            """)
    void refuses(String what, String json) {
        byte[] bytes = json.getBytes(UTF_8);
        assertThatIllegalArgumentException().isThrownBy(() -> CanonicalJson.write(CanonicalJson.readStrict(bytes)));
        assertThat(CanonicalJson.isCanonical(bytes)).isFalse();
    }

    /** RFC 3629 §3 and §10; a byte order mark is RFC 8259 §8.1. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "overlong slash, 22c0af22",
        "a surrogate in UTF-8, 22eda0bd22",
        "cut inside a character, 22e282",
        "a stray continuation byte, 228022",
        "beyond U+10FFFF, 22f490808022",
        "a byte order mark, efbbbf7b7d",
        "UTF-16, 007b007d",
        "UTF-32, 0000007b0000007d"
    })
    void refusesMalformedUtf8(String what, String hex) {
        byte[] bytes = HexFormat.of().parseHex(hex);
        assertThatIllegalArgumentException().isThrownBy(() -> CanonicalJson.readStrict(bytes));
        assertThat(CanonicalJson.isCanonical(bytes)).isFalse();
    }

    /** A second spelling of a value that has one (RFC 8785 §3.2). */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            a space             | {"a": 1}
            names out of order  | {"b":1,"a":1}
            minus zero          | -0
            an escaped slash    | "\\/"
            an escaped letter   | "\\u0061"
            upper-case hex      | "\\u000F"
            long escape         | "\\u000a"
            an escaped non-ASCII | "\\u00f6"
            """)
    void tellsASecondSpellingFromTheFirst(String what, String json) {
        byte[] bytes = json.getBytes(UTF_8);
        assertThat(CanonicalJson.isCanonical(bytes)).isFalse();
        assertThat(CanonicalJson.isCanonical(CanonicalJson.write(CanonicalJson.readStrict(bytes))))
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({"9007199254740991", "-9007199254740991", "0", "-1", "true", "false", "null", "[]", "{}"})
    void takesTheLargestWholeNumbersAndTheLiterals(String json) {
        assertThat(CanonicalJson.isCanonical(json.getBytes(UTF_8))).isTrue();
    }

    private static void assertSpelled(String typed, String canonical, String sha256) {
        byte[] written = CanonicalJson.write(CanonicalJson.readStrict(typed.getBytes(UTF_8)));
        assertThat(written).asString(UTF_8).isEqualTo(canonical);
        assertThat(Sha256.hex(written)).isEqualTo(sha256);
        assertThat(CanonicalJson.isCanonical(written)).isTrue();
        assertThat(typed).isNotEqualTo(canonical);
    }
}
