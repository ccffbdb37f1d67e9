package bedledger.projections.findings;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is written about a rule, apart from how it judges.
 *
 * @param says the rule in one sentence
 * @param basis where the text was read, or that it is from memory
 * @param to the last day it is in force; null while it is
 * @param passing an example it is content with
 * @param failing an example it is not content with
 */
public record RuleSheet(
        String id,
        String says,
        String citation,
        String basis,
        LocalDate from,
        @Nullable LocalDate to,
        Example passing,
        Example failing) {
    /** Whether it is the rule for work done on that day. */
    public boolean inForceOn(LocalDate day) {
        return !day.isBefore(from) && (to == null || !day.isAfter(to));
    }

    /** Reads {@code us/manure-interval.txt}: {@code key: value} lines, and the lines of an example indented below it. */
    static RuleSheet read(String book, String id) {
        String name = book + "/" + id + ".txt";
        try (InputStream in = RuleSheet.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("no rule sheet " + name);
            }
            return parse(id, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(name, broken);
        }
    }

    static RuleSheet parse(String id, String text) {
        Map<String, String> values = new HashMap<>();
        Map<String, List<String>> indented = new HashMap<>();
        String key = "";
        for (String line : text.lines().filter(l -> !l.isBlank()).toList()) {
            if (line.startsWith("  ")) {
                indented.computeIfAbsent(key, k -> new ArrayList<>()).add(line.strip());
            } else {
                int colon = line.indexOf(':');
                key = line.substring(0, colon);
                values.put(key, line.substring(colon + 1).strip());
            }
        }
        String to = values.get("to");
        return new RuleSheet(
                id,
                needed(id, values, "says"),
                needed(id, values, "citation"),
                needed(id, values, "basis"),
                LocalDate.parse(needed(id, values, "from")),
                to == null ? null : LocalDate.parse(to),
                example(needed(id, values, "passes"), indented.getOrDefault("passes", List.of())),
                example(needed(id, values, "fails"), indented.getOrDefault("fails", List.of())));
    }

    private static String needed(String id, Map<String, String> values, String key) {
        return Optional.ofNullable(values.get(key))
                .orElseThrow(() -> new IllegalStateException("rule sheet " + id + " lacks '" + key + "'"));
    }

    /** {@code met | carrots picked on day 120}; {@code nothing} where the rule is silent. */
    private static Example example(String heading, List<String> lines) {
        String outcome = heading.substring(0, heading.indexOf('|')).strip();
        String title = heading.substring(heading.indexOf('|') + 1).strip();
        return new Example(
                title, outcome.equals("nothing") ? Optional.empty() : Optional.of(Outcome.parse(outcome)), lines);
    }
}
