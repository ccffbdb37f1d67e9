package bedledger.ledger.entry;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines that this program must not guess at; each is this good one with one thing changed. */
class UnreadableTest {
    private static final String GOOD =
            "{\"act\":\"01900000-0000-7000-8000-00000000000c\",\"name\":\"crop.harvested\",\"number\":12,\"payload\":"
                    + "{\"beds\":[\"N1\"],\"corrects\":{\"number\":4,\"reason\":\"misread\"},\"crop\":\"leek\","
                    + "\"documents\":[\"" + "0f".repeat(32) + "\"],\"doneOn\":\"2025-07-08\",\"last\":true,"
                    + "\"lot\":\"2025/LE-1\",\"people\":2,\"placeInDay\":3,\"quantity\":\"38.5kg\"},"
                    + "\"revision\":1,\"sequence\":0,\"writtenAt\":\"2025-07-08T18:00:00.000Z\",\"writtenBy\":\"kim\"}";

    @Test
    void readsTheGoodOne() {
        assertThat(Line.read(GOOD.getBytes(UTF_8)).number()).isEqualTo(12);
    }

    @ParameterizedTest(name = "{0} instead of {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "crop.harvested"           | "crop.picked"                | 'crop.picked' is not known to this program. A newer Bedledger wrote it: update
            "crop.harvested"           | "java.net.URL"               | 'java.net.URL' is not known to this program
            "crop.harvested"           | 7                            | 'name' is not text
            "revision":1               | "revision":2                 | stored at revision 2; this program knows 1 to 1. Update Bedledger
            "revision":1               | "revision":0                 | stored at revision 0
            "revision":1               | "revision":"1"               | 'revision' is not a whole number
            "revision":1               | "revision":4294967297        | this program knows 1 to 1
            "crop":"leek"              | "crop":"leek","colour":"red" | holds [colour], which revision 1 does not have. A newer Bedledger wrote it: update
            "crop":"leek",             | ``                           | lacks 'crop'
            "crop":"leek"              | "crop":7                     | is not what a CropName is stored as
            "crop":"leek"              | "crop":null                  | is not what a CropName is stored as
            "beds":["N1"]              | "beds":"N1"                  | 'beds' is not a list
            "beds":["N1"]              | "beds":[]                    | 'beds' is not a list
            "beds":["N1"]              | "beds":["N1",2]              | is not what a BedId is stored as
            "last":true                | "last":"yes"                 | is not what a Boolean is stored as
            "quantity":"38.5kg"        | "quantity":"38.5"            | 38.5
            "quantity":"38.5kg"        | "quantity":{"kg":38}         | is not what a Amount is stored as
            "doneOn":"2025-07-08"      | "doneOn":"2025-02-30"        | day or time cannot be read
            "doneOn":"2025-07-08"      | "doneOn":20250708            | 'doneOn' is not text
            "doneOn":"2025-07-08",     | ``                           | lacks the day
            "placeInDay":3             | "placeInDay":"3"             | lacks the day or the place in the day
            "people":2                 | "people":"2"                 | 'people' is not a whole number
            "documents":["             | "documents":[7,"             | 'a document' is not text
            "reason":"misread"         | "reason":""                  | a correction needs a reason
            "number":4,                | "number":"4",                | 'number' is not a whole number
            "number":4,                | ``                           | 'number' is not a whole number
            "number":4,                | "number":4,"by":"tim",       | 'corrects' holds [by]
            "number":12,               | ``                           | 'number' is not a whole number
            "number":12,               | "number":12,"new":1,         | 'line' holds [new], which this program does not know. A newer Bedledger wrote it: update
            "sequence":0               | "sequence":null              | 'sequence' is not a whole number
            8000-00000000000c          | 8000-0000                    | not the id of an act
            2025-07-08T18:00:00.000Z   | yesterday                    | cannot be read
            "writtenBy":"kim"          | "writtenBy":["kim"]          | 'writtenBy' is not text
            {"act"                     | {"act":1,"act"               | is not JSON
            {"act"                     | act                          | is not JSON
            """)
    void saysWhatItCannotRead(String good, String bad, String says) {
        String line = GOOD.replace(good, bad);
        assertThat(line).isNotEqualTo(GOOD);
        assertThatThrownBy(() -> Line.read(line.getBytes(UTF_8)))
                .isInstanceOf(UnreadableEntry.class)
                .hasMessageContaining(says);
    }

    @ParameterizedTest(name = "{0} as the payload")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {"null", "7", "[]", "\"text\"", "{}"})
    void readsNoPayloadThatIsNone(String payload) {
        int start = GOOD.indexOf("{\"beds\"");
        String line = GOOD.substring(0, start) + payload + GOOD.substring(GOOD.indexOf("},\"revision\"") + 1);
        assertThatThrownBy(() -> Line.read(line.getBytes(UTF_8))).isInstanceOf(UnreadableEntry.class);
    }

    @Test
    void readsNoPartOfALotThatIsNotJustThat() {
        String lost = GOOD.replace("crop.harvested", "store.lot-lost")
                .replaceFirst("\"beds\".*?\"corrects\"", "\"cause\":\"culled\",\"corrects\"")
                .replaceFirst("\"crop\":\"leek\",", "")
                .replaceFirst(
                        "\"last\".*?\"people\"", "\"lots\":[{\"lot\":\"2025/LE-1\",\"quantity\":\"3kg\"}],\"people\"")
                .replaceFirst(",\"quantity\":\"38.5kg\"", "");
        assertThat(Line.read(lost.getBytes(UTF_8)).number()).isEqualTo(12);
        for (String bad : new String[] {
            "{\"lot\":\"2025/LE-1\"}",
            "{\"lot\":\"2025/LE-1\",\"quantity\":3}",
            "{\"lot\":\"2025/LE-1\",\"quantity\":\"3kg\",\"price\":\"4\"}",
            "\"2025/LE-1=3kg\""
        }) {
            String line = lost.replace("{\"lot\":\"2025/LE-1\",\"quantity\":\"3kg\"}", bad);
            assertThatThrownBy(() -> Line.read(line.getBytes(UTF_8))).as(bad).isInstanceOf(UnreadableEntry.class);
        }
    }
}
