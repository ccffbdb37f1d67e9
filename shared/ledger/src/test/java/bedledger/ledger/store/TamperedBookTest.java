package bedledger.ledger.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.Checkpoints;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.tree.Frontier;
import bedledger.ledger.tree.Merkle;
import bedledger.ledger.verify.Disagreement;
import bedledger.ledger.verify.Fault;
import bedledger.ledger.verify.Row;
import bedledger.ledger.verify.Verdict;
import bedledger.ledger.verify.Verifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The journal of a whole book changed by hand, without the key and with it, and verified with its database. */
class TamperedBookTest {
    static final int ENTRIES = 60;
    static final int SEALED_EVERY = 20;

    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Kept(long number, byte[] lineBytes) implements Row {}

    @TempDir
    Path scratch;

    private PracticeBook book;
    private List<Row> rows;
    private List<String> lines;

    @BeforeEach
    void write() throws Exception {
        book = new PracticeBook(scratch).holding(ENTRIES, SEALED_EVERY);
        lines = new ArrayList<>(Files.readAllLines(book.folder.journal()));
        rows = new ArrayList<>();
        try (DatabaseRows read = DatabaseRows.of(book.folder)) {
            read.forEachRemaining(row -> rows.add(new Kept(row.number(), row.lineBytes())));
        }
        assertThat(book.verify().disagreements()).isEmpty();
        assertThat(rows).hasSize(ENTRIES);
    }

    @ParameterizedTest(name = "every 25th byte of the journal replaced, seed {0}")
    @ValueSource(longs = 4)
    void findsAChangedByteAndNamesItsEntry(long seed) throws Exception {
        findsChangedBytes(seed, 25);
    }

    @Tag("kills")
    @ParameterizedTest(name = "every byte of the journal replaced, seed {0}")
    @ValueSource(longs = 4)
    void findsEveryChangedByteAndNamesItsEntry(long seed) throws Exception {
        findsChangedBytes(seed, 1);
    }

    private void findsChangedBytes(long seed, int step) throws Exception {
        SplittableRandom random = new SplittableRandom(seed);
        byte[] whole = book.journal();
        int changes = 0;
        int found = 0;
        for (int at = random.nextInt(step); at < whole.length; at += step) {
            byte[] changed = whole.clone();
            changed[at] = (byte) (whole[at] + 1 + random.nextInt(255));
            Files.write(book.folder.journal(), changed);
            long entry = entryAt(whole, at);
            Disagreement first = first("byte " + at + " of entry " + entry + ", now " + (changed[at] & 0xff));
            assertThat(first.first())
                    .as("byte %s: %s", at, first)
                    .isEqualTo(entry)
                    .isEqualTo(first.last());
            changes++;
            found++;
        }
        System.out.println("bytes of the journal changed: " + changes + " of " + whole.length
                + ", found and named to the entry: " + found);
        assertThat(found).isGreaterThan(whole.length / step - 1).isGreaterThan(10_000 / step);
    }

    private static long entryAt(byte[] journal, int at) {
        long entry = 1;
        for (int before = 0; before < at; before++) {
            entry += journal[before] == '\n' ? 1 : 0;
        }
        return entry;
    }

    @Test
    void findsEveryLineDeletedDoubledSwappedOrPutIn() throws Exception {
        int found = 0;
        for (int entry = 1; entry <= ENTRIES; entry++) {
            List<String> without = new ArrayList<>(lines);
            without.remove(entry - 1);
            found += named(without, entry, "deleted");
            List<String> twice = new ArrayList<>(lines);
            twice.add(entry, lines.get(entry - 1));
            found += named(twice, entry + 1, "doubled");
            List<String> more = new ArrayList<>(lines);
            more.add(
                    entry,
                    lines.get(entry - 1).replace("\"number\":" + entry + ",", "\"number\":" + (entry + 1) + ","));
            found += named(more, entry + 1, "put in after");
            if (entry < ENTRIES) {
                List<String> swapped = new ArrayList<>(lines);
                Collections.swap(swapped, entry - 1, entry);
                found += named(swapped, entry, "swapped with the next");
            }
        }
        System.out.println("lines deleted, doubled, put in, swapped: " + found + " of " + (4 * ENTRIES - 1) + " found");
        assertThat(found).isEqualTo(4 * ENTRIES - 1);
    }

    /** Both copies agree with each other, so only the checkpoints can tell, and only to the entries between two of them. */
    @Test
    void findsAnEntryChangedInBothCopiesBetweenTwoCheckpoints() throws Exception {
        int found = 0;
        for (int entry = 1; entry <= ENTRIES; entry++) {
            holds(changed(entry));
            Files.delete(book.folder.databaseFile());
            rebuiltWithoutItsCheckpoints();
            Verdict verdict = book.verify();
            assertThat(verdict.rows()).as("rows equal to the changed lines").isEqualTo(ENTRIES);
            assertThat(verdict.disagreements()).hasSize(1);
            Disagreement only = verdict.disagreements().get(0);
            long before = (entry - 1) / SEALED_EVERY * (long) SEALED_EVERY;
            assertThat(only.fault()).isEqualTo(Fault.ROOT_DIFFERS);
            assertThat(only.first()).isEqualTo(before + 1);
            assertThat(only.last()).isEqualTo(before + SEALED_EVERY);
            found++;
        }
        System.out.println("entries changed in journal and database alike: " + found
                + " found, each to the checkpoints before and after it");
        assertThat(found).isEqualTo(ENTRIES);
    }

    @Test
    void findsAHistoryWrittenAnewWithTheKeyByACheckpointKeptElsewhere() throws Exception {
        List<SignedNote> kept = Checkpoints.in(book.folder.checkpoints()).all();
        assertThat(kept).hasSize(3);
        int found = 0;
        for (int entry = 1; entry <= ENTRIES; entry += 3) {
            holds(changed(entry));
            Files.delete(book.folder.databaseFile());
            signAnew();
            book.open();
            assertThat(book.verify().disagreements())
                    .as("nothing in the book itself can show it")
                    .isEmpty();
            for (SignedNote note : kept) {
                long size = Checkpoint.parse(note.text()).size();
                Verdict verdict = Verifier.verify(book.evidence().against(note.toString()));
                assertThat(verdict.agrees())
                        .as("entry %s, held against the checkpoint of %s", entry, size)
                        .isEqualTo(entry > size);
                found += verdict.agrees() ? 0 : 1;
            }
            String all = kept.stream().map(SignedNote::toString).collect(Collectors.joining("\n"));
            Disagreement first =
                    Verifier.verify(book.evidence().against(all)).first().orElseThrow();
            assertThat((long) entry).as(first.toString()).isBetween(first.first(), first.last());
        }
        System.out.println("histories written anew with the key: 20; each found by every one of " + kept.size()
                + " earlier checkpoints that covers the change: " + found);
        // Seven of the twenty changes lie under the first checkpoint, fourteen under the second, all under the third.
        assertThat(found).isEqualTo(7 + 14 + 20);
    }

    private void signAnew() throws Exception {
        Files.delete(book.folder.checkpoints());
        Frontier tree = Frontier.empty();
        for (String line : Files.readAllLines(book.folder.journal())) {
            tree = tree.append(Merkle.leaf(line.getBytes(UTF_8)));
            if (tree.size() % SEALED_EVERY == 0) {
                Checkpoint forged = new Checkpoint(book.key.verifier().name(), tree.size(), tree.root());
                Checkpoints.in(book.folder.checkpoints()).append(book.key.sign(forged.text()));
            }
        }
    }

    /** The forger has no key, and lets the program itself copy the changed journal into a fresh database. */
    private void rebuiltWithoutItsCheckpoints() throws Exception {
        Path aside = scratch.resolve("checkpoints-kept");
        Files.move(book.folder.checkpoints(), aside);
        book.open();
        Files.move(aside, book.folder.checkpoints());
    }

    private List<String> changed(int entry) {
        List<String> changed = new ArrayList<>(lines);
        changed.set(entry - 1, lines.get(entry - 1).replace("\"minutes\":15", "\"minutes\":16"));
        assertThat(changed).isNotEqualTo(lines);
        return changed;
    }

    private int named(List<String> other, int entry, String how) throws Exception {
        holds(other);
        Disagreement first = first("entry " + entry + " " + how);
        assertThat((long) entry).as("%s: %s", how, first).isBetween(first.first(), first.last());
        return 1;
    }

    private Disagreement first(String what) {
        return Verifier.verify(book.evidence().withRows(rows.iterator()))
                .first()
                .orElseThrow(() -> new AssertionError("not found: " + what));
    }

    private void holds(List<String> other) throws Exception {
        Files.writeString(book.folder.journal(), String.join("\n", other) + "\n");
    }
}
