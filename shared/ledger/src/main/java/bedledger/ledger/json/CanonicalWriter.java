package bedledger.ledger.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Spells one value; keeps the path to where it is, so that a refusal can name the place. */
final class CanonicalWriter {

    private static final long LARGEST_EXACT = (1L << 53) - 1;

    private final StringBuilder out = new StringBuilder(512);
    private final Deque<String> path = new ArrayDeque<>();

    String write(JsonNode value) {
        spell(value);
        return out.toString();
    }

    private void spell(JsonNode value) {
        switch (value.getNodeType()) {
            case OBJECT -> spellObject(value);
            case ARRAY -> spellArray(value);
            case STRING -> spellString(value.textValue());
            case BOOLEAN -> out.append(value.booleanValue());
            case NULL -> out.append("null");
            case NUMBER -> spellNumber(value);
            default ->
                throw refused(
                        "a value of kind " + value.getNodeType(),
                        "only objects, arrays, strings, whole numbers, true, false and null are kept",
                        "Spell it as one of these");
        }
    }

    private void spellObject(JsonNode object) {
        // RFC 8785 §3.2.3: by UTF-16 code units, which is what String.compareTo compares.
        List<String> names = new ArrayList<>(object.size());
        object.fieldNames().forEachRemaining(names::add);
        names.sort(null);
        out.append('{');
        String comma = "";
        for (String name : names) {
            out.append(comma);
            comma = ",";
            enter(name);
            spellString(name);
            out.append(':');
            spell(object.path(name));
            path.removeLast();
        }
        out.append('}');
    }

    private void spellArray(JsonNode array) {
        out.append('[');
        for (int i = 0; i < array.size(); i++) {
            if (i > 0) {
                out.append(',');
            }
            enter(Integer.toString(i));
            spell(array.path(i));
            path.removeLast();
        }
        out.append(']');
    }

    private void enter(String step) {
        path.addLast(step);
        if (path.size() > CanonicalJson.DEEPEST) {
            throw refused(
                    "a value nested deeper than " + CanonicalJson.DEEPEST + " levels",
                    "a reader must be able to bound its stack",
                    "Flatten it");
        }
    }

    private void spellNumber(JsonNode number) {
        if (!number.isIntegralNumber()) {
            throw refused(
                    "the number " + number.asText(),
                    "only whole numbers are kept as numbers, because a fraction has no single spelling everyone agrees on",
                    "Write a measured amount as a decimal string with its unit, such as \"38.5\"");
        }
        if (!number.canConvertToLong() || Math.abs(number.longValue()) > LARGEST_EXACT) {
            throw refused(
                    "the number " + number.asText(),
                    "beyond ±" + LARGEST_EXACT + " a JSON reader may round it (RFC 8785 §3.2.2.3, RFC 7493 §2.2)",
                    "Write it as a string");
        }
        out.append(number.longValue());
    }

    private void spellString(String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char unit = text.charAt(i);
            if (Character.isSurrogate(unit)) {
                spellPair(text, i++);
            } else {
                spellUnit(unit);
            }
        }
        out.append('"');
    }

    private void spellPair(String text, int at) {
        if (at + 1 >= text.length() || !Character.isSurrogatePair(text.charAt(at), text.charAt(at + 1))) {
            throw refused(
                    "half a character (U+%04X) in a string".formatted((int) text.charAt(at)),
                    "a lone surrogate has no UTF-8 spelling (RFC 8785 §3.2.2.2)",
                    "Type the character again");
        }
        out.append(text, at, at + 2);
    }

    /** RFC 8785 §3.2.2.2: the short escapes, other controls as lower-case hex, all else as it is. */
    private void spellUnit(char unit) {
        switch (unit) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\b' -> out.append("\\b");
            case '\f' -> out.append("\\f");
            case '\n' -> out.append("\\n");
            case '\r' -> out.append("\\r");
            case '\t' -> out.append("\\t");
            default -> {
                if (unit < 0x20) {
                    out.append("\\u%04x".formatted((int) unit));
                } else {
                    out.append(unit);
                }
            }
        }
    }

    private IllegalArgumentException refused(String what, String why, String whatToDo) {
        String place = path.isEmpty() ? "" : " at /" + String.join("/", path);
        return new IllegalArgumentException("Refused " + what + place + ": " + why + ". " + whatToDo + ".");
    }
}
