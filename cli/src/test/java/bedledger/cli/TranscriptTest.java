package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every conversation in {@code transcripts} goes as it was put down.
 *
 * <p>Where the program is meant to say something else from now on, {@code -Dtranscripts=write} puts them down anew; read the difference
 * before it is committed.
 */
class TranscriptTest {
    private static final boolean WRITE = "write".equals(System.getProperty("transcripts"));

    static Stream<String> transcripts() throws IOException, URISyntaxException {
        URL folder = Objects.requireNonNull(TranscriptTest.class.getResource("/transcripts"));
        try (Stream<Path> files = Files.list(Path.of(folder.toURI()))) {
            return files.map(file -> Objects.requireNonNull(file.getFileName()).toString()).sorted().toList().stream();
        }
    }

    private static Path source(String name) {
        return Path.of("src/test/resources/transcripts").resolve(name);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("transcripts")
    void goesAsItWasPutDown(String name, @TempDir Path folder) throws IOException {
        String written = Files.readString(source(name));
        String held = Transcript.read(written.lines().toList()).held(new Desk(folder));
        if (WRITE) {
            Files.writeString(source(name), held);
        }
        assertThat(held).isEqualTo(Files.readString(source(name)));
    }

    @Test
    void everyCommandIsHeldInSomeTranscript() throws IOException, URISyntaxException {
        StringBuilder all = new StringBuilder();
        for (String name : transcripts().toList()) {
            all.append(Files.readString(source(name)));
        }
        Commands.ALL.forEach(command -> assertThat(all).contains("$ bedledger " + command.name() + " "));
    }

    @Test
    void aTranscriptThatSaysSomethingElseIsFound(@TempDir Path folder) {
        Transcript transcript =
                Transcript.read("$ bedledger --version\nbedledger 9.9\n".lines().toList());
        assertThat(transcript.held(new Desk(folder))).isNotEqualTo("$ bedledger --version\nbedledger 9.9\n");
    }
}
