package bedledger.ledger.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.h2.api.ErrorCode;
import org.h2.mvstore.DataUtils;
import org.h2.mvstore.MVMap;
import org.h2.mvstore.MVStore;
import org.h2.mvstore.MVStoreException;
import org.h2.mvstore.SingleFileStore;
import org.h2.mvstore.db.RowDataType;
import org.h2.mvstore.tx.VersionedValueType;
import org.h2.mvstore.type.LongDataType;
import org.h2.result.RowFactory;
import org.h2.result.SearchRow;
import org.h2.table.Column;
import org.h2.value.CompareMode;
import org.h2.value.TypeInfo;
import org.h2.value.VersionedValue;
import org.jspecify.annotations.Nullable;

/**
 * Makes sure, before H2 opens a file as a database, that it defines a book's tables and nothing else.
 *
 * <p>H2 runs definitions as it opens a file: a trigger's code, a linked table's address, a listener named in a setting. So they are
 * read from the store beneath, where they are only text, and a file from elsewhere that defines more is never opened.
 */
final class PlainTables {
    private static final Set<String> DEFINED = definitions();
    /** What H2 notes of a column once it has looked at its values. */
    private static final Pattern STATISTICS = Pattern.compile(" SELECTIVITY \\d+");

    private static final Pattern HARMLESS = Pattern.compile(
            "SET (CREATE_BUILD|WRITE_DELAY|RETENTION_TIME|MAX_MEMORY_ROWS) \\d+|SET REUSE_SPACE (TRUE|FALSE)|"
                    + "CREATE USER IF NOT EXISTS \"\" SALT '' HASH '' ADMIN");
    private static final String DEFINITIONS_MAP = "table.0";
    private static final int SQL_COLUMN = 3;
    private static final int SHOWN = 80;

    /** Lets a file through that is empty or not there yet; a refusal has H2's own code where another program has the file open. */
    static void require(Path file) throws SQLException {
        if (!Files.exists(file) || file.toFile().length() == 0) {
            return;
        }
        // Opened by hand, since H2 keeps its lock on a damaged file that it could not open.
        SingleFileStore store = new SingleFileStore(new HashMap<>());
        try {
            store.open(file.toAbsolutePath().toString(), true, null);
            requireDefined(store);
        } catch (MVStoreException unreadable) {
            if (unreadable.getErrorCode() == DataUtils.ERROR_FILE_LOCKED) {
                throw new SQLException(
                        "it is in use by another program", "", ErrorCode.DATABASE_ALREADY_OPEN_1, unreadable);
            }
            throw new SQLException(unreadable.getMessage(), unreadable);
        } catch (IllegalArgumentException | IllegalStateException | IndexOutOfBoundsException damaged) {
            throw new SQLException("its definitions cannot be read", damaged);
        } finally {
            store.close();
        }
    }

    private static void requireDefined(SingleFileStore file) throws SQLException {
        MVStore store = new MVStore.Builder().adoptFileStore(file).open();
        try {
            MVMap<Long, VersionedValue<SearchRow>> rows = store.openMap(
                    DEFINITIONS_MAP,
                    new MVMap.Builder<Long, VersionedValue<SearchRow>>()
                            .keyType(LongDataType.INSTANCE)
                            .valueType(new VersionedValueType<SearchRow, Object>(rowType())));
            for (Long key : rows.keySet()) {
                VersionedValue<SearchRow> row = rows.get(key);
                requireDefined(row.getCurrentValue());
                requireDefined(row.getCommittedValue());
            }
        } finally {
            store.closeImmediately();
        }
    }

    private static void requireDefined(@Nullable SearchRow row) throws SQLException {
        if (row == null) {
            return;
        }
        String stored = String.valueOf(row.getValue(SQL_COLUMN).getString());
        String sql = STATISTICS.matcher(stored.replaceAll("\\s+", " ").strip()).replaceAll("");
        if (!DEFINED.contains(sql) && !HARMLESS.matcher(sql).matches()) {
            throw new SQLException("it defines what no book has, and none of it was run: "
                    + sql.substring(0, Math.min(SHOWN, sql.length())));
        }
    }

    /** The table of definitions as H2 lays it out: id, head, type, sql. */
    private static RowDataType rowType() {
        Column[] columns = {
            new Column("ID", TypeInfo.TYPE_INTEGER),
            new Column("HEAD", TypeInfo.TYPE_INTEGER),
            new Column("TYPE", TypeInfo.TYPE_INTEGER),
            new Column("SQL", TypeInfo.TYPE_VARCHAR)
        };
        return RowFactory.getDefaultRowFactory()
                .createRowFactory(null, CompareMode.getInstance(null, 0), null, columns, null, false)
                .getRowDataType();
    }

    private static Set<String> definitions() {
        try (InputStream in = Objects.requireNonNull(PlainTables.class.getResourceAsStream("plain-tables.txt"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private PlainTables() {}
}
