package bedledger.ledger.entry;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Takes a stored JSON value for what it has to be, and nothing like it: what is misread here is misread for ever. */
final class Parts {
    static String text(JsonNode node, String what) {
        if (!node.isTextual()) {
            throw new UnreadableEntry("'" + what + "' is not text.");
        }
        return node.textValue();
    }

    static long whole(JsonNode node, String what) {
        if (!node.isIntegralNumber() || !node.canConvertToLong()) {
            throw new UnreadableEntry("'" + what + "' is not a whole number.");
        }
        return node.longValue();
    }

    /** Requires an object of just these names. */
    static void requireJust(JsonNode node, String what, String... names) {
        if (!node.isObject()) {
            throw new UnreadableEntry("'" + what + "' is not an object.");
        }
        List<String> known = List.of(names);
        Set<String> odd = new TreeSet<>();
        node.fieldNames().forEachRemaining(name -> {
            if (!known.contains(name)) {
                odd.add(name);
            }
        });
        if (!odd.isEmpty()) {
            throw new UnreadableEntry("'" + what + "' holds " + odd
                    + ", which this program does not know. A newer Bedledger wrote it: update, then try again.");
        }
    }

    private Parts() {}
}
