package bedledger.ledger.entry;

import bedledger.language.ActId;
import bedledger.language.ActKind;
import bedledger.language.Entry;
import bedledger.language.PersonId;
import bedledger.ledger.json.CanonicalJson;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;

/** The line of an entry: RFC 8785 canonical JSON; journal line, leaf input and packet line are these same bytes. */
public final class Line {
    private static final DateTimeFormatter MILLISECONDS =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'").withZone(ZoneOffset.UTC);

    /** The bytes of an entry's line, without the line feed. */
    public static byte[] write(Entry entry) {
        return write(entry, CanonicalJson.write(DeedCodec.write(new Deed(entry.head(), entry.fact()))));
    }

    /** The same, around a payload that is canonical already, as the database stores it. */
    static byte[] write(Entry entry, byte[] canonicalPayload) {
        ActKind kind = entry.kind();
        return around(
                entry.number(),
                entry.act().toString(),
                entry.sequence(),
                kind.name(),
                kind.revision(),
                written(entry.writtenAt()),
                entry.writtenBy().name(),
                CanonicalJson.readStrict(canonicalPayload));
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
        try {
            Deed deed = DeedCodec.read(
                    node.path("name").asText(), node.path("revision").asInt(), node.path("payload"));
            return new Entry(
                    node.path("number").asLong(),
                    new ActId(node.path("act").asText()),
                    node.path("sequence").asLong(),
                    Instant.parse(node.path("writtenAt").asText()),
                    new PersonId(node.path("writtenBy").asText()),
                    deed.head(),
                    deed.fact());
        } catch (DateTimeParseException | bedledger.language.BadValue bad) {
            throw new UnreadableEntry("Line " + node.path("number") + " cannot be read: " + bad.getMessage(), bad);
        }
    }

    /** The moment of writing as it is stored, to the millisecond. */
    public static String written(Instant at) {
        return MILLISECONDS.format(at);
    }

    private Line() {}
}
