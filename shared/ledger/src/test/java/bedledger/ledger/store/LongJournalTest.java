package bedledger.ledger.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A journal of more lines than are read in one go: they keep their order, and the first bad one is the one that is named. */
class LongJournalTest {
    private static final int ENTRIES = 6;
    private static final int TIMES = 2000;

    @TempDir
    Path scratch;

    private PracticeBook book;
    private List<String> lines;

    @BeforeEach
    void write() throws Exception {
        book = new PracticeBook(scratch).holding(ENTRIES);
        lines = Files.readAllLines(book.folder.journal(), UTF_8);
        for (int times = 1; times < TIMES; times++) {
            append(String.join("\n", lines) + "\n");
        }
    }

    @Test
    void readsTheLinesInTheirOrder() {
        BookReader reader = BookReader.of(book.folder);

        assertThat(reader.doubt()).isEmpty();
        assertThat(reader.entries()).hasSize(ENTRIES * TIMES);
        for (int at = 0; at < ENTRIES * TIMES; at++) {
            assertThat(reader.entries().get(at).number()).isEqualTo(at % ENTRIES + 1L);
        }
    }

    @Test
    void namesTheFirstLineThatCannotBeRead() throws Exception {
        append("{}\n" + lines.get(1) + "\nnothing\n");

        assertThatThrownBy(() -> BookReader.of(book.folder))
                .isInstanceOf(BookUnusable.class)
                .hasMessageContaining("at line " + (ENTRIES * TIMES + 1) + ":");
    }

    private void append(String text) throws Exception {
        Files.writeString(book.folder.journal(), text, UTF_8, StandardOpenOption.APPEND);
    }
}
