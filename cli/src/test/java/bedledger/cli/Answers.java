package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.Entry;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a book answers, with entries named by what they hold and not by their number, and without what asks when something was
 * written: so two books that hold the same can be compared, however they were written.
 */
final class Answers {
    static final JsonMapper JSON = new JsonMapper();
    private static final Set<String> OF_WRITING = Set.of("writtenAt", "writtenBy", "lagDays", "line");
    private static final Set<String> NUMBERS = Set.of("entry", "entries", "answeredBy", "corrects");
    private static final Pattern NUMBERED = Pattern.compile("#[0-9]+(?: #[0-9]+)*");
    /** An entry's number in a command that is to be typed. */
    private static final Pattern TYPED = Pattern.compile("(--inspection |bedledger correct |--sample )([0-9]+)");

    private final Map<Long, Integer> ranks = new HashMap<>();

    Answers(List<Entry> entries) {
        List<Entry> byContent = new ArrayList<>(entries);
        byContent.sort(Comparator.comparing(Season::payload));
        for (Entry entry : byContent) {
            ranks.put(entry.number(), ranks.size() + 1);
        }
    }

    /** The answers of the reading commands about the season on these days, by the command. */
    static Map<String, JsonNode> of(Desk desk, String book, List<String> days) {
        Answers answers = new Answers(desk.entries(book));
        Map<String, JsonNode> all = new LinkedHashMap<>();
        for (String command : commands(desk, book, days)) {
            all.put(command, answers.named(desk.run(command + " --json --book " + book)));
        }
        return all;
    }

    /** Fails with the lines in which the answers differ. */
    static void same(Map<String, JsonNode> one, Map<String, JsonNode> other) {
        assertThat(one).hasSameSizeAs(other);
        one.forEach((command, answer) -> {
            List<String> lines = lines(answer);
            List<String> others = lines(Objects.requireNonNull(other.get(command), command));
            assertThat(lines.stream().filter(line -> !others.contains(line)))
                    .as("only in the one answer to %s", command)
                    .isEmpty();
            assertThat(lines).as("answer to %s", command).isEqualTo(others);
        });
    }

    private static List<String> lines(JsonNode answer) {
        return answer.toPrettyString().lines().toList();
    }

    private static List<String> commands(Desk desk, String book, List<String> days) {
        List<String> commands = new ArrayList<>();
        for (String day : days) {
            commands.add("beds --on " + day);
            commands.add("check --all --on " + day);
        }
        for (JsonNode bed : read(desk.run("beds --json --book " + book)).get("beds")) {
            commands.add("bed " + bed.get("bed").asText());
        }
        List<String> ways = days.size() > 1 ? List.of("piece", "bed", "crop", "flip", "season") : List.of("flip");
        ways.forEach(by -> commands.add("returned --by " + by + " --on " + Season.END));
        commands.add("nitrogen --on " + Season.END);
        commands.add("soil --on " + Season.END);
        commands.add("blend");
        return commands;
    }

    static JsonNode read(Said said) {
        try {
            return JSON.readTree(said.done().out());
        } catch (IOException notJson) {
            throw new UncheckedIOException(said.out(), notJson);
        }
    }

    JsonNode named(Said said) {
        return named("", read(said));
    }

    private JsonNode named(String key, JsonNode node) {
        if (node instanceof ObjectNode object) {
            ObjectNode named = JsonNodeFactory.instance.objectNode();
            object.properties().stream()
                    .filter(field -> !OF_WRITING.contains(field.getKey()))
                    .forEach(field -> named.set(field.getKey(), named(field.getKey(), field.getValue())));
            return named;
        }
        if (node instanceof ArrayNode array) {
            List<JsonNode> items = new ArrayList<>();
            array.forEach(item -> items.add(named(key, item)));
            if (NUMBERS.contains(key)) {
                items.sort(Comparator.comparing(JsonNode::toString));
            }
            return JsonNodeFactory.instance.arrayNode().addAll(items);
        }
        if (node.isIntegralNumber() && NUMBERS.contains(key)) {
            return IntNode.valueOf(rank(node.asLong()));
        }
        return node.isTextual() ? TextNode.valueOf(named(node.asText())) : node;
    }

    private String named(String text) {
        String typed = TYPED.matcher(text).replaceAll(match -> match.group(1) + rank(Long.parseLong(match.group(2))));
        return NUMBERED.matcher(typed)
                .replaceAll(match -> Arrays.stream(match.group().split(" ", -1))
                        .map(number -> "#" + rank(Long.parseLong(number.substring(1))))
                        .sorted()
                        .collect(Collectors.joining(" ")));
    }

    private int rank(long number) {
        return ranks.getOrDefault(number, -1);
    }
}
