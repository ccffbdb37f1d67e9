package bedledger.cli.bench;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.Statement;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** The floor that a cold {@code did} is measured against: Picocli, and one insert into H2 through plain JDBC. */
@CommandLine.Command(name = "raw-insert", mixinStandardHelpOptions = true)
public final class RawInsert implements Callable<Integer> {
    @CommandLine.Parameters(paramLabel = "FILE")
    Path file = Path.of("");

    @CommandLine.Option(names = "--payload")
    String payload = "{}";

    public static void main(String[] args) {
        System.exit(new CommandLine(new RawInsert()).execute(args));
    }

    @Override
    public Integer call() throws Exception {
        try (Connection connection =
                        DriverManager.getConnection("jdbc:h2:file:" + file.toAbsolutePath() + ";WRITE_DELAY=0");
                Statement sql = connection.createStatement()) {
            connection.setAutoCommit(false);
            sql.execute("CREATE TABLE IF NOT EXISTS entry (number BIGINT GENERATED ALWAYS AS IDENTITY PRIMARY KEY,"
                    + " payload VARBINARY(1000000))");
            try (PreparedStatement insert = connection.prepareStatement("INSERT INTO entry (payload) VALUES (?)")) {
                insert.setBytes(1, payload.getBytes(java.nio.charset.StandardCharsets.UTF_8));
                insert.executeUpdate();
            }
            connection.commit();
        }
        return 0;
    }
}
