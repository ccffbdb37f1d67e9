package bedledger.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The database file stays near the size of what is in it, however it was filled. */
class SizeOnDiskTest {
    private static final double MOST = 6;
    /** A file below a megabyte is not worth compacting; closing adds a little. */
    private static final long LEFT_ALONE = (1L << 20) + (64L << 10);

    @TempDir
    Path scratch;

    @Test
    void staysSmallAfterManyCommitsOfOneProcess() throws Exception {
        PracticeBook book = new PracticeBook(scratch);
        long largest = 0;
        int compactions = 0;
        try (Ledger ledger = Ledger.open(book.folder)) {
            Pen pen = new Pen(ledger, new SplittableRandom(7), "many");
            for (int commit = 0; commit < 2000; commit++) {
                long before = Files.size(book.folder.databaseFile());
                pen.write(1);
                largest = Math.max(largest, before);
                compactions += Files.size(book.folder.databaseFile()) < before / 2 ? 1 : 0;
            }
            ledger.seal(book.key);
            assertThat(ledger.reports()).isEmpty();
            assertThat(ledger.size()).isEqualTo(2000);
        }
        System.out.println(
                "while 2,000 were written: at most " + largest + " bytes, compacted " + compactions + " times");
        assertThat(compactions).isPositive();
        assertThat(largest).isLessThan(33L << 20);
        assertThat(book.verify().disagreements()).isEmpty();
        assertSmall(book, "2,000 commits of one process");
    }

    @Test
    void staysSmallAfterLargeCommits() throws Exception {
        PracticeBook book = new PracticeBook(scratch);
        try (Ledger ledger = Ledger.open(book.folder)) {
            Pen pen = new Pen(ledger, new SplittableRandom(2), "large");
            for (int commit = 0; commit < 50; commit++) {
                pen.write(40);
            }
        }
        assertSmall(book, "50 commits of 40");
    }

    @Test
    void staysSmallAfterManyShortProcesses() throws Exception {
        PracticeBook book = new PracticeBook(scratch);
        for (int run = 0; run < 300; run++) {
            book.writeMore(1);
        }
        assertSmall(book, "300 times opened, written, closed");
    }

    private static void assertSmall(PracticeBook book, String how) throws Exception {
        long journal = Files.size(book.folder.journal());
        long database = Files.size(book.folder.databaseFile());
        String said = how + ": journal " + journal + " bytes, database " + database + ", "
                + Math.round(10.0 * database / journal) / 10.0 + " times";
        System.out.println(said);
        assertThat(database).as(said).isLessThan(Math.max((long) (MOST * journal), LEFT_ALONE));
    }
}
