package bedledger.ledger.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedledger.ledger.json.CanonicalJson;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A journal whose end is missing: what a dead writer left is set aside, what was cut off is named, and nothing is written. */
class CutJournalTest {
    private static final int ENTRIES = 12;

    @TempDir
    Path scratch;

    private PracticeBook book;
    private byte[] whole;

    @BeforeEach
    void write() throws Exception {
        book = new PracticeBook(scratch).holding(ENTRIES);
        whole = book.journal();
    }

    @Test
    void setsATornLastLineAside() throws Exception {
        append("{\"act\":\"01900000-0000-7000-8000-0000");
        assertThat(book.open()).singleElement().asString().contains("36 bytes", "set-aside", "write it again");
        assertThat(book.folder.journal()).hasBinaryContent(whole);
        assertThat(book.verify().disagreements()).isEmpty();
        assertThat(book.writeMore(1)).isEmpty();
    }

    @Test
    void dropsABatchThatIsNotWhole() throws Exception {
        PracticeBook ahead = book.copy(scratch.resolve("ahead"));
        ahead.writeMore(3);
        byte[] batch = Arrays.copyOfRange(ahead.journal(), whole.length, ahead.journal().length);
        Path pending = Path.of(book.folder.journal() + ".pending");
        for (int written = 0; written < batch.length; written += 37) {
            append(new String(batch, 0, written, UTF_8));
            Files.write(pending, announcing(batch));
            assertThat(book.open()).hasSize(written == 0 ? 0 : 1);
            assertThat(book.folder.journal())
                    .as(written + " bytes of the batch")
                    .hasBinaryContent(whole);
            assertThat(pending).doesNotExist();
        }
        append(new String(batch, UTF_8));
        Files.write(pending, announcing(batch));
        assertThat(book.open())
                .as("a batch that is whole")
                .singleElement()
                .asString()
                .contains("was behind", "3 entries");
        assertThat(book.verify().disagreements()).isEmpty();
        assertThat(book.verify().rows()).isEqualTo(ENTRIES + 3);
    }

    private byte[] announcing(byte[] batch) throws Exception {
        return CanonicalJson.write(JsonNodeFactory.instance
                .objectNode()
                .put("bytes", batch.length)
                .put("lines", 3)
                .put("offset", whole.length)
                .put(
                        "sha256",
                        HexFormat.of()
                                .formatHex(MessageDigest.getInstance("SHA-256").digest(batch))));
    }

    @Test
    void namesAJournalThatIsBehindTheDatabaseAndWritesNothing() throws Exception {
        Files.delete(book.folder.checkpoints());
        List<String> rows = book.rows();
        int cuts = 0;
        for (int length : cutsAtAndWithinLines()) {
            Files.write(book.folder.journal(), Arrays.copyOf(whole, length));
            assertRefused("cut to " + length + " bytes", "shorter than the database knows", "entry " + ENTRIES);
            assertThat(book.rows()).isEqualTo(rows);
            cuts++;
        }
        assertThat(cuts).isEqualTo(3 * ENTRIES);
        Files.write(book.folder.journal(), whole);
        assertThat(book.open()).as("the journal brought back").isEmpty();
    }

    @Test
    void namesAJournalThatIsBehindTheCheckpointThoughTheDatabaseIsCutToo() throws Exception {
        PracticeBook earlier = new PracticeBook(scratch.resolve("earlier"));
        for (int length : cutsAtAndWithinLines()) {
            Files.write(book.folder.journal(), Arrays.copyOf(whole, length));
            Files.copy(
                    earlier.folder.databaseFile().toFile().exists() ? earlier.folder.databaseFile() : emptied(),
                    book.folder.databaseFile(),
                    java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            assertRefused("both cut, journal to " + length + " bytes", "The last checkpoint speaks of " + ENTRIES);
        }
    }

    private Path emptied() throws Exception {
        return Files.write(scratch.resolve("emptied"), new byte[0]);
    }

    @Test
    void namesABookThatWasPutBackToAnEarlierDay() throws Exception {
        PracticeBook earlier = book.copy(scratch.resolve("earlier"));
        book.writeMore(4);
        try (Ledger ledger = Ledger.open(book.folder)) {
            ledger.seal(book.key);
        }
        Files.copy(
                book.folder.checkpoints(),
                earlier.folder.checkpoints(),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        Map<String, String> before = earlier.record();
        assertThatThrownBy(() -> Ledger.open(earlier.folder))
                .isInstanceOf(Disagreement.class)
                .hasMessageContaining("speaks of 16 entries; the journal holds 12");
        assertThat(earlier.record()).isEqualTo(before);
        assertThat(earlier.rows()).hasSize(ENTRIES);
    }

    @Test
    void namesAJournalOfTheRightLengthThatIsAnother() throws Exception {
        byte[] other = new String(whole, UTF_8).replace("\"kim\"", "\"tim\"").getBytes(UTF_8);
        Files.write(book.folder.journal(), other);
        assertRefused("rewritten", "The last line of the journal is not entry " + ENTRIES);
        Files.delete(book.folder.databaseFile());
        Files.delete(book.folder.root().resolve("store"));
        assertRefused("rewritten, without a database", "not the ones that the last checkpoint was signed over");
    }

    @Test
    void looksAtTheCheckpointOnTheWayWhenMoreWasWrittenAfterIt() throws Exception {
        book.writeMore(2);
        byte[] other = book.journal();
        int at = new String(other, UTF_8).indexOf("\"kim\"") + 1;
        other[at] = 't';
        Files.write(book.folder.journal(), other);
        Files.delete(book.folder.databaseFile());
        assertRefused(
                "rewritten before the checkpoint", "The first " + ENTRIES + " entries of the book are not the ones");
    }

    @Test
    void namesLinesThatAreNoEntriesOrNotTheNext() throws Exception {
        String last = new String(whole, UTF_8).lines().toList().get(ENTRIES - 1);
        append(last + "\n");
        assertRefused("the last line twice", "from entry 12 to entry 12 at byte " + whole.length);
        Files.write(book.folder.journal(), whole);
        append(last.replace("\"number\":12", "\"number\":14") + "\n");
        assertRefused("a number left out", "from entry 12 to entry 14");
        Files.write(book.folder.journal(), whole);
        append("{\"number\":13}\n");
        assertRefused("no entry", "cannot be read at byte " + whole.length);
        Files.write(book.folder.journal(), whole);
        append("not json\n");
        assertRefused("no entry", "cannot be read at byte " + whole.length);
    }

    @Test
    void missesAJournalThatWasDeletedAndMakesNoEmptyOneInItsPlace() throws Exception {
        Files.delete(book.folder.journal());
        assertRefused("deleted", "is missing", "Take it from your backup");
        assertThatThrownBy(() -> Ledger.rebuild(book.folder)).hasMessageContaining("is missing");
        assertThatThrownBy(() -> BookReader.of(book.folder)).hasMessageContaining("is missing");
        assertThat(book.rows()).hasSize(ENTRIES);
    }

    @Test
    void doesNotRebuildTheDatabaseFromAJournalThatIsBehindIt() throws Exception {
        Files.delete(book.folder.checkpoints());
        Files.write(book.folder.journal(), new byte[0]);
        Map<String, String> before = book.record();
        assertThatThrownBy(() -> Ledger.rebuild(book.folder))
                .isInstanceOf(Disagreement.class)
                .hasMessageContaining("shorter than the database knows");
        assertThat(book.record()).isEqualTo(before);
        assertThat(book.rows()).hasSize(ENTRIES);
    }

    /** For each line: cut before it, in its middle, and without its line feed. */
    private List<Integer> cutsAtAndWithinLines() {
        List<Integer> cuts = new ArrayList<>();
        int start = 0;
        for (int at = 0; at < whole.length; at++) {
            if (whole[at] == '\n') {
                cuts.addAll(List.of(start, (start + at) / 2, at));
                start = at + 1;
            }
        }
        return cuts;
    }

    private void assertRefused(String what, String... says) throws Exception {
        Map<String, String> before = book.record();
        assertThatThrownBy(() -> Ledger.open(book.folder))
                .as(what)
                .isInstanceOf(BookUnusable.class)
                .hasMessageContainingAll(says)
                .hasMessageMatching("(?s).*[Nn]othing was written.*");
        assertThat(book.record()).as(what).isEqualTo(before);
    }

    private void append(String text) throws Exception {
        Files.writeString(book.folder.journal(), text, java.nio.file.StandardOpenOption.APPEND);
    }
}
