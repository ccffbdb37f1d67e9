package bedledger.projections.tables;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Plain names and their aliases, found whatever the case, the hyphen or the plural; and what an unknown one may have meant. */
final class Names {
    private static final int MOST_SUGGESTIONS = 3;

    private final Map<String, String> nameByForm = new HashMap<>();
    // A book asks for the same few spellings very often.
    private final Map<String, Optional<String>> found = new ConcurrentHashMap<>();

    Names() {}

    Names(Names others) {
        nameByForm.putAll(others.nameByForm);
    }

    void add(String name, List<String> aliases) {
        put(name, name);
        aliases.forEach(each -> put(each, name));
    }

    /** Adds a name unless something is called so already; says whether it did. */
    boolean addIfNew(String name) {
        return nameByForm.putIfAbsent(form(name), name) == null;
    }

    private void put(String spelling, String name) {
        String earlier = nameByForm.putIfAbsent(form(spelling), name);
        if (earlier != null && !earlier.equals(name)) {
            throw new IllegalArgumentException("'" + spelling + "' names both " + earlier + " and " + name);
        }
    }

    Optional<String> find(String typed) {
        return found.computeIfAbsent(typed, each -> Optional.ofNullable(nameByForm.get(form(each))));
    }

    /** The names whose spelling is nearest, nearest first, none further than a third of what was typed. */
    List<String> nearest(String typed) {
        String form = form(typed);
        int furthest = Math.max(1, form.length() / 3);
        Map<String, Integer> distanceByName = nameByForm.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getValue, each -> distance(form, each.getKey()), Math::min));
        return distanceByName.entrySet().stream()
                .filter(each -> each.getValue() <= furthest)
                .sorted(Map.Entry.<String, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .limit(MOST_SUGGESTIONS)
                .map(Map.Entry::getKey)
                .toList();
    }

    List<String> all() {
        return nameByForm.values().stream()
                .distinct()
                .sorted(Comparator.naturalOrder())
                .toList();
    }

    static String form(String typed) {
        String plain = typed.toLowerCase(Locale.ROOT)
                .replaceAll("[&+]", " and ")
                .replaceAll("[^\\p{L}\\p{N}%']+", " ")
                .strip();
        return Stream.of(plain.split(" ", -1)).map(Names::singular).collect(Collectors.joining(" "));
    }

    private static String singular(String word) {
        if (word.length() < 4 || !word.endsWith("s") || word.matches(".*(ss|us)")) {
            return word;
        }
        if (word.endsWith("ies")) {
            return word.substring(0, word.length() - 3) + "y";
        }
        return word.substring(0, word.length() - (word.matches(".*(oes|shes|ches)") ? 2 : 1));
    }

    // Levenshtein's edit distance, two rows at a time.
    private static int distance(String from, String to) {
        int[] above = new int[to.length() + 1];
        for (int column = 0; column <= to.length(); column++) {
            above[column] = column;
        }
        for (int row = 1; row <= from.length(); row++) {
            int[] here = new int[to.length() + 1];
            here[0] = row;
            for (int column = 1; column <= to.length(); column++) {
                int swapped = above[column - 1] + (from.charAt(row - 1) == to.charAt(column - 1) ? 0 : 1);
                here[column] = Math.min(swapped, 1 + Math.min(above[column], here[column - 1]));
            }
            above = here;
        }
        return above[to.length()];
    }
}
