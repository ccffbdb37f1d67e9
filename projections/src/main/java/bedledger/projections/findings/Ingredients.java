package bedledger.projections.findings;

import bedledger.language.Fertility;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Properties;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Whether a pile, or a material, holds anything that comes from animals, by what is recorded of it. */
enum Ingredients {
    ANIMAL,
    PLANT,
    UNKNOWN;

    private static final Properties WORDS = words();
    private static final List<String> MANURE = list("manure");
    private static final List<String> FROM_ANIMALS =
            Stream.concat(MANURE.stream(), list("animal").stream()).toList();
    private static final List<String> FROM_PLANTS = list("plant");

    /** A pile that names manure holds it, whatever else is ticked; one that names only plants known as such holds none. */
    static Ingredients of(Fertility.@Nullable PileBuilt built) {
        if (built == null) {
            return UNKNOWN;
        }
        if (Boolean.TRUE.equals(built.animalMaterial())
                || built.contents().stream().anyMatch(Ingredients::animal)) {
            return ANIMAL;
        }
        boolean plants =
                !built.contents().isEmpty() && built.contents().stream().allMatch(Ingredients::plant);
        return Boolean.FALSE.equals(built.animalMaterial()) || plants ? PLANT : UNKNOWN;
    }

    static boolean animal(String text) {
        return names(FROM_ANIMALS, text);
    }

    /** Whether a text names manure in the sense of 7 CFR 205.2: excrement, or bedding that holds it. */
    static boolean manure(String text) {
        return names(MANURE, text);
    }

    private static boolean names(List<String> words, String text) {
        String folded = fold(text);
        return words.stream()
                .anyMatch(word -> Pattern.compile("\\b" + Pattern.quote(word) + "\\b")
                        .matcher(folded)
                        .find());
    }

    private static boolean plant(String text) {
        return FROM_PLANTS.contains(fold(text));
    }

    private static String fold(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }

    private static List<String> list(String key) {
        return Arrays.stream(WORDS.getProperty(key).split(";"))
                .map(String::strip)
                .toList();
    }

    private static Properties words() {
        Properties words = new Properties();
        try (Reader in = new InputStreamReader(
                Objects.requireNonNull(Ingredients.class.getResourceAsStream("ingredients.properties")),
                StandardCharsets.UTF_8)) {
            words.load(in);
            return words;
        } catch (IOException broken) {
            throw new UncheckedIOException("ingredients.properties", broken);
        }
    }
}
