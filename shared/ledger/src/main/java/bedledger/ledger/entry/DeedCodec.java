package bedledger.ledger.entry;

import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.language.Ask;
import bedledger.language.BadValue;
import bedledger.language.Fact;
import bedledger.language.FactReader;
import bedledger.language.Located;
import bedledger.language.LotAmount;
import bedledger.language.Words;
import bedledger.ledger.json.CanonicalJson;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/** Writes and reads the payload of an entry: one JSON object with the fields of the head and of the fact side by side. */
public final class DeedCodec {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final Map<Class<?>, Kept<Object>> KEPT = new ConcurrentHashMap<>();
    private static final Pattern REVISION = Pattern.compile("[1-9][0-9]{0,6}");

    /** The payload; what was not recorded is left out. */
    public static ObjectNode write(Deed deed) {
        ObjectNode payload = HeadCodec.write(deed.head());
        for (Ask ask : Acts.of(deed.fact().getClass()).asks()) {
            Object value = ask.in(deed.fact());
            if (value != null && !(value instanceof List<?> list && list.isEmpty())) {
                payload.set(ask.name(), node(value));
            }
        }
        return payload;
    }

    private static JsonNode node(Object value) {
        if (value instanceof List<?> list) {
            ArrayNode array = JSON.arrayNode(list.size());
            list.forEach(one -> array.add(node(one)));
            return array;
        }
        if (value instanceof Boolean flag) {
            return JSON.booleanNode(flag);
        }
        if (value instanceof Integer || value instanceof Long) {
            return JSON.numberNode(((Number) value).longValue());
        }
        if (value instanceof LotAmount part) {
            return JSON.objectNode()
                    .put("lot", part.lot().toString())
                    .put("quantity", part.quantity().toString());
        }
        return JSON.textNode(value instanceof Enum<?> choice ? Words.of(choice) : value.toString());
    }

    /**
     * Reads a payload of the kind stored under this name and revision, bringing older revisions up to date first.
     *
     * @throws UnreadableEntry for a name, revision or field this program does not know, or a value that cannot be
     */
    public static Deed read(String name, int revision, JsonNode stored) {
        ActKind kind = Acts.byName(name)
                .orElseThrow(() -> new UnreadableEntry("The entry kind '" + name
                        + "' is not known to this program. A newer Bedledger wrote it: update, then try again."));
        JsonNode payload = Upcasters.upToDate(kind, revision, stored);
        if (!payload.isObject()) {
            throw new UnreadableEntry("The payload of '" + name + "' is not an object.");
        }
        try {
            HeadCodec.Split split = HeadCodec.read(payload);
            return new Deed(split.head(), fact(kind, split.rest()));
        } catch (BadValue | IllegalStateException | ClassCastException bad) {
            throw new UnreadableEntry("The payload of '" + name + "' cannot be read: " + bad.getMessage(), bad);
        }
    }

    /** The same from the columns of a row, which hold the revision as text and the payload as canonical JSON. */
    public static Deed read(String name, String revision, byte[] payload) {
        // No kind has revision 0: what is no number is one this program does not know.
        int number = REVISION.matcher(revision).matches() ? Integer.parseInt(revision) : 0;
        JsonNode stored;
        try {
            stored = CanonicalJson.readStrict(payload);
        } catch (IllegalArgumentException notJson) {
            throw new UnreadableEntry("The payload of '" + name + "' is not JSON: " + notJson.getMessage(), notJson);
        }
        return read(name, number, stored);
    }

    private static Fact fact(ActKind kind, Fields rest) {
        Map<String, Object> values = new HashMap<>();
        for (Ask ask : kind.asks()) {
            JsonNode node = rest.take(ask.name());
            if (node != null) {
                values.put(ask.name(), ask.list() ? list(ask, node) : value(ask.type(), node));
            } else if (ask.required()) {
                throw new UnreadableEntry("The payload of '" + kind.name() + "' lacks '" + ask.name() + "'.");
            }
        }
        if (!rest.untaken().isEmpty()) {
            throw new UnreadableEntry("The payload of '" + kind.name() + "' holds " + rest.untaken()
                    + ", which revision " + kind.revision()
                    + " does not have. A newer Bedledger wrote it: update, then try again.");
        }
        return kind.make(values);
    }

    private static List<Object> list(Ask ask, JsonNode node) {
        if (!node.isArray() || node.isEmpty()) {
            throw new UnreadableEntry("'" + ask.name() + "' is not a list.");
        }
        List<Object> values = new ArrayList<>();
        node.forEach(one -> values.add(value(ask.type(), one)));
        return List.copyOf(values);
    }

    private static Object value(Class<?> type, JsonNode node) {
        if (Located.class.isAssignableFrom(type)) {
            Parts.requireJust(node, "lots", "lot", "quantity");
            return FactReader.parse(
                    type, Parts.text(node.path("lot"), "lot") + "=" + Parts.text(node.path("quantity"), "quantity"));
        }
        boolean flag = type == Boolean.class || type == boolean.class;
        boolean whole = type == Integer.class || type == int.class || type == long.class;
        if (flag ? !node.isBoolean() : whole ? !node.isIntegralNumber() : !node.isTextual()) {
            throw new UnreadableEntry("'" + node + "' is not what a " + type.getSimpleName() + " is stored as.");
        }
        return KEPT.computeIfAbsent(type, each -> new Kept<>(text -> FactReader.parse(each, text)))
                .of(node.asText());
    }

    private DeedCodec() {}
}
