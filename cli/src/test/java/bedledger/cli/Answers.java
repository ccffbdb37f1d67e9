package bedledger.cli;

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
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What a book answers, with entries named by what they hold and not by their number, and without what asks when something was
 * written: so two books that hold the same can be compared, however they were written.
 */
final class Answers {
    private static final JsonMapper JSON = new JsonMapper();
    private static final Set<String> OF_WRITING = Set.of("writtenAt", "writtenBy", "lagDays", "line");
    private static final Set<String> NUMBERS = Set.of("entry", "entries", "answeredBy", "corrects");
    private static final Pattern NUMBER = Pattern.compile("#([0-9]+)");
    private final Map<Long, Integer> ranks = new HashMap<>();

    Answers(List<Entry> entries) {
        List<Entry> byContent = new ArrayList<>(entries);
        byContent.sort(Comparator.comparing(Season::payload));
        for (Entry entry : byContent) {
            ranks.put(entry.number(), ranks.size() + 1);
        }
    }

    /** Every answer of the reading commands about the season, by the command. */
    static Map<String, JsonNode> of(Desk desk, String book) {
        Answers answers = new Answers(desk.entries(book));
        Map<String, JsonNode> all = new LinkedHashMap<>();
        for (String command : commands(desk, book)) {
            all.put(command, answers.named(desk.run(command + " --json --book " + book)));
        }
        return all;
    }

    private static List<String> commands(Desk desk, String book) {
        List<String> commands = new ArrayList<>();
        for (String day : List.of("2025-04-25", "2025-07-13", "2025-08-14", Season.END)) {
            commands.add("beds --on " + day);
            commands.add("check --all --on " + day);
        }
        for (JsonNode bed : read(desk.run("beds --json --book " + book)).get("beds")) {
            commands.add("bed " + bed.get("bed").asText());
        }
        if (Commands.ALL.stream().anyMatch(command -> command.name().equals("returned"))) {
            List.of("bed", "crop", "flip", "season")
                    .forEach(by -> commands.add("returned --by " + by + " --on " + Season.END));
        }
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
        return NUMBER.matcher(text).replaceAll(match -> "#" + rank(Long.parseLong(match.group(1))));
    }

    private int rank(long number) {
        return ranks.getOrDefault(number, -1);
    }
}
