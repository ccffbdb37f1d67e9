package bedledger.ledger.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lines and rows taken out, put in, swapped and rewritten, each in turn. */
class EveryLineTest {

    @TempDir
    Path folder;

    private SampleBook book;
    private List<String> lines;

    static IntStream entries() {
        return IntStream.rangeClosed(1, SampleBook.ENTRIES);
    }

    static IntStream entriesButTheLast() {
        return IntStream.range(1, SampleBook.ENTRIES);
    }

    @BeforeEach
    void write() {
        book = SampleBook.writtenTo(folder);
        lines = SampleBook.lines();
    }

    @ParameterizedTest(name = "entry {0} deleted")
    @MethodSource("entries")
    void findsADeletedLine(int entry) {
        lines.remove(entry - 1);
        assertNamed(entry, entry == SampleBook.ENTRIES ? Fault.LOG_CUT : Fault.NUMBER_MISSING, entry);
    }

    @ParameterizedTest(name = "entries {0} and the next swapped")
    @MethodSource("entriesButTheLast")
    void findsSwappedLines(int entry) {
        Collections.swap(lines, entry - 1, entry);
        assertNamed(entry, Fault.NUMBER_MISSING, entry);
    }

    @ParameterizedTest(name = "entry {0} twice")
    @MethodSource("entries")
    void findsADoubledLine(int entry) {
        lines.add(entry, lines.get(entry - 1));
        Disagreement named = named(Fault.NUMBER_OUT_OF_ORDER);
        assertThat(named.first()).isEqualTo(entry);
        assertThat(named.last()).isEqualTo(entry + 1L);
    }

    @ParameterizedTest(name = "a line put in after entry {0}")
    @MethodSource("entries")
    void findsAnInsertedLine(int entry) {
        lines.add(entry, SampleBook.line(entry + 1, "N99"));
        if (entry == SampleBook.ENTRIES) {
            // Behind the last checkpoint a line is only not yet sealed: that is what the count is for.
            book.holds(lines);
            assertThat(book.verify().agrees()).isTrue();
            assertThat(book.verify().notYetSealed()).isEqualTo(1);
        } else {
            assertNamed(entry + 1, Fault.ROOT_DIFFERS, entry + 1);
            assertNamed(entry + 1, Fault.NUMBER_OUT_OF_ORDER, entry + 2);
        }
    }

    @ParameterizedTest(name = "entry {0} rewritten, well-formed")
    @MethodSource("entries")
    void findsARewrittenLineBetweenTwoCheckpoints(int entry) {
        lines.set(entry - 1, SampleBook.line(entry, "N99"));
        book.holds(lines);
        Verdict verdict = book.verify();
        long block = (entry - 1) / 4 * 4L;
        assertThat(verdict.disagreements()).hasSize(1);
        assertThat(verdict.first().orElseThrow().fault()).isEqualTo(Fault.ROOT_DIFFERS);
        assertThat(verdict.first().orElseThrow().first()).isEqualTo(block + 1);
        assertThat(verdict.first().orElseThrow().last()).isEqualTo(block + 4);
        assertThat(verdict.sealed()).isEqualTo(block);
    }

    @ParameterizedTest(name = "entry {0} rewritten in the journal, not in the database")
    @MethodSource("entries")
    void namesTheVeryEntryWhereTheDatabaseStillHasIt(int entry) {
        lines.set(entry - 1, SampleBook.line(entry, "N99"));
        book.holds(lines);
        assertRow(Fault.ROW_DIFFERS, entry, SampleBook.rows());
    }

    @ParameterizedTest(name = "row {0} rewritten")
    @MethodSource("entries")
    void findsARewrittenRow(int entry) {
        List<SampleBook.StoredRow> rows = SampleBook.rows();
        rows.set(entry - 1, new SampleBook.StoredRow(entry, SampleBook.line(entry, "N99")));
        assertRow(Fault.ROW_DIFFERS, entry, rows);
    }

    @ParameterizedTest(name = "row {0} deleted")
    @MethodSource("entries")
    void findsADeletedRow(int entry) {
        List<SampleBook.StoredRow> rows = SampleBook.rows();
        rows.remove(entry - 1);
        assertRow(Fault.ROW_MISSING, entry, rows);
    }

    @ParameterizedTest(name = "row {0} twice")
    @MethodSource("entries")
    void findsADoubledRow(int entry) {
        List<SampleBook.StoredRow> rows = SampleBook.rows();
        rows.add(entry, rows.get(entry - 1));
        assertRow(Fault.ROW_EXTRA, entry, rows);
    }

    @ParameterizedTest(name = "line {0} deleted, its row still there")
    @MethodSource("entries")
    void findsARowWithoutALine(int entry) {
        lines.remove(entry - 1);
        book.holds(lines);
        assertRow(Fault.ROW_EXTRA, entry, SampleBook.rows());
    }

    private void assertRow(Fault fault, int entry, List<SampleBook.StoredRow> rows) {
        List<Disagreement> about = book.verifyWith(rows).disagreements().stream()
                .filter(said -> said.where().equals("database"))
                .toList();
        assertThat(about).isNotEmpty();
        assertThat(about.get(0).fault()).isEqualTo(fault);
        assertThat(about.get(0).first()).isEqualTo(entry).isEqualTo(about.get(0).last());
    }

    /** The first disagreement covers the entry, and one of this kind names the other. */
    private void assertNamed(int first, Fault fault, int named) {
        Disagreement said = named(fault);
        assertThat((long) named).isBetween(said.first(), said.last());
        Disagreement earliest = book.verify().first().orElseThrow();
        assertThat((long) first).isBetween(earliest.first(), earliest.last());
    }

    private Disagreement named(Fault fault) {
        book.holds(new ArrayList<>(lines));
        List<Disagreement> all = book.verify().disagreements();
        return all.stream()
                .filter(said -> said.fault() == fault)
                .findFirst()
                .orElseThrow(() -> new AssertionError(fault + " not among " + all));
    }
}
