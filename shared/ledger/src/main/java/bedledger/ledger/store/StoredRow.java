package bedledger.ledger.store;

import bedledger.ledger.entry.Deed;
import bedledger.ledger.entry.DeedCodec;
import bedledger.ledger.entry.Line;
import bedledger.ledger.json.CanonicalJson;
import bedledger.ledger.tree.Hash;
import bedledger.ledger.tree.Merkle;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** One row of the entry table, held against the line that it spells. */
@SuppressWarnings("ArrayRecordComponent") // read once, never compared
record StoredRow(
        long number,
        String eventId,
        String act,
        long sequence,
        String type,
        String name,
        String revision,
        String writtenAt,
        String writtenBy,
        byte[] payload,
        byte[] meta,
        byte[] leaf,
        LocalDate doneOn,
        int placeInDay) {

    static StoredRow read(ResultSet row) throws SQLException {
        return new StoredRow(
                row.getLong("number"),
                row.getString("event_id"),
                row.getString("act"),
                row.getLong("sequence"),
                row.getString("type"),
                row.getString("name"),
                row.getString("revision"),
                row.getString("written_at"),
                row.getString("written_by"),
                row.getBytes("payload"),
                row.getBytes("meta"),
                row.getBytes("leaf"),
                row.getObject("done_on", LocalDate.class),
                row.getInt("place_in_day"));
    }

    /** The payload as this program understands it; throws where it does not. */
    Deed deed() {
        return DeedCodec.read(name, revision, payload);
    }

    /** The line; {@link IllegalStateException} where a column that is no part of it does not belong to it. */
    byte[] line(Deed deed) {
        byte[] line = line();
        require("leaf", Arrays.equals(leaf, Merkle.leaf(line).bytes()));
        require("event_id", eventId.equals(EntryRow.eventId(act, sequence)));
        require("type", type.equals(EntryRow.TYPE));
        require("meta", new String(meta, StandardCharsets.UTF_8).equals("{}"));
        require("done_on", doneOn.equals(deed.head().doneOn()));
        require("place_in_day", placeInDay == deed.head().placeInDay());
        return line;
    }

    private byte[] line() {
        JsonNode content = CanonicalJson.readStrict(payload);
        require("payload", Arrays.equals(payload, CanonicalJson.write(content)));
        return Line.around(number, act, sequence, name, revisionNumber(), writtenAt, writtenBy, content);
    }

    private int revisionNumber() {
        require("revision", revision.matches("[1-9][0-9]{0,6}"));
        return Integer.parseInt(revision);
    }

    @Nullable
    Hash leafHash() {
        return leaf.length == Hash.LENGTH ? Hash.of(leaf) : null;
    }

    private void require(String column, boolean belongs) {
        if (!belongs) {
            throw new IllegalStateException("column " + column + " of entry " + number + " does not belong to it");
        }
    }
}
