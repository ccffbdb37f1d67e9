package bedledger.ledger.note;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedledger.ledger.tree.Hash;
import bedledger.ledger.tree.Merkle;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckpointsTest {

    private static final SigningKey KEY = SigningKey.generate("example.org/greenfold");

    @TempDir
    Path folder;

    @Test
    void keepsCheckpointsInTheOrderSigned() {
        Checkpoints checkpoints = Checkpoints.in(folder.resolve("checkpoints"));
        assertThat(checkpoints.last()).isEmpty();
        assertThat(checkpoints.all()).isEmpty();
        List<SignedNote> notes =
                LongStream.rangeClosed(0, 3).mapToObj(CheckpointsTest::signed).toList();
        for (SignedNote note : notes) {
            assertThat(checkpoints.append(note)).isEmpty();
            assertThat(checkpoints.last()).contains(note);
        }
        assertThat(checkpoints.all()).isEqualTo(notes);
    }

    @Test
    void separatesTwoNotesByOneEmptyLine() {
        Path file = folder.resolve("checkpoints");
        Checkpoints.in(file).append(signed(1));
        Checkpoints.in(file).append(signed(2));
        assertThat(file)
                .hasBinaryContent((signed(1) + "\n" + signed(2)).getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    @Test
    void findsTheLastOneInALongFile() {
        Checkpoints checkpoints = Checkpoints.in(folder.resolve("checkpoints"));
        for (int size = 0; size < 600; size++) {
            checkpoints.append(signed(size));
        }
        assertThat(folder.resolve("checkpoints").toFile().length()).isGreaterThan(100_000);
        assertThat(checkpoints.last()).contains(signed(599));
        assertThat(checkpoints.all()).hasSize(600);
    }

    @Test
    void setsANoteThatWasCutShortAsideAtEveryByte() throws IOException {
        Path file = folder.resolve("checkpoints");
        Checkpoints checkpoints = Checkpoints.in(file);
        checkpoints.append(signed(1));
        long whole = Files.size(file);
        checkpoints.append(signed(2));
        byte[] both = Files.readAllBytes(file);
        for (int length = (int) whole + 1; length < both.length; length++) {
            Files.write(file, Arrays.copyOf(both, length));
            assertThat(checkpoints.last()).as("%s bytes", length).contains(signed(1));
            assertThat(checkpoints.all()).containsExactly(signed(1));
            Optional<Path> moved = checkpoints.append(signed(3));
            assertThat(moved.orElseThrow()).hasBinaryContent(Arrays.copyOfRange(both, (int) whole, length));
            assertThat(checkpoints.all()).containsExactly(signed(1), signed(3));
        }
    }

    @Test
    void doesNotWriteAfterADamagedCheckpoint() throws IOException {
        Path file = folder.resolve("checkpoints");
        Checkpoints checkpoints = Checkpoints.in(file);
        checkpoints.append(signed(1));
        String damaged = Files.readString(file).replace("\n1\n", "\n01\n");
        Files.writeString(file, damaged);
        assertThatThrownBy(() -> checkpoints.append(signed(2))).isInstanceOf(NoteRejected.class);
        assertThat(Files.readString(file)).isEqualTo(damaged);
    }

    @Test
    void takesNothingThatIsNoCheckpoint() {
        Path file = folder.resolve("checkpoints");
        assertThatThrownBy(() -> Checkpoints.in(file).append(KEY.sign("good morning\n")))
                .isInstanceOf(NoteRejected.class);
        assertThat(file).doesNotExist();
    }

    @Test
    void saysWhereItCouldNotBeWritten() {
        Path nowhere = folder.resolve("none").resolve("checkpoints");
        assertThatThrownBy(() -> Checkpoints.in(nowhere).append(signed(1)))
                .isInstanceOf(UncheckedIOException.class)
                .hasMessageContaining(nowhere.toString());
    }

    private static SignedNote signed(long size) {
        Hash root = Merkle.leaf(new byte[] {(byte) size});
        return KEY.sign(new Checkpoint(KEY.verifier().name(), size, root).text());
    }
}
