package bedledger.cli.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The packets in {@code audit-samples} are those that the program makes today.
 *
 * <p>Compared are the files in each packet, byte for byte: how they are deflated may differ with the zlib of a Java.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AuditSamplesTest {
    private static final Path COMMITTED = Path.of("..", "audit-samples");
    private static final boolean WRITE = "write".equals(System.getProperty("samples"));
    private static final int LARGEST = 320_000;

    private final Path made;

    AuditSamplesTest(@TempDir Path folder) throws IOException {
        made = Files.createDirectories(folder.resolve("made"));
        new AuditSamples(folder.resolve("scratch")).into(made);
    }

    @BeforeAll
    void writeThemIfAsked() throws IOException {
        if (!WRITE) {
            return;
        }
        try (Stream<Path> files = Files.list(made)) {
            for (Path file : files.toList()) {
                Path to = COMMITTED.resolve(file.getFileName().toString());
                Files.deleteIfExists(to);
                Files.copy(file, to);
            }
        }
    }

    static List<String> samples() {
        return AuditSamples.names();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("samples")
    void isMadeAsCommitted(String name) throws IOException {
        Path committed = COMMITTED.resolve(name + ".zip");
        Repacked there = Repacked.of(committed);
        Repacked now = Repacked.of(made.resolve(name + ".zip"));
        assertThat(List.copyOf(now.members().keySet()))
                .isEqualTo(List.copyOf(there.members().keySet()));
        now.members()
                .forEach((member, bytes) ->
                        assertThat(there.members().get(member)).as(member).isEqualTo(bytes));
        assertThat(Files.size(committed)).isLessThan(LARGEST);
        assertThat(made.resolve(name + ".md")).hasSameTextualContentAs(COMMITTED.resolve(name + ".md"));
    }

    @Test
    void theKeptCheckpointAndTheKeyAreAsCommitted() {
        for (String name : List.of(AuditSamples.KEPT, AuditSamples.FARM_KEY)) {
            assertThat(made.resolve(name)).hasSameBinaryContentAs(COMMITTED.resolve(name));
        }
    }

    @Test
    void nothingElseLiesThere() {
        Set<String> expected = new TreeSet<>(Set.of("README.md"));
        expected.addAll(names(made));
        assertThat(names(COMMITTED)).isEqualTo(expected);
    }

    @Test
    void theFirstPageListsEverySample() throws IOException {
        String readme = Files.readString(COMMITTED.resolve("README.md"));
        AuditSamples.names().forEach(name -> assertThat(readme).contains("(" + name + ".md)"));
    }

    private static Set<String> names(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
