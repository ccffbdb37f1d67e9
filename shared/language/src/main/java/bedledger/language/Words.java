package bedledger.language;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Turns the names of fields and choices into words as people type them, and finds the nearest known word. */
public final class Words {
    /** The same with a capital letter, as a sentence begins. */
    public static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** {@code halfBed} becomes {@code half-bed}. */
    public static String kebab(String camelCase) {
        return camelCase.replaceAll("([a-z0-9])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT);
    }

    /** {@code BREAK_IN_HAND} becomes {@code break-in-hand}. */
    public static String of(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The choice so called; {@link BadValue} names all the choices. */
    public static <E extends Enum<E>> E choice(Class<E> type, String text) {
        String wanted = text.strip().toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
        return Arrays.stream(type.getEnumConstants())
                .filter(choice -> choice.name().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new BadValue(text, "it is none of the choices", "choose " + choices(type)));
    }

    public static String choices(Class<? extends Enum<?>> type) {
        return Arrays.stream(type.getEnumConstants()).map(Words::of).collect(Collectors.joining(", "));
    }

    /** The known word that a mistyped one most likely stands for: at most a third of its letters off. */
    public static Optional<String> nearest(String typed, List<String> known) {
        String folded = typed.toLowerCase(Locale.ROOT);
        return known.stream()
                .min(java.util.Comparator.comparingInt(word -> distance(folded, word.toLowerCase(Locale.ROOT))))
                .filter(word -> distance(folded, word.toLowerCase(Locale.ROOT)) <= Math.max(1, word.length() / 3));
    }

    /** Damerau's distance: how many letters to change, add, drop or swap. */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 ? j : j == 0 ? i : step(a, b, d, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int step(String a, String b, int[][] d, int i, int j) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int best = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + change);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }

    private Words() {}
}
