package bedledger.ledger.store;

import bedledger.language.ActId;
import bedledger.language.Entry;
import bedledger.language.PersonId;
import bedledger.language.Place;
import bedledger.ledger.entry.Deed;
import bedledger.ledger.entry.DeedCodec;
import bedledger.ledger.tree.Hash;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Reads entries by their index rows. */
final class Query {
    private static final String COLUMNS =
            "SELECT number, act, sequence, written_at, written_by, name, revision, payload FROM entry ";
    /**
     * Everything on the acts that a subquery names. A join, since H2 2.5.252 fails on {@code IN (SELECT …)} as soon as the list is
     * longer than MAX_MEMORY_ROWS (40,000 for each GiB of memory).
     */
    private static final String OF_ACTS = "SELECT entry.number, entry.act, entry.sequence, entry.written_at,"
            + " entry.written_by, entry.name, entry.revision, entry.payload"
            + " FROM (SELECT DISTINCT %s) acts JOIN entry ON entry.act = acts.act ORDER BY entry.number";

    private final Connection connection;

    Query(Connection connection) {
        this.connection = connection;
    }

    List<Entry> touching(Collection<? extends Place> places) {
        Object[] keys = places.stream().map(Place::key).toArray();
        return entries(
                String.format(OF_ACTS, "e.act FROM entry e JOIN touch t ON t.number = e.number WHERE t.place = ANY(?)"),
                (Object) keys);
    }

    List<Entry> ofKind(String name) {
        return entries(String.format(OF_ACTS, "act FROM entry WHERE name = ?"), name);
    }

    List<Entry> act(ActId act) {
        return entries(COLUMNS + "WHERE act = ? ORDER BY number", act.toString());
    }

    Optional<Entry> entry(long number) {
        return entries(COLUMNS + "WHERE number = ?", number).stream().findFirst();
    }

    private List<Entry> entries(String sql, Object parameter) {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            statement.setObject(1, parameter);
            List<Entry> found = new ArrayList<>();
            try (ResultSet row = statement.executeQuery()) {
                while (row.next()) {
                    found.add(entry(row));
                }
            }
            return found;
        } catch (SQLException failed) {
            throw new StoreFailed(failed);
        }
    }

    private static Entry entry(ResultSet row) throws SQLException {
        Deed deed = DeedCodec.read(row.getString(6), row.getString(7), row.getBytes(8));
        return new Entry(
                row.getLong(1),
                new ActId(row.getString(2)),
                row.getLong(3),
                Instant.parse(row.getString(4)),
                new PersonId(row.getString(5)),
                deed.head(),
                deed.fact());
    }

    List<String> placeKeys(String beginning) {
        try (PreparedStatement sql =
                connection.prepareStatement("SELECT place FROM place WHERE place >= ? AND place < ? ORDER BY place")) {
            sql.setString(1, beginning);
            sql.setString(2, beginning + Character.MAX_VALUE);
            List<String> keys = new ArrayList<>();
            try (ResultSet row = sql.executeQuery()) {
                while (row.next()) {
                    keys.add(row.getString(1));
                }
            }
            return keys;
        } catch (SQLException failed) {
            throw new StoreFailed(failed);
        }
    }

    int lastPlaceIn(LocalDate day) {
        try (PreparedStatement sql =
                connection.prepareStatement("SELECT COALESCE(MAX(place_in_day), 0) FROM entry WHERE done_on = ?")) {
            sql.setObject(1, day);
            try (ResultSet row = sql.executeQuery()) {
                row.next();
                return row.getInt(1);
            }
        } catch (SQLException failed) {
            throw new StoreFailed(failed);
        }
    }

    Hash leaf(long number) throws SQLException {
        try (PreparedStatement sql = connection.prepareStatement("SELECT leaf FROM entry WHERE number = ?")) {
            sql.setLong(1, number);
            try (ResultSet row = sql.executeQuery()) {
                row.next();
                return Hash.of(row.getBytes(1));
            }
        }
    }
}
