package bedledger.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.h2.api.Trigger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A database file from elsewhere that brings code along: named, none of it run, and set aside by the next writer. */
public class IntrudedDatabaseTest {
    private static final int ENTRIES = 12;
    private static final String TRACE = "bedledger.intruder.ran";

    @TempDir
    Path scratch;

    private PracticeBook book;

    @BeforeEach
    void write() {
        System.clearProperty(TRACE);
        book = new PracticeBook(scratch).holding(ENTRIES);
    }

    @AfterEach
    void clear() {
        System.clearProperty(TRACE);
    }

    static List<List<String>> intrusions() {
        String ours = IntrudedDatabaseTest.class.getName();
        String alias = "CREATE ALIAS leave_trace FOR \"" + ours + ".leaveTrace\"";
        return List.of(
                List.of(
                        alias,
                        "ALTER TABLE entry RENAME TO kept",
                        "CREATE VIEW entry AS SELECT k.* FROM kept k WHERE leave_trace() = 1"),
                List.of(alias),
                List.of("CREATE TRIGGER intruder BEFORE SELECT ON entry CALL \"" + ours + "$Intruder\""),
                List.of("CREATE TRIGGER intruder BEFORE INSERT ON entry FOR EACH ROW AS 'org.h2.api.Trigger create() {"
                        + " System.setProperty(\"" + TRACE + "\", \"yes\"); return (to, old, now) -> {}; }'"),
                List.of(
                        "CREATE LINKED TABLE elsewhere('org.h2.Driver', 'jdbc:h2:mem:', '', '', 'INFORMATION_SCHEMA.USERS')"),
                List.of("ALTER TABLE place ADD COLUMN more INT DEFAULT CSVWRITE('/nowhere', 'SELECT 1')"),
                List.of("ALTER TABLE touch ADD CONSTRAINT asked CHECK (LENGTH(place) > 0)"),
                List.of("CREATE USER other PASSWORD 'other' ADMIN"),
                List.of("CREATE TRIGGER intruder BEFORE INSERT ON entry FOR EACH ROW CALL \"" + ours + "$Intruder\""));
    }

    @ParameterizedTest
    @MethodSource("intrusions")
    void runsNothingThatADatabaseFileBringsAlong(List<String> intrusion) throws Exception {
        plant(intrusion);
        assertThat(book.verify().disagreements())
                .extracting(Object::toString)
                .anySatisfy(named -> assertThat(named).contains("it defines what no book has"));
        assertThat(book.open()).anySatisfy(said -> assertThat(said).contains("it defines what no book has"));
        assertThat(book.verify().agrees()).isTrue();
        assertThat(book.rows()).hasSize(ENTRIES);
        assertThat(System.getProperty(TRACE)).isNull();
    }

    /** The test can fail: the same file, read without the guard, does run what was planted. */
    @Test
    void whatIsPlantedWouldRun() throws Exception {
        plant(intrusions().get(0));
        try (Connection plain = plain();
                Statement sql = plain.createStatement()) {
            sql.executeQuery("SELECT * FROM entry").next();
        }
        assertThat(System.getProperty(TRACE)).isEqualTo("yes");
    }

    private void plant(List<String> intrusion) throws SQLException {
        try (Connection plain = plain();
                Statement sql = plain.createStatement()) {
            for (String each : intrusion) {
                sql.execute(each);
            }
        }
        System.clearProperty(TRACE);
    }

    private Connection plain() throws SQLException {
        String file = book.folder.databaseFile().toAbsolutePath().toString().replace(".mv.db", "");
        return DriverManager.getConnection("jdbc:h2:file:" + file + ";IFEXISTS=TRUE");
    }

    /** What an intruder would have run; called by H2 through its name. */
    public static int leaveTrace() {
        System.setProperty(TRACE, "yes");
        return 1;
    }

    /** A trigger of the same kind. */
    public static final class Intruder implements Trigger {
        @Override
        public void init(Connection of, String schema, String name, String table, boolean before, int type) {
            leaveTrace();
        }

        @Override
        public void fire(Connection of, Object[] old, Object[] now) {
            leaveTrace();
        }
    }
}
