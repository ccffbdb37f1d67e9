package bedledger.ledger.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * Reads and writes the one spelling of a JSON value.
 *
 * <p>RFC 8785 narrowed to objects, arrays, strings, booleans, null and whole numbers within ±(2^53-1). Everything
 * outside that profile is refused with an {@link IllegalArgumentException}: a float has more than one plausible
 * spelling between languages, and a lone surrogate has none in UTF-8.
 */
public final class CanonicalJson {

    /** An entry is a handful of levels deep; the bound keeps a hostile line from exhausting the stack. */
    static final int DEEPEST = 100;

    private static final ObjectMapper STRICT = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .build())
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private CanonicalJson() {}

    /**
     * Returns the canonical UTF-8 bytes of a value, without a line end.
     *
     * @throws IllegalArgumentException where the value is outside the profile; the message says where and what
     */
    public static byte[] write(JsonNode value) {
        return new CanonicalWriter().write(value).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Reads exactly one JSON value.
     *
     * @throws IllegalArgumentException for malformed UTF-8, a byte order mark, a name used twice in one object, anything
     *     after the value, or no value at all
     */
    public static JsonNode readStrict(byte[] utf8) {
        try {
            JsonNode value = STRICT.readTree(decode(utf8));
            if (value.isMissingNode()) {
                throw refused("it holds no value");
            }
            return value;
        } catch (CharacterCodingException malformed) {
            throw refused("it is not UTF-8 (" + malformed.getMessage() + ")");
        } catch (JsonProcessingException malformed) {
            throw refused(malformed.getOriginalMessage());
        }
    }

    /** Says whether these bytes are the one canonical spelling of one value. */
    public static boolean isCanonical(byte[] utf8) {
        return readCanonical(utf8).isPresent();
    }

    /** The value of which these bytes are the one canonical spelling; nothing where they are not. */
    public static Optional<JsonNode> readCanonical(byte[] utf8) {
        try {
            JsonNode value = readStrict(utf8);
            return Arrays.equals(utf8, write(value)) ? Optional.of(value) : Optional.empty();
        } catch (IllegalArgumentException notInTheProfile) {
            return Optional.empty();
        }
    }

    private static String decode(byte[] utf8) throws CharacterCodingException {
        return isAscii(utf8)
                ? new String(utf8, StandardCharsets.ISO_8859_1)
                : StandardCharsets.UTF_8
                        .newDecoder()
                        .decode(ByteBuffer.wrap(utf8))
                        .toString();
    }

    /** Nearly every line is; there is then nothing that could be malformed, and a reader of very many saves the decoder. */
    private static boolean isAscii(byte[] bytes) {
        for (byte one : bytes) {
            if (one < 0) {
                return false;
            }
        }
        return true;
    }

    private static IllegalArgumentException refused(String why) {
        return new IllegalArgumentException("This JSON was refused: " + why
                + ". A line is one JSON value in UTF-8, each name once in its object (RFC 8785)."
                + " Write it again from the record it was made of.");
    }
}
