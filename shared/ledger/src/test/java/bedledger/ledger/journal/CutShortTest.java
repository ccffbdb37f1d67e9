package bedledger.ledger.journal;

import static bedledger.ledger.journal.Scratch.lines;
import static bedledger.ledger.journal.Scratch.read;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A process that dies inside a batch of three lines, at every byte where it can. */
class CutShortTest {

    private static final String BEFORE = "{\"n\":1}\n";
    private static final String BATCH = "{\"n\":2}\n{\"n\":3}\n{\"n\":4}\n";

    @TempDir
    Path folder;

    static IntStream bytesWritten() {
        return IntStream.range(0, BATCH.length());
    }

    @ParameterizedTest(name = "{0} bytes of the batch reached the disk")
    @MethodSource("bytesWritten")
    void dropsABatchThatIsNotWhole(int written) throws IOException {
        Path path = Scratch.holding(folder, BEFORE + BATCH.substring(0, written));
        pending().write(path);

        assertThat(read(path)).containsExactly("{\"n\":1}");
        try (Journal journal = Journal.open(path)) {
            assertThat(journal.recovery().bytesSetAside()).isEqualTo(written);
            assertThat(journal.length()).isEqualTo(BEFORE.length());
            journal.append(lines("{\"n\":2}"));
        }
        assertThat(path).hasBinaryContent((BEFORE + "{\"n\":2}\n").getBytes(UTF_8));
        assertThat(PendingBatch.pathFor(path)).doesNotExist();
    }

    @Test
    void keepsABatchThatIsWholeThoughItsSideFileIsStillThere() throws IOException {
        Path path = Scratch.holding(folder, BEFORE + BATCH);
        pending().write(path);

        assertThat(read(path)).hasSize(4);
        try (Journal journal = Journal.open(path)) {
            assertThat(journal.recovery()).isEqualTo(Recovery.nothing());
        }
        assertThat(path).hasBinaryContent((BEFORE + BATCH).getBytes(UTF_8));
        assertThat(PendingBatch.pathFor(path)).doesNotExist();
    }

    @Test
    void keepsLinesWrittenAfterAWholeBatchWhoseSideFileWasLeftBehind() throws IOException {
        Path path = Scratch.holding(folder, BEFORE + BATCH + "{\"n\":5}\n{\"n\"");
        pending().write(path);

        try (Journal journal = Journal.open(path)) {
            assertThat(journal.recovery().bytesSetAside()).isEqualTo(4);
        }
        assertThat(path).hasBinaryContent((BEFORE + BATCH + "{\"n\":5}\n").getBytes(UTF_8));
    }

    @Test
    void dropsABatchOfTheRightLengthWithPagesThatNeverReachedTheDisk() throws IOException {
        Path path = Scratch.holding(folder, BEFORE + BATCH.replace("3", "\0"));
        pending().write(path);

        try (Journal journal = Journal.open(path)) {
            assertThat(journal.recovery().bytesSetAside()).isEqualTo(BATCH.length());
        }
        assertThat(path).hasBinaryContent(BEFORE.getBytes(UTF_8));
    }

    @Test
    void opensAfterDyingBeforeTheSideFileWasWhole() throws IOException {
        Path path = Scratch.holding(folder, BEFORE);
        Files.writeString(folder.resolve("journal.pending-draft"), "{\"byt");
        try (Journal journal = Journal.open(path)) {
            journal.append(lines("{\"n\":2}", "{\"n\":3}"));
        }
        assertThat(read(path)).hasSize(3);
    }

    @Test
    void refusesToGuessWhereTheSideFileIsDamaged() throws IOException {
        Path path = Scratch.holding(folder, BEFORE + BATCH);
        for (String damaged : new String[] {"", "{}", "{\"offset\":8", "[1]"}) {
            Files.writeString(PendingBatch.pathFor(path), damaged);
            assertThatThrownBy(() -> Journal.open(path))
                    .as(damaged)
                    .isInstanceOf(JournalFailed.class)
                    .hasMessageContaining("damaged");
            assertThat(path).hasBinaryContent((BEFORE + BATCH).getBytes(UTF_8));
        }
    }

    private static PendingBatch pending() {
        return PendingBatch.of(BEFORE.length(), BATCH.getBytes(UTF_8), 3);
    }
}
