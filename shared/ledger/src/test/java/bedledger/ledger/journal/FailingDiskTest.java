package bedledger.ledger.journal;

import static bedledger.ledger.journal.Scratch.lines;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FailingDiskTest {

    private static final List<byte[]> BATCH = lines("{\"n\":2}", "{\"n\":3}");

    @TempDir
    Path folder;

    private Path path;
    private FullDisk disk;
    private Journal journal;

    @BeforeEach
    void openWithOneLine() throws IOException {
        path = folder.resolve("journal");
        disk = new FullDisk(ChannelFile.forWriting(path));
        journal = new Journal(path, disk, WriterLock.take(path));
        journal.append(lines("{\"n\":1}"));
    }

    @ParameterizedTest(name = "room for {0} of 16 bytes")
    @ValueSource(longs = {0, 1, 7, 8, 9, 15})
    void putsTheJournalBackWhenTheDiskIsFull(long room) {
        disk.room = room;
        assertThatThrownBy(() -> journal.append(BATCH))
                .isInstanceOf(JournalFailed.class)
                .hasMessageContaining(path.toString())
                .hasMessageContaining("No space left on device")
                .hasMessageContaining("put back to its 8 bytes");
        assertThat(path).hasBinaryContent("{\"n\":1}\n".getBytes(UTF_8));
        assertThat(PendingBatch.pathFor(path)).doesNotExist();

        disk.room = Long.MAX_VALUE;
        journal.append(BATCH);
        assertThat(path).hasBinaryContent("{\"n\":1}\n{\"n\":2}\n{\"n\":3}\n".getBytes(UTF_8));
        journal.close();
    }

    @Test
    void saysSoWhenItCannotEvenPutTheJournalBackAndHealsOnOpening() {
        disk.room = 10;
        disk.refusesToTruncate = true;
        assertThatThrownBy(() -> journal.append(BATCH))
                .isInstanceOf(JournalFailed.class)
                .hasMessageContaining("could not be put back to its 8 bytes either");
        assertThatThrownBy(() -> journal.append(BATCH))
                .isInstanceOf(JournalFailed.class)
                .hasMessageContaining("open it again");
        journal.close();

        try (Journal again = Journal.open(path)) {
            assertThat(again.recovery().bytesSetAside()).isEqualTo(10);
            assertThat(again.length()).isEqualTo(8);
        }
    }

    @Test
    void doesNotAcknowledgeWhatTheDiskDidNotConfirm() {
        disk.refusesToForce = true;
        assertThatThrownBy(() -> journal.append(lines("{\"n\":2}")))
                .isInstanceOf(JournalFailed.class)
                .hasMessageContaining("Input/output error")
                .hasMessageContaining("Nothing was acknowledged");
        assertThat(journal.length()).isEqualTo(8);
        disk.refusesToForce = false;
        assertThatThrownBy(() -> journal.append(lines("{\"n\":2}")))
                .isInstanceOf(JournalFailed.class)
                .hasMessageContaining("in doubt");
        journal.close();
    }
}
