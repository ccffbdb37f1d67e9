package bedledger.ledger.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The database file cut, emptied, deleted, overwritten: the next opening makes it good from the journal and says so. */
class DamagedDatabaseTest {
    private static final int ENTRIES = 200;
    private static final int BLOCK = 4096;

    @TempDir
    Path scratch;

    private PracticeBook book;
    private Path file;
    private byte[] whole;
    private byte[] journal;

    @BeforeEach
    void write() throws Exception {
        book = new PracticeBook(scratch).holding(ENTRIES);
        file = book.folder.databaseFile();
        whole = Files.readAllBytes(file);
        journal = book.journal();
    }

    @Test
    void healsAfterEveryCut() throws Exception {
        Map<String, Integer> howItWas = new TreeMap<>();
        for (int size = 0; size < whole.length; size += BLOCK) {
            Files.write(file, java.util.Arrays.copyOf(whole, size));
            List<String> reports = book.open();
            assertHealed("cut to " + size + " of " + whole.length + " bytes");
            howItWas.merge(
                    reports.isEmpty() ? "whole" : reports.get(0).replaceFirst("( \\(|;).*", ""), 1, Integer::sum);
        }
        System.out.println("database cut at every block: " + howItWas);
        // H2 opens some of these without an error and without rows: that is the case that matters most.
        assertThat(howItWas).containsKeys("The database had lost entries", "The database could not be read");
    }

    @Test
    void healsWhenItIsEmptiedOrDeleted() throws Exception {
        Files.write(file, new byte[0]);
        assertThat(book.open()).singleElement().asString().contains("lost entries", ENTRIES + " entries");
        assertHealed("emptied");
        Files.delete(file);
        assertThat(book.open()).singleElement().asString().contains("was missing", ENTRIES + " entries");
        assertHealed("deleted");
        Files.delete(file);
        Files.delete(file.getParent());
        assertThat(book.open()).singleElement().asString().contains("was missing");
        assertHealed("deleted with its folder");
    }

    @ParameterizedTest(name = "overwritten with random bytes, seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void healsWhenItIsOverwritten(long seed) throws Exception {
        byte[] random = new byte[whole.length];
        new java.util.Random(seed).nextBytes(random);
        Files.write(file, random);
        assertThat(book.open()).singleElement().asString().contains("could not be read");
        assertHealed("overwritten");
        assertThat(book.folder.root().resolve("set-aside").resolve("book.mv.db"))
                .as("what was set aside")
                .hasBinaryContent(random);
    }

    @ParameterizedTest(name = "one byte changed at 40 places, seed {0}")
    @ValueSource(longs = 5)
    void healsOrIsFoundByVerifyWhenAByteIsChanged(long seed) throws Exception {
        SplittableRandom random = new SplittableRandom(seed);
        Map<String, Integer> howItWas = new TreeMap<>();
        for (int change = 0; change < 40; change++) {
            byte[] changed = whole.clone();
            int at = random.nextInt(whole.length);
            changed[at] ^= (byte) (1 << random.nextInt(8));
            Files.write(file, changed);
            PracticeBook looked = book.copy(scratch.resolve("looked-" + change));
            PracticeBook opened = book.copy(scratch.resolve("opened-" + change));
            String how = looked.verify().agrees() ? "of no consequence" : "found by verify";
            howItWas.merge(how + ", " + afterOpening(opened, "byte " + at), 1, Integer::sum);
            assertThat(opened.folder.journal()).hasBinaryContent(journal);
        }
        System.out.println("database with one bit changed: " + howItWas);
        assertThat(howItWas).containsKeys("found by verify, opened", "found by verify, healed on opening");
    }

    /** Damage that H2 lets pass changes an answer at most until the next verify; the journal stays as it is, and rebuild mends all. */
    private static String afterOpening(PracticeBook damaged, String what) {
        String how;
        try {
            how = damaged.open().isEmpty() ? "opened" : "healed on opening";
        } catch (BookUnusable refused) {
            how = "refused on opening";
            assertThat(refused).hasMessageContaining("othing was written").hasMessageContaining("bedledger rebuild");
        }
        Ledger.rebuild(damaged.folder);
        assertThat(damaged.verify().disagreements()).as(what).isEmpty();
        return how;
    }

    @Test
    void saysSoWhenAnotherProgramHasTheDatabaseOpen() throws Exception {
        List<String> command = JavaProcess.command(HoldsDatabase.class, file.toString());
        try (JavaProcess other = JavaProcess.start(scratch, command)) {
            other.awaitWords(1);
            assertThatThrownBy(() -> Ledger.open(book.folder))
                    .isInstanceOf(BookUnusable.class)
                    .hasMessageContaining("open in another program")
                    .hasMessageContaining("Nothing was written");
            assertThat(book.verify().first().orElseThrow().found()).contains("cannot be read", "in use");
        }
        assertThat(file).hasBinaryContent(whole);
    }

    @Test
    void rebuildsTheDatabaseWhenAsked() throws Exception {
        assertThat(Ledger.rebuild(book.folder)).singleElement().asString().contains("as asked", ENTRIES + " entries");
        assertHealed("rebuilt");
    }

    @Test
    void saysWhenTheDatabaseThatItSetsAsideHeldOtherEntriesThanTheJournal() throws Exception {
        Files.delete(book.folder.checkpoints());
        String altered = new String(journal, UTF_8);
        String other = altered.replaceFirst("\"doneOn\":\"20(\\d\\d)", "\"doneOn\":\"19$1");
        assertThat(other).isNotEqualTo(altered).hasSameSizeAs(altered);
        Files.writeString(book.folder.journal(), other);
        assertThat(Ledger.rebuild(book.folder))
                .anySatisfy(said -> assertThat(said)
                        .startsWith("The old database held other entries than the journal: its first " + ENTRIES));
    }

    private void assertHealed(String what) throws Exception {
        assertThat(book.folder.journal()).as(what).hasBinaryContent(journal);
        assertThat(book.verify().disagreements()).as(what).isEmpty();
        assertThat(book.verify().rows()).as(what).isEqualTo(ENTRIES);
        assertThat(book.open()).as(what + ", opened again").isEmpty();
    }
}
