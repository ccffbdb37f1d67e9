package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AttachTest {
    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void aBook() {
        desk = new Desk(folder);
        desk.run("new farm --farm \"Ash Corner\" --time-zone America/New_York").done();
        desk.lay("receipt.txt", "two bags of seed");
        desk.run("attach 1 receipt.txt --book farm").done();
    }

    private Path kept() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("farm/documents"))) {
            List<Path> all = files.toList();
            assertThat(all).hasSize(1);
            return all.get(0);
        }
    }

    @Test
    void keepsTheDocumentUnderItsHash() throws IOException {
        assertThat(kept()).hasContent("two bags of seed");
        assertThat(desk.run("verify --book farm").done().out()).contains("Everything agrees");
    }

    @Test
    void findsADocumentThatWasExchanged() throws IOException {
        Files.writeString(kept(), "three bags of seed");
        assertThat(desk.run("verify --book farm").out()).contains("DOES NOT AGREE, first at entry 2");
    }

    @Test
    void findsADocumentThatIsGone() throws IOException {
        Files.delete(kept());
        assertThat(desk.run("verify --book farm").out()).contains("no file");
    }
}
