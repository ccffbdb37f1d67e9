package bedledger.ledger.store;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedledger.ledger.note.Checkpoints;
import bedledger.ledger.verify.Fault;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file of checkpoints cut, deleted, or no longer what was signed. */
class DamagedCheckpointsTest {
    @TempDir
    Path scratch;

    private PracticeBook book;
    private Path file;
    private byte[] whole;

    @BeforeEach
    void write() throws Exception {
        book = new PracticeBook(scratch).holding(9, 3);
        file = book.folder.checkpoints();
        whole = Files.readAllBytes(file);
    }

    @Test
    void goesOnAfterANoteThatWasCutShort() throws Exception {
        int lastNote = new String(whole, ISO_8859_1).lastIndexOf("\n\nexample.org") + 1;
        int cuts = 0;
        for (int length = lastNote; length < whole.length; length += 7) {
            Files.write(file, Arrays.copyOf(whole, length));
            seal();
            assertThat(Checkpoints.in(file).all()).as("cut to %s bytes", length).hasSize(3);
            assertThat(book.verify().disagreements())
                    .as("cut to %s bytes", length)
                    .isEmpty();
            cuts++;
        }
        assertThat(cuts).isGreaterThan(20);
    }

    @Test
    void startsAnewWhereTheFileWasDeletedButVerifySaysThatItIsGone() throws Exception {
        Files.delete(file);
        assertThat(book.verify().disagreements())
                .extracting(found -> found.fault())
                .contains(Fault.NO_CHECKPOINT);
        seal();
        assertThat(book.verify().checkpoints()).isEqualTo(1);
    }

    @Test
    void writesNothingWhileTheLastCheckpointCannotBeRead() throws Exception {
        byte[] damaged = whole.clone();
        int origin = new String(whole, ISO_8859_1).lastIndexOf("\nexample.org") + 1;
        damaged[origin + 20] = '\n';
        Files.write(file, damaged);
        byte[] journal = book.journal();
        assertThatThrownBy(() -> Ledger.open(book.folder))
                .isInstanceOf(BookUnusable.class)
                .hasMessageContaining("last checkpoint")
                .hasMessageContaining("nothing was written")
                .hasMessageContaining("bedledger verify");
        assertThat(book.folder.journal()).hasBinaryContent(journal);
        assertThat(BookReader.of(book.folder).doubt())
                .hasValueSatisfying(doubt -> assertThat(doubt).contains("cannot be read"));
        assertThat(BookReader.of(book.folder).entries()).hasSize(9);
    }

    @Test
    void signsTheSameLogOnlyOnce() throws Exception {
        seal();
        seal();
        assertThat(file).hasBinaryContent(whole);
    }

    private void seal() {
        try (Ledger ledger = Ledger.open(book.folder)) {
            ledger.seal(book.key);
        }
    }
}
