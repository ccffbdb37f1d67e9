package bedledger.ledger.entry;

import bedledger.language.ActId;
import bedledger.language.ActKind;
import bedledger.language.BadValue;
import bedledger.language.Entry;
import bedledger.language.PersonId;
import bedledger.ledger.json.CanonicalJson;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.format.DateTimeParseException;

/** The line of an entry: RFC 8785 canonical JSON; journal line, leaf input and packet line are these same bytes. */
public final class Line {
    private static final Kept<PersonId> PEOPLE = new Kept<>(PersonId::new);

    /** The bytes of an entry's line, without the line feed. */
    public static byte[] write(Entry entry) {
        ActKind kind = entry.kind();
        return around(
                entry.number(),
                entry.act().toString(),
                entry.sequence(),
                kind.name(),
                kind.revision(),
                written(entry.writtenAt()),
                entry.writtenBy().name(),
                DeedCodec.write(new Deed(entry.head(), entry.fact())));
    }

    /** The line made of its parts, for a reader that compares stored parts with lines and trusts neither. */
    public static byte[] around(
            long number,
            String act,
            long sequence,
            String name,
            int revision,
            String writtenAt,
            String writtenBy,
            JsonNode payload) {
        ObjectNode line = JsonNodeFactory.instance.objectNode();
        line.put("act", act);
        line.put("name", name);
        line.put("number", number);
        line.set("payload", payload);
        line.put("revision", revision);
        line.put("sequence", sequence);
        line.put("writtenAt", writtenAt);
        line.put("writtenBy", writtenBy);
        return CanonicalJson.write(line);
    }

    /**
     * Reads a line.
     *
     * @throws UnreadableEntry where it is not JSON, lacks a part, or holds what this program does not know
     */
    public static Entry read(byte[] line) {
        JsonNode node;
        try {
            node = CanonicalJson.readStrict(line);
        } catch (IllegalArgumentException notJson) {
            throw new UnreadableEntry("A line of the log is not JSON: " + notJson.getMessage(), notJson);
        }
        Parts.requireJust(
                node, "line", "act", "name", "number", "payload", "revision", "sequence", "writtenAt", "writtenBy");
        try {
            return entry(node);
        } catch (DateTimeParseException | BadValue bad) {
            throw new UnreadableEntry("Line " + node.path("number") + " cannot be read: " + bad.getMessage(), bad);
        }
    }

    private static Entry entry(JsonNode line) {
        long revision = Parts.whole(line.path("revision"), "revision");
        Deed deed = DeedCodec.read(
                Parts.text(line.path("name"), "name"),
                (int) Math.max(0, Math.min(revision, Integer.MAX_VALUE)),
                line.path("payload"));
        return new Entry(
                Parts.whole(line.path("number"), "number"),
                new ActId(Parts.text(line.path("act"), "act")),
                Parts.whole(line.path("sequence"), "sequence"),
                Moments.moment(Parts.text(line.path("writtenAt"), "writtenAt")),
                PEOPLE.of(Parts.text(line.path("writtenBy"), "writtenBy")),
                deed.head(),
                deed.fact());
    }

    /** The moment of writing as it is stored, to the millisecond. */
    public static String written(Instant at) {
        return Moments.written(at);
    }

    private Line() {}
}
