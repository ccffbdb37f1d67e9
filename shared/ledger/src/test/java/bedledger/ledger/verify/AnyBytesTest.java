package bedledger.ledger.verify;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever the files hold, a verdict comes back. */
class AnyBytesTest {

    private static final int FILES = 100;

    @TempDir
    Path folder;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 5);
    }

    @ParameterizedTest(name = "100 books of rubbish, seed {0}")
    @MethodSource("seeds")
    void answersForRubbish(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        SampleBook book = SampleBook.writtenTo(folder);
        byte[] journal = SampleBook.bytes(book.journal);
        byte[] checkpoints = SampleBook.bytes(book.checkpoints);
        int disagreed = 0;
        for (int i = 0; i < FILES; i++) {
            SampleBook.holds(book.journal, scrambled(journal, random));
            SampleBook.holds(book.checkpoints, scrambled(checkpoints, random));
            String against = new String(scrambled(checkpoints, random), ISO_8859_1);
            Verdict verdict = Verifier.verify(book.evidence().against(against));
            disagreed += verdict.agrees() ? 0 : 1;
        }
        assertThat(disagreed).as("books that disagreed").isEqualTo(FILES);
    }

    /** Pieces of the real file, random bytes and random text, put together at random. */
    private static byte[] scrambled(byte[] real, SplittableRandom random) {
        StringBuilder bytes = new StringBuilder();
        String text = new String(real, ISO_8859_1);
        for (int pieces = random.nextInt(1, 8); pieces > 0; pieces--) {
            int from = random.nextInt(text.length());
            switch (random.nextInt(4)) {
                case 0 -> bytes.append(text, from, random.nextInt(from, text.length() + 1));
                case 1 -> random.ints(random.nextInt(50), 0, 256).forEach(b -> bytes.append((char) b));
                case 2 -> bytes.append("\n".repeat(random.nextInt(4)));
                default -> random.ints(random.nextInt(50), 0x20, 0x7f).forEach(b -> bytes.append((char) b));
            }
        }
        return bytes.append('?').toString().getBytes(ISO_8859_1);
    }

    @Test
    void answersForDeepAndHugeJson() throws IOException {
        SampleBook book = SampleBook.writtenTo(folder);
        for (String line : List.of(
                "[".repeat(1_000_000),
                "{\"a\":".repeat(200_000),
                "9".repeat(1_000_000),
                "\"" + "x".repeat(5_000_000) + "\"")) {
            Files.writeString(book.journal, line + "\n");
            assertThat(book.verify().agrees()).isFalse();
        }
    }

    @Test
    void answersWhenFilesAreMissingOrFolders() throws IOException {
        SampleBook book = SampleBook.writtenTo(folder);
        Path none = folder.resolve("none");
        Path directory = Files.createDirectory(folder.resolve("directory"));
        for (Path odd : List.of(none, directory)) {
            Verdict withoutJournal = Verifier.verify(Evidence.of(odd, book.checkpoints, SampleBook.vkey()));
            Verdict withoutCheckpoints = Verifier.verify(Evidence.of(book.journal, odd, SampleBook.vkey()));
            for (Verdict verdict : List.of(withoutJournal, withoutCheckpoints)) {
                assertThat(verdict.disagreements())
                        .extracting(Disagreement::fault)
                        .contains(Fault.UNREADABLE);
            }
        }
    }

    @Test
    void answersForAKeyThatIsNone() {
        SampleBook book = SampleBook.writtenTo(folder);
        for (String key : List.of("", "+", "++", "a+b+c", "a+00000000+AQ==", SampleBook.vkey() + " ")) {
            Verdict verdict = Verifier.verify(Evidence.of(book.journal, book.checkpoints, key));
            assertThat(verdict.disagreements()).extracting(Disagreement::fault).containsExactly(Fault.KEY_UNREADABLE);
        }
    }

    @Test
    void keepsTheFirstHundredOfMany() {
        SampleBook book = SampleBook.writtenTo(folder);
        SampleBook.holds(book.journal, "x\n".repeat(5_000).getBytes(UTF_8));
        Verdict verdict = book.verify();
        assertThat(verdict.disagreements()).hasSize(Verdict.MOST_LISTED);
        assertThat(verdict.disagreements().size() + verdict.notListed()).isEqualTo(5_001);
        assertThat(verdict.first().orElseThrow().first()).isEqualTo(1);
    }
}
