package bedledger.ledger.entry;

import bedledger.language.Area;
import bedledger.language.Correction;
import bedledger.language.DocumentId;
import bedledger.language.Head;
import bedledger.language.PersonId;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

final class HeadCodec {
    private static final Kept<PersonId> PEOPLE = new Kept<>(PersonId::new);

    record Split(Head head, Fields rest) {}

    static ObjectNode write(Head head) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("doneOn", head.doneOn().toString());
        node.put("placeInDay", head.placeInDay());
        text(node, "time", head.time());
        text(node, "notedOn", head.notedOn());
        text(node, "doneBy", head.doneBy());
        text(node, "area", head.area());
        text(node, "equipment", head.equipment());
        text(node, "note", head.note());
        if (head.people() != null) {
            node.put("people", head.people());
        }
        if (head.minutes() != null) {
            node.put("minutes", head.minutes());
        }
        if (!head.documents().isEmpty()) {
            ArrayNode documents = node.putArray("documents");
            head.documents().forEach(document -> documents.add(document.toString()));
        }
        if (head.corrects() != null) {
            node.putObject("corrects")
                    .put("number", head.corrects().number())
                    .put("reason", head.corrects().reason());
        }
        return node;
    }

    private static void text(ObjectNode node, String name, @Nullable Object value) {
        if (value != null) {
            node.put(name, value.toString());
        }
    }

    static Split read(JsonNode payload) {
        Fields rest = new Fields(payload);
        JsonNode placeInDay = rest.take("placeInDay");
        try {
            LocalDate doneOn = value(rest, "doneOn", Moments::day);
            if (doneOn == null || placeInDay == null || !placeInDay.isInt()) {
                throw new UnreadableEntry("The payload lacks the day or the place in the day.");
            }
            Head head = new Head(
                    doneOn,
                    value(rest, "time", LocalTime::parse),
                    placeInDay.intValue(),
                    value(rest, "notedOn", Moments::day),
                    value(rest, "doneBy", PEOPLE::of),
                    value(rest, "area", Area::parse),
                    whole(rest, "people"),
                    whole(rest, "minutes"),
                    value(rest, "equipment", Function.identity()),
                    value(rest, "note", Function.identity()),
                    documents(rest),
                    correction(rest.take("corrects")));
            return new Split(head, rest);
        } catch (DateTimeException notADay) {
            throw new UnreadableEntry("A day or time cannot be read: " + notADay.getMessage(), notADay);
        }
    }

    private static <T> @Nullable T value(Fields rest, String name, Function<String, T> parse) {
        JsonNode node = rest.take(name);
        if (node == null) {
            return null;
        }
        return parse.apply(Parts.text(node, name));
    }

    private static @Nullable Integer whole(Fields rest, String name) {
        JsonNode node = rest.take(name);
        if (node != null && !node.isInt()) {
            throw new UnreadableEntry("'" + name + "' is not a whole number.");
        }
        return node == null ? null : node.intValue();
    }

    private static List<DocumentId> documents(Fields rest) {
        JsonNode node = rest.take("documents");
        if (node == null) {
            return List.of();
        }
        if (!node.isArray() || node.isEmpty()) {
            throw new UnreadableEntry("'documents' is not a list.");
        }
        List<DocumentId> documents = new ArrayList<>();
        node.forEach(one -> documents.add(new DocumentId(Parts.text(one, "a document"))));
        return documents;
    }

    private static @Nullable Correction correction(@Nullable JsonNode node) {
        if (node == null) {
            return null;
        }
        Parts.requireJust(node, "corrects", "number", "reason");
        return new Correction(Parts.whole(node.path("number"), "number"), Parts.text(node.path("reason"), "reason"));
    }

    private HeadCodec() {}
}
