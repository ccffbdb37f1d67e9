package bedledger.ledger.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every byte of a small book changed, one at a time, and every place where its files can be cut. */
class EveryByteTest {

    @TempDir
    Path folder;

    private SampleBook book;

    @BeforeEach
    void write() {
        book = SampleBook.writtenTo(folder);
    }

    @ParameterizedTest(name = "every byte of the journal replaced, seed {0}")
    @ValueSource(longs = {1})
    void findsEveryChangedByteOfTheJournalAndNamesTheEntry(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        byte[] whole = SampleBook.bytes(book.journal);
        int changed = 0;
        int toTheEntry = 0;
        int entry = 1;
        for (int at = 0; at < whole.length; at++) {
            byte[] forged = whole.clone();
            forged[at] = (byte) (whole[at] + 1 + random.nextInt(255));
            SampleBook.holds(book.journal, forged);
            String what = "byte " + at + " of entry " + entry + ", now " + (forged[at] & 0xff);
            Disagreement first = book.verify().first().orElseThrow(() -> new AssertionError("not found: " + what));
            assertThat((long) entry).as(what + ": " + first).isBetween(first.first(), first.last());
            changed++;
            toTheEntry += first.first() == first.last() ? 1 : 0;
            entry += whole[at] == '\n' ? 1 : 0;
        }
        assertThat(changed).as("bytes changed").isEqualTo(whole.length).isGreaterThan(1500);
        assertThat(toTheEntry)
                .as("of %s changes, located to the very entry", changed)
                .isGreaterThan(changed / 2);
    }

    @Test
    void findsEveryChangedByteOfTheCheckpoints() {
        SplittableRandom random = new SplittableRandom(3);
        byte[] whole = SampleBook.bytes(book.checkpoints);
        int changed = 0;
        for (int at = 0; at < whole.length; at++) {
            byte[] forged = whole.clone();
            forged[at] = (byte) (whole[at] + 1 + random.nextInt(255));
            SampleBook.holds(book.checkpoints, forged);
            assertThat(book.verify().agrees())
                    .as("byte %s, now %s", at, forged[at] & 0xff)
                    .isFalse();
            changed++;
        }
        assertThat(changed).as("bytes changed").isEqualTo(whole.length).isGreaterThan(500);
    }

    @Test
    void findsEveryCutOfTheJournal() {
        byte[] whole = SampleBook.bytes(book.journal);
        int cuts = 0;
        for (int length = 0; length < whole.length; length++) {
            byte[] cut = Arrays.copyOf(whole, length);
            SampleBook.holds(book.journal, cut);
            Verdict verdict = book.verify();
            long left = verdict.entries();
            assertThat(verdict.first().map(Disagreement::first))
                    .as("cut to %s bytes", length)
                    .contains(left + 1);
            assertThat(verdict.disagreements())
                    .as("cut to %s bytes", length)
                    .anySatisfy(said -> assertThat(said.fault()).isEqualTo(Fault.LOG_CUT));
            cuts++;
        }
        assertThat(cuts).as("cuts").isGreaterThan(1500);
    }

    @Test
    void findsEveryCutOfTheCheckpointsOrCountsWhatIsNotSealed() {
        byte[] whole = SampleBook.bytes(book.checkpoints);
        int notSealed = 0;
        for (int length = 0; length < whole.length; length++) {
            SampleBook.holds(book.checkpoints, Arrays.copyOf(whole, length));
            Verdict verdict = book.verify();
            assertThat(verdict.notYetSealed()).as("cut to %s bytes", length).isPositive();
            notSealed += verdict.agrees() ? 1 : 0;
        }
        assertThat(notSealed)
                .as("cuts exactly behind a checkpoint, which look like an older file")
                .isEqualTo(2);
    }
}
