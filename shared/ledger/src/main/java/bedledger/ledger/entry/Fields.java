package bedledger.ledger.entry;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The fields of a stored object, taken one by one, so that what nobody took is found. */
final class Fields {
    private final JsonNode object;
    private final List<String> taken = new ArrayList<>();

    Fields(JsonNode object) {
        this.object = object;
    }

    /** The value of a field, counted as taken; null where there is none. Each name is taken once. */
    @Nullable
    JsonNode take(String name) {
        JsonNode value = object.get(name);
        if (value != null) {
            taken.add(name);
        }
        return value;
    }

    /** The names that were not taken. */
    Set<String> untaken() {
        if (taken.size() == object.size()) {
            return Set.of();
        }
        Set<String> names = new TreeSet<>();
        object.fieldNames().forEachRemaining(names::add);
        taken.forEach(names::remove);
        return names;
    }
}
