package bedledger.projections.findings;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What free text says, by lists of words; a text that no list names says nothing that a rule could rest on.
 *
 * <p>The lists are in {@code words.properties}: common practice, no source.
 */
enum Said {
    /** The whole text says that there was none of it. */
    NONE,
    CERTIFIER,
    DRIFT,
    OWN_OR_ORGANIC,
    NO_RISK_BESIDE,
    ALL_ROUND,
    TREATED_CONTAINER,
    CONTAINER,
    LABELLED,
    CHLORINE,
    MICRONUTRIENT,
    NITRATE_OR_CHLORIDE,
    TEST,
    SODIUM_NITRATE,
    COMPOST,
    BURNT,
    DISEASE,
    FACTORY_FARM,
    AUTHORISED,
    DATABASE,
    PERENNIAL,
    PROHIBITED_IN_WOOD,
    TREATED_WOOD,
    WOOD;

    private static final Map<Said, List<Pattern>> WORDS = read();

    /** Whether the text names one of the words, whole, wherever they stand; of NONE, whether it is one of them. */
    boolean in(@Nullable String text) {
        if (text == null) {
            return false;
        }
        String folded = text.strip().toLowerCase(Locale.ROOT);
        List<Pattern> words = WORDS.getOrDefault(this, List.of());
        return this == NONE
                ? words.stream().anyMatch(word -> word.matcher(folded).matches())
                : words.stream().anyMatch(word -> word.matcher(folded).find());
    }

    static Pattern whole(String word) {
        return Pattern.compile("\\b" + Pattern.quote(word.strip()) + "\\b");
    }

    private static Map<Said, List<Pattern>> read() {
        Properties words = new Properties();
        try (Reader in = new InputStreamReader(
                Objects.requireNonNull(Said.class.getResourceAsStream("words.properties")), StandardCharsets.UTF_8)) {
            words.load(in);
        } catch (IOException broken) {
            throw new UncheckedIOException("words.properties", broken);
        }
        Map<Said, List<Pattern>> all = new TreeMap<>();
        for (Said said : values()) {
            String key = said.name().toLowerCase(Locale.ROOT).replace('_', '-');
            all.put(
                    said,
                    Arrays.stream(Objects.requireNonNull(words.getProperty(key), key)
                                    .split(";"))
                            .map(Said::whole)
                            .toList());
        }
        return all;
    }
}
