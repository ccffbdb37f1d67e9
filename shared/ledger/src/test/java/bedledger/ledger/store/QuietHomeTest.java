package bedledger.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process that writes through Axon leaves nothing in the user's home folder: no {@code .axoniq} with a machine id and a date.
 *
 * <p>In a process of its own, because the update checker of Axon switches itself off when it sees a test framework.
 */
class QuietHomeTest {
    @TempDir
    Path scratch;

    @Test
    void leavesNothingInTheHomeFolder() throws Exception {
        PracticeBook book = new PracticeBook(scratch).holding(1);
        Path home = Files.createDirectory(scratch.resolve("home"));
        List<String> command =
                JavaProcess.command(AxonWriter.class, book.folder.root().toString());
        command.add(1, "-Duser.home=" + home);
        Map<String, String> environment = Map.of(
                "HOME",
                home.toString(),
                "XDG_CONFIG_HOME",
                home.resolve(".config").toString());
        try (JavaProcess writer = JavaProcess.start(scratch, command, environment)) {
            assertThat(writer.await(60)).as(writer.err()).isZero();
            assertThat(writer.out()).isEqualTo("entry 2 in " + home + "\n");
            assertThat(writer.err()).isEmpty();
        }
        try (var left = Files.walk(home)) {
            assertThat(left).as("what is in the home folder").containsExactly(home);
        }
        assertThat(book.lines()).isEqualTo(2);
    }
}
