package bedledger.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Writers that are not given room: the shell's {@code ulimit -f} refuses every file more than so many bytes, as a full disk does, in
 * a process of its own and without special rights.
 */
class FullDiskTest {
    private static final int KIBI = 1024;

    @TempDir
    Path scratch;

    private PracticeBook book;

    @BeforeEach
    void requireAShell() {
        assumeTrue(
                Files.isExecutable(Path.of("/bin/bash")), "SKIPPED: there is no bash to limit the size of files with");
        book = new PracticeBook(scratch).holding(60);
    }

    @Test
    void writesNothingWhenTheJournalFindsNoRoom() throws Exception {
        // In a book of this size the database is smaller than the journal, so it is the journal that comes to the
        // limit.
        try (Ledger ledger = Ledger.open(book.folder)) {
            Pen pen = new Pen(ledger, new SplittableRandom(2), "large");
            for (int commit = 0; commit < 50; commit++) {
                pen.write(40);
            }
        }
        long journal = Files.size(book.folder.journal());
        assertThat(Files.size(book.folder.databaseFile())).isLessThan(journal / 4 * 3);
        byte[] before = book.journal();
        try (JavaProcess writer = limited(journal / KIBI + 1, "40", "1")) {
            assertThat(writer.await(60)).as(writer.out() + writer.err()).isEqualTo(1);
            assertThat(writer.out()).contains("File too large").contains("nothing of this was recorded");
        }
        assertThat(book.folder.journal()).as("the journal").hasBinaryContent(before);
        assertUsableAgain(60 + 50 * 40);
    }

    @Test
    void saysWhatIsRecordedWhenOnlyTheDatabaseFindsNoRoom() throws Exception {
        long database = Files.size(book.folder.databaseFile());
        long room = database / KIBI + 16;
        try (JavaProcess writer = limited(room, "3", "400")) {
            assertThat(writer.await(60)).as(writer.out() + writer.err()).isEqualTo(1);
            List<String> said = writer.out().lines().toList();
            long acknowledged =
                    said.stream().filter(line -> line.startsWith("wrote entry")).count();
            String last = said.get(said.size() - 1);
            System.out.println("database without room, after " + acknowledged + " commits of 3: " + last);
            // Either way it must say which: a commit whose lines are forced is recorded, any other is not.
            boolean recorded = last.contains("What you wrote is recorded; do not write it again");
            assertThat(recorded || last.contains("othing was written") || last.contains("nothing of this was recorded"))
                    .as(last)
                    .isTrue();
            assertThat(book.lines()).isEqualTo(60 + 3 * (acknowledged + (recorded ? 1 : 0)));
            assertUsableAgain(book.lines());
        }
    }

    /** A database that finds no room is not a damaged one: setting it aside and making it anew would need the room twice. */
    @Test
    void leavesTheDatabaseWhereItIsWhenThereIsNoRoomAtAll() throws Exception {
        leaveTheDatabaseAsAKillDoes();
        byte[] journal = book.journal();
        try (JavaProcess writer = limited(1, "1", "1")) {
            assertThat(writer.await(60)).as(writer.out() + writer.err()).isEqualTo(1);
            System.out.println("no room at all: " + writer.out().strip());
            assertThat(writer.out()).contains("File too large");
        }
        assertThat(book.folder.root().resolve("set-aside")).doesNotExist();
        assertThat(book.folder.journal()).hasBinaryContent(journal);
        assertThat(book.open()).as("what the next opening put right").isEmpty();
        assertUsableAgain(61);
    }

    private void leaveTheDatabaseAsAKillDoes() throws Exception {
        byte[] open;
        try (Ledger ledger = Ledger.open(book.folder)) {
            new Pen(ledger, new SplittableRandom(3), "killed").write(1);
            open = Files.readAllBytes(book.folder.databaseFile());
        }
        Files.write(book.folder.databaseFile(), open);
    }

    @Test
    void makesNoHalfBookWhenThereIsNoRoomForOne() throws Exception {
        Path root = scratch.resolve("fresh");
        List<String> command = JavaProcess.command(MakesBook.class, root.toString());
        try (JavaProcess writer = JavaProcess.start(scratch, withLimit(0, command))) {
            assertThat(writer.await(60)).as(writer.out() + writer.err()).isNotZero();
            assertThat(root.resolve(BookFolder.MARKER)).doesNotExist();
        }
        try (JavaProcess writer = JavaProcess.start(scratch, command)) {
            assertThat(writer.await(60)).as(writer.err()).isZero();
        }
    }

    private void assertUsableAgain(long entries) throws Exception {
        book.writeMore(1);
        assertThat(book.lines()).isEqualTo(entries + 1);
        assertThat(book.verify().disagreements()).isEmpty();
        assertThat(book.verify().rows()).isEqualTo(entries + 1);
    }

    private JavaProcess limited(long kibibytes, String... arguments) throws Exception {
        List<String> all = new ArrayList<>(List.of(book.folder.root().toString()));
        all.addAll(Arrays.asList(arguments));
        return JavaProcess.start(
                scratch, withLimit(kibibytes, JavaProcess.command(OpensBook.class, all.toArray(String[]::new))));
    }

    private static List<String> withLimit(long kibibytes, List<String> command) {
        List<String> limited =
                new ArrayList<>(List.of("/bin/bash", "-c", "ulimit -f " + kibibytes + "; exec \"$@\"", "bash"));
        limited.addAll(command);
        return limited;
    }
}
