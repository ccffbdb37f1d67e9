package bedledger.ledger.verify;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.Checkpoints;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.note.SigningKey;
import bedledger.ledger.tree.Hash;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VerifierTest {

    @TempDir
    Path folder;

    @Test
    void agreesWithABookThatNobodyTouched() {
        Verdict verdict = SampleBook.writtenTo(folder).verifyWith(SampleBook.rows());
        assertThat(verdict.disagreements()).isEmpty();
        assertThat(verdict).isEqualTo(new Verdict(12, 3, 12, 0, 12, List.of(), 0));
        assertThat(verdict.notYetSealed()).isZero();
    }

    @Test
    void countsWhatIsNotYetSealed() {
        Verdict verdict =
                SampleBook.writtenTo(folder, SampleBook.lines(), Set.of(5)).verify();
        assertThat(verdict.agrees()).isTrue();
        assertThat(verdict.sealed()).isEqualTo(5);
        assertThat(verdict.notYetSealed()).isEqualTo(7);
    }

    @Test
    void agreesWithAnEmptyBook() throws IOException {
        SampleBook book = SampleBook.writtenTo(folder, List.of(), Set.of());
        Files.createFile(book.checkpoints);
        assertThat(book.verify().agrees()).isTrue();
        Checkpoints.in(book.checkpoints).append(SampleBook.signedFor(List.of()));
        assertThat(book.verify()).isEqualTo(new Verdict(0, 1, 0, 0, 0, List.of(), 0));
    }

    @Test
    void saysWhenNoCheckpointCoversAnything() throws IOException {
        SampleBook book = SampleBook.writtenTo(folder);
        Files.writeString(book.checkpoints, "");
        Disagreement said = only(book.verify());
        assertThat(said.fault()).isEqualTo(Fault.NO_CHECKPOINT);
        assertThat(said.entries()).isEqualTo("entries 1 to 12");
    }

    @Test
    void findsAHistorySignedAnewOnlyByAnOlderCheckpoint() {
        SignedNote kept = SampleBook.signedFor(SampleBook.lines().subList(0, 8));
        SampleBook book = SampleBook.writtenTo(folder, rewrittenAt(6), SampleBook.SEALED_AT);

        assertThat(book.verify().agrees())
                .as("signed with the key, it agrees with itself")
                .isTrue();
        Disagreement said = only(Verifier.verify(book.evidence().against(kept.toString())));
        assertThat(said.fault()).isEqualTo(Fault.ROOT_DIFFERS);
        assertThat(said.entries()).isEqualTo("entries 1 to 8");
    }

    @Test
    void narrowsItByAnOlderCheckpointThatStillAgrees() {
        List<String> lines = SampleBook.lines();
        String kept = SampleBook.signedFor(lines.subList(0, 5)) + "\n" + SampleBook.signedFor(lines.subList(0, 6))
                + "\n" + SampleBook.signedFor(lines);
        SampleBook book = SampleBook.writtenTo(folder, rewrittenAt(6), SampleBook.SEALED_AT);

        Verdict verdict = Verifier.verify(book.evidence().against(kept));
        assertThat(only(verdict).entries()).isEqualTo("entry 6");
        assertThat(verdict.againstAgreeing()).isEqualTo(1);
    }

    @Test
    void findsALogCutAndSignedAnew() {
        SignedNote kept = SampleBook.signedFor(SampleBook.lines());
        SampleBook book = SampleBook.writtenTo(folder, SampleBook.lines().subList(0, 9), Set.of(4, 9));

        assertThat(book.verify().agrees()).isTrue();
        Disagreement said = only(Verifier.verify(book.evidence().against(kept.toString())));
        assertThat(said.fault()).isEqualTo(Fault.LOG_CUT);
        assertThat(said.entries()).isEqualTo("entries 10 to 12");
    }

    @Test
    void agreesWithAnOlderCheckpointOfTheSameHistory() {
        SampleBook book = SampleBook.writtenTo(folder);
        String kept = SampleBook.signedFor(SampleBook.lines().subList(0, 7)).toString();
        Verdict verdict = Verifier.verify(book.evidence().against(kept));
        assertThat(verdict.agrees()).isTrue();
        assertThat(verdict.againstAgreeing()).isEqualTo(1);
    }

    @Test
    void doesNotTakeAnOlderCheckpointThatIsNone() {
        SampleBook book = SampleBook.writtenTo(folder);
        String foreign = SigningKey.generate("example.org/greenfold")
                .sign(SampleBook.signedFor(SampleBook.lines()).text())
                .toString();
        for (String kept : List.of("", "\n", "good morning", foreign)) {
            assertThat(Verifier.verify(book.evidence().against(kept)).agrees())
                    .as(kept)
                    .isFalse();
        }
    }

    @Test
    void findsCheckpointsThatShrinkOrBelongElsewhere() {
        SampleBook book = SampleBook.writtenTo(folder);
        Checkpoints.in(book.checkpoints)
                .append(SampleBook.signedFor(SampleBook.lines().subList(0, 5)));
        assertThat(only(book.verify()).fault()).isEqualTo(Fault.CHECKPOINT_SHRINKS);
    }

    @Test
    void findsACheckpointOfAnotherLogSignedWithTheSameKey() throws IOException {
        SigningKey key = SigningKey.generate("example.org/greenfold");
        SampleBook book = SampleBook.writtenTo(folder);
        Files.writeString(
                book.checkpoints,
                key.sign(new Checkpoint("example.org/elsewhere", 12, Hash.of(new byte[32])).text())
                        .toString());
        List<Disagreement> said = Verifier.verify(Evidence.of(
                        book.journal, book.checkpoints, key.verifier().toString()))
                .disagreements();
        assertThat(said).extracting(Disagreement::fault).contains(Fault.CHECKPOINT_OF_ANOTHER_LOG);
    }

    @Test
    void findsTimeThatGoesBackAndSaysBetweenWhichEntries() {
        List<String> lines = SampleBook.lines();
        lines.set(4, lines.get(4).replace("T17:", "T16:"));
        Disagreement said =
                only(SampleBook.writtenTo(folder, lines, SampleBook.SEALED_AT).verify());
        assertThat(said.fault()).isEqualTo(Fault.TIME_GOES_BACK);
        assertThat(said.entries()).isEqualTo("entries 4 to 5");
    }

    @Test
    void namesWhatALineLacks() {
        List<String> lines = SampleBook.lines();
        lines.set(
                2,
                "{\"act\":\"\",\"name\":7,\"number\":3,\"payload\":[],\"revision\":0,\"sequence\":-1,"
                        + "\"writtenAt\":\"2026-02-30T17:13:00.000Z\"}");
        lines.set(6, "[]");
        List<Disagreement> said = SampleBook.writtenTo(folder, lines, SampleBook.SEALED_AT)
                .verify()
                .disagreements();
        assertThat(said).extracting(Disagreement::first).containsExactly(3L, 7L);
        assertThat(said.get(0).found()).contains("act, name, writtenBy, revision, sequence, writtenAt, payload");
        assertThat(said.get(1).found()).contains("number");
    }

    @Test
    void namesALineThatIsTooLongWithoutHoldingIt() throws IOException {
        SampleBook book = SampleBook.writtenTo(folder);
        Files.writeString(book.journal, "x".repeat(9 * 1024 * 1024) + "\n");
        assertThat(book.verify().disagreements())
                .extracting(Disagreement::fault)
                .contains(Fault.LINE_TOO_LONG, Fault.LOG_CUT);
    }

    @Test
    void givesUpOnRowsThatCannotBeReadButNotOnTheRest() {
        SampleBook book = SampleBook.writtenTo(folder);
        Iterator<SampleBook.StoredRow> good = SampleBook.rows().iterator();
        Iterator<Row> failing = new Iterator<>() {
            @Override
            public boolean hasNext() {
                return true;
            }

            @Override
            public Row next() {
                SampleBook.StoredRow row = good.next();
                if (row.number() == 5) {
                    throw new IllegalStateException("Unable to read the page");
                }
                return row;
            }
        };
        Verdict verdict = Verifier.verify(book.evidence().withRows(failing));
        assertThat(only(verdict).fault()).isEqualTo(Fault.UNREADABLE);
        assertThat(verdict.rows()).isEqualTo(4);
        assertThat(verdict.sealed()).isEqualTo(12);
    }

    @Test
    void findsADatabaseWithoutRows() {
        Verdict verdict = SampleBook.writtenTo(folder).verifyWith(List.of());
        assertThat(verdict.disagreements())
                .hasSize(12)
                .allSatisfy(said -> assertThat(said.fault()).isEqualTo(Fault.ROW_MISSING));
    }

    @Test
    void speaksInWholeSentences() {
        SampleBook book = SampleBook.writtenTo(folder);
        book.holds(SampleBook.lines().subList(0, 11));
        assertThat(book.verify().first().orElseThrow())
                .hasToString(
                        "entry 12, checkpoint file, checkpoint 3: found 11 entries, expected 12 entries, as signed."
                                + " Entries are gone from the end; restore them from a backup or a packet.");
    }

    private static List<String> rewrittenAt(int entry) {
        List<String> lines = SampleBook.lines();
        lines.set(entry - 1, SampleBook.line(entry, "N99"));
        assertThat(lines.get(entry - 1).getBytes(UTF_8))
                .isNotEqualTo(SampleBook.lines().get(entry - 1).getBytes(UTF_8));
        return lines;
    }

    private static Disagreement only(Verdict verdict) {
        assertThat(verdict.disagreements()).hasSize(1);
        return verdict.disagreements().get(0);
    }
}
