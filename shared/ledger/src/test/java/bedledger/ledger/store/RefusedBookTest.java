package bedledger.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bedledger.ledger.journal.JournalFailed;
import bedledger.ledger.note.SigningKey;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Folders that cannot be written in as they are: each is told plainly, and nothing in it changes. */
class RefusedBookTest {
    @TempDir
    Path scratch;

    @Test
    void tellsASecondWriterOfTheFirst() throws Exception {
        PracticeBook book = new PracticeBook(scratch).holding(3);
        List<String> command =
                JavaProcess.command(OpensBook.class, book.folder.root().toString());
        try (Ledger first = Ledger.open(book.folder)) {
            assertThatThrownBy(() -> Ledger.open(book.folder))
                    .isInstanceOf(JournalFailed.class)
                    .hasMessageContaining("another program is writing to it")
                    .hasMessageContaining("Close the book there first");
            try (JavaProcess second = JavaProcess.start(scratch, command)) {
                assertThat(second.await(60)).isEqualTo(1);
                assertThat(second.out())
                        .contains("another program is writing to it")
                        .contains("Close the book there");
            }
            assertThat(first.size()).isEqualTo(3);
        }
        try (JavaProcess alone = JavaProcess.start(scratch, command)) {
            assertThat(alone.await(60)).as(alone.err()).isZero();
            assertThat(alone.out()).isEqualTo("wrote entry 4\n");
        }
    }

    @Test
    void writesNothingInAFolderThatIsReadOnly() throws Exception {
        PracticeBook book = new PracticeBook(scratch).holding(3);
        Map<String, String> before = book.record();
        List<String> command = new ArrayList<>(withoutRightsOverModes());
        command.addAll(JavaProcess.command(OpensBook.class, book.folder.root().toString()));
        Files.setPosixFilePermissions(book.folder.root(), PosixFilePermissions.fromString("r-xr-xr-x"));
        try (JavaProcess writer = JavaProcess.start(scratch, command)) {
            assertThat(writer.await(60)).as(writer.err()).isEqualTo(1);
            assertThat(writer.out()).contains("read-only for you").contains("Nothing was written");
        } finally {
            Files.setPosixFilePermissions(book.folder.root(), PosixFilePermissions.fromString("rwxr-xr-x"));
        }
        assertThat(book.record()).isEqualTo(before);
        book.writeMore(1);
        assertThat(book.verify().disagreements()).isEmpty();
    }

    /** Root may write anywhere, so a build that runs as root gives that right up for the process that is to be refused. */
    private static List<String> withoutRightsOverModes() throws Exception {
        boolean root = System.getProperty("user.name").equals("root");
        if (!root) {
            return List.of();
        }
        Path setpriv = Path.of("/usr/bin/setpriv");
        assumeTrue(
                Files.isExecutable(setpriv),
                "SKIPPED: the build runs as root, and there is no setpriv to give root's rights up");
        return List.of(setpriv.toString(), "--bounding-set", "-dac_override,-dac_read_search");
    }

    @Test
    void knowsAFolderThatIsNoBook() throws Exception {
        BookFolder none = new BookFolder(scratch.resolve("photos"));
        Files.createDirectories(none.root());
        Files.writeString(none.root().resolve("tarp.txt"), "silage film");
        assertThatThrownBy(() -> Ledger.open(none))
                .isInstanceOf(BookUnusable.class)
                .hasMessageContaining("is not a book")
                .hasMessageContaining("bedledger new");
        assertThatThrownBy(() -> BookReader.of(none)).hasMessageContaining("is not a book");
        assertThatThrownBy(() -> Ledger.rebuild(none)).hasMessageContaining("is not a book");
        try (var files = Files.list(none.root())) {
            assertThat(files).hasSize(1);
        }
    }

    @Test
    void knowsABookOfANewerProgram() throws Exception {
        PracticeBook book = new PracticeBook(scratch).holding(3);
        String marker = Files.readString(book.folder.marker());
        Files.writeString(book.folder.marker(), marker.replace("format 1", "format 2") + "what comes with it\n");
        Map<String, String> before = book.record();
        assertThatThrownBy(() -> Ledger.open(book.folder))
                .isInstanceOf(BookUnusable.class)
                .hasMessageContaining("format 2; this program knows 1")
                .hasMessageContaining("update, then try again");
        assertThatThrownBy(() -> BookReader.of(book.folder)).hasMessageContaining("format 2");
        assertThat(book.record()).isEqualTo(before);
    }

    @Test
    void knowsADamagedMarker() throws Exception {
        PracticeBook book = new PracticeBook(scratch).holding(3);
        String marker = Files.readString(book.folder.marker());
        List<String> damaged = List.of(
                "",
                "bedledger book\n",
                "bedledger book\nformat 1\n",
                "bedledger book\nformat 1\nke",
                marker.replace("format 1", "format one"),
                marker.replace("key ", "key"),
                marker.substring(0, marker.length() - 9),
                "\u0000\u00ff\u0001");
        for (String text : damaged) {
            Files.writeString(book.folder.marker(), text);
            assertThatThrownBy(() -> Ledger.open(book.folder))
                    .as(text)
                    .isInstanceOf(BookUnusable.class)
                    .hasMessageContaining("is damaged")
                    .hasMessageContaining("from your backup");
        }
        Files.writeString(book.folder.marker(), marker);
        assertThat(book.open()).isEmpty();
    }

    @Test
    void makesNoBookOverAnother() throws Exception {
        PracticeBook book = new PracticeBook(scratch).holding(3);
        Map<String, String> before = book.record();
        SigningKey other = SigningKey.generate("example.org/other");
        assertThatThrownBy(() -> Ledger.create(book.folder, other))
                .isInstanceOf(BookUnusable.class)
                .hasMessageContaining("There is a book in")
                .hasMessageContaining("nothing was changed");
        Files.delete(book.folder.marker());
        assertThatThrownBy(() -> Ledger.create(book.folder, other)).hasMessageContaining("There is a book in");
        before.remove(BookFolder.MARKER);
        assertThat(book.record()).isEqualTo(before);
    }

    @Test
    void makesABookWhereAnEarlierAttemptWasCutShort() throws Exception {
        BookFolder folder = new BookFolder(scratch.resolve("greenfold"));
        Files.createDirectories(folder.root());
        Files.createFile(folder.journal());
        Files.writeString(folder.root().resolve(BookFolder.MARKER + "-draft"), "bedledger bo");
        Ledger.create(folder, SigningKey.generate("example.org/greenfold"));
        try (Ledger ledger = Ledger.open(folder)) {
            assertThat(ledger.size()).isZero();
        }
    }

    @Test
    void refusesAFolderWhoseNameTheDatabaseWouldTakeForASetting() {
        BookFolder folder = new BookFolder(scratch.resolve("greenfold;INIT=DROP ALL OBJECTS"));
        assertThatThrownBy(() -> Ledger.create(folder, SigningKey.generate("example.org/greenfold")))
                .isInstanceOf(BookUnusable.class)
                .hasMessageContaining("semicolon");
        assertThat(folder.root()).doesNotExist();
    }
}
