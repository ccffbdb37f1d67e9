package bedledger.ledger.journal;

import static bedledger.ledger.journal.Scratch.lines;
import static bedledger.ledger.journal.Scratch.read;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalTest {

    @TempDir
    Path folder;

    @Test
    void keepsLinesInTheOrderWritten() throws IOException {
        Path path = folder.resolve("journal");
        try (Journal journal = Journal.open(path)) {
            journal.append(lines("{\"a\":1}"));
            journal.append(lines("{\"b\":2}", "{\"c\":3}"));
            assertThat(journal.length()).isEqualTo(24);
            assertThat(journal.lastLine())
                    .hasValueSatisfying(last -> assertThat(last).asString(UTF_8).isEqualTo("{\"c\":3}"));
            assertThat(journal.recovery().report()).isEmpty();
        }
        assertThat(path).hasBinaryContent("{\"a\":1}\n{\"b\":2}\n{\"c\":3}\n".getBytes(UTF_8));
        assertThat(PendingBatch.pathFor(path)).doesNotExist();
    }

    @Test
    void goesOnFromAnOffset() {
        try (Journal journal = Journal.open(folder.resolve("journal"))) {
            journal.append(lines("one"));
            long second = journal.length();
            journal.append(lines("two", "three"));
            List<String> seen = new ArrayList<>();
            Reading reading = journal.lines(second, (offset, line) -> seen.add(offset + " " + new String(line, UTF_8)));
            assertThat(seen).containsExactly("4 two", "8 three");
            assertThat(reading).isEqualTo(new Reading(2, 14, 0));
        }
    }

    @Test
    void opensEmptyAndHasNoLastLine() {
        try (Journal journal = Journal.open(folder.resolve("journal"))) {
            assertThat(journal.length()).isZero();
            assertThat(journal.lastLine()).isEmpty();
        }
    }

    @Test
    void setsAnUnfinishedLineAsideAndReportsIt() throws IOException {
        Path path = Scratch.holding(folder, "one\ntwo\nthr");
        try (Journal journal = Journal.open(path)) {
            assertThat(journal.recovery().bytesSetAside()).isEqualTo(3);
            assertThat(journal.recovery().setAsideTo().orElseThrow()).hasBinaryContent("thr".getBytes(UTF_8));
            assertThat(journal.recovery().report().orElseThrow()).contains("3 bytes", "set-aside", "write it again");
            journal.append(lines("four"));
        }
        assertThat(path).hasBinaryContent("one\ntwo\nfour\n".getBytes(UTF_8));
    }

    @Test
    void neverOverwritesWhatWasSetAsideBefore() throws IOException {
        Path path = Scratch.holding(folder, "one\nx");
        Journal.open(path).close();
        Files.writeString(path, "one\nyy");
        Journal.open(path).close();
        try (var kept = Files.list(folder.resolve("set-aside"))) {
            assertThat(kept.map(Path::getFileName).map(Path::toString))
                    .containsExactlyInAnyOrder("journal-at-4", "journal-at-4-2");
        }
    }

    @Test
    void passesAnUnfinishedLineOverWhenReadingOnlyAndChangesNothing() throws IOException {
        Path path = Scratch.holding(folder, "one\ntw");
        List<String> seen = new ArrayList<>();
        Reading reading = Journal.read(path, 0, (offset, line) -> seen.add(new String(line, UTF_8)));
        assertThat(seen).containsExactly("one");
        assertThat(reading).isEqualTo(new Reading(1, 4, 2));
        assertThat(path).hasBinaryContent("one\ntw".getBytes(UTF_8));
    }

    @Test
    void refusesASecondWriter() {
        Path path = folder.resolve("journal");
        Journal first = Journal.open(path);
        assertThatThrownBy(() -> Journal.open(path))
                .isInstanceOf(JournalFailed.class)
                .hasMessageContaining("another program is writing");
        read(path);
        assertThatThrownBy(() -> Journal.open(path)).isInstanceOf(JournalFailed.class);
        first.close();
        Journal.open(path).close();
    }

    @Test
    void refusesALineThatWouldBeTwo() {
        try (Journal journal = Journal.open(folder.resolve("journal"))) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> journal.append(lines("one", "two\nthree")))
                    .withMessageContaining("one entry is one line");
            assertThatIllegalArgumentException().isThrownBy(() -> journal.append(lines("")));
            assertThat(journal.length()).isZero();
        }
    }

    @Test
    void takesTheLongestLineAndNamesALongerOne() throws IOException {
        Path path = folder.resolve("journal");
        byte[] longest = new byte[Lines.LONGEST];
        Arrays.fill(longest, (byte) 'x');
        try (Journal journal = Journal.open(path)) {
            journal.append(List.of(longest));
            assertThat(journal.lastLine())
                    .hasValueSatisfying(line -> assertThat(line).isEqualTo(longest));
        }
        Files.writeString(path, "one\n" + new String(longest, UTF_8) + "x\n");
        assertThatThrownBy(() -> read(path))
                .isInstanceOf(JournalFailed.class)
                .hasMessageContaining("the line at byte 4 is longer than 8388608 bytes");
    }

    @Test
    void findsTheLastLineAcrossReadBuffers() {
        Path path = folder.resolve("journal");
        for (int length : new int[] {65_535, 65_536, 65_537, 131_072}) {
            String line = "y".repeat(length);
            try (Journal journal = Journal.open(path)) {
                journal.append(lines("x", line));
                assertThat(journal.lastLine())
                        .hasValueSatisfying(last -> assertThat(last).hasSize(length));
            }
        }
    }

    @Test
    void saysWhereItCouldNotBeOpened() {
        Path nowhere = folder.resolve("no-such-folder").resolve("journal");
        assertThatThrownBy(() -> Journal.open(nowhere))
                .isInstanceOf(JournalFailed.class)
                .hasMessageContaining(nowhere.toString())
                .hasMessageContaining("no such file or folder");
    }
}
