package bedledger.ledger.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** Makes sure that a database file holds tables and nothing that runs: a view or a trigger in a book from elsewhere could call code. */
final class PlainTables {
    private static final String ANYTHING_ELSE = "SELECT (SELECT COUNT(*) FROM INFORMATION_SCHEMA.TABLES"
            + " WHERE TABLE_SCHEMA = 'PUBLIC' AND TABLE_TYPE <> 'BASE TABLE')"
            + " + (SELECT COUNT(*) FROM INFORMATION_SCHEMA.ROUTINES) + (SELECT COUNT(*) FROM INFORMATION_SCHEMA.TRIGGERS)";

    static void require(Connection connection) throws SQLException {
        try (Statement sql = connection.createStatement();
                ResultSet counted = sql.executeQuery(ANYTHING_ELSE)) {
            counted.next();
            if (counted.getLong(1) > 0) {
                throw new SQLException(
                        "it holds views, routines or triggers, which no book has; nothing of it was run");
            }
        }
    }

    private PlainTables() {}
}
