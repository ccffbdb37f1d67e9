package bedledger.ledger.note;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KeyFileTest {

    @TempDir
    Path folder;

    @Test
    void keepsAKeyForItsOwnerAlone() throws IOException {
        Path file = folder.resolve("book.key");
        SigningKey key = SigningKey.generate("example.org/greenfold");
        KeyFile.save(key, file);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");

        KeyFile.Loaded loaded = KeyFile.load(file);
        assertThat(loaded.warning()).isEmpty();
        assertThat(loaded.key().verifier()).isEqualTo(key.verifier());
        loaded.key().sign("signed\n").verify(List.of(key.verifier()));
    }

    @Test
    void neverOverwritesAKey() throws IOException {
        Path file = folder.resolve("book.key");
        KeyFile.save(SigningKey.generate("example.org/greenfold"), file);
        String before = Files.readString(file);
        SigningKey other = SigningKey.generate("example.org/greenfold");
        assertThatThrownBy(() -> KeyFile.save(other, file))
                .isInstanceOf(NoteRejected.class)
                .hasMessageContaining("never overwritten");
        assertThat(Files.readString(file)).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"rw-r-----", "rw----r--", "rw--w----", "rwxr-xr-x"})
    void warnsWhenOthersMayUseTheFile(String mode) throws IOException {
        Path file = folder.resolve("book.key");
        KeyFile.save(SigningKey.generate("example.org/greenfold"), file);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(mode));
        assertThat(KeyFile.load(file).warning().orElseThrow()).contains(mode, "chmod 600", file.toString());
    }

    @Test
    void refusesHalvesThatDoNotBelongTogether() throws IOException {
        Path one = folder.resolve("one.key");
        Path two = folder.resolve("two.key");
        KeyFile.save(SigningKey.generate("example.org/greenfold"), one);
        KeyFile.save(SigningKey.generate("example.org/greenfold"), two);
        Files.writeString(
                one,
                Files.readAllLines(one).get(0) + "\n" + Files.readAllLines(two).get(1) + "\n");
        assertThatThrownBy(() -> KeyFile.load(one))
                .isInstanceOf(NoteRejected.class)
                .hasMessageContaining("do not belong together");
    }

    @Test
    void refusesEveryCutOfAKeyFile() throws IOException {
        Path file = folder.resolve("book.key");
        KeyFile.save(SigningKey.generate("example.org/greenfold"), file);
        String whole = Files.readString(file);
        for (int length = 0; length < whole.length(); length++) {
            Files.writeString(file, whole.substring(0, length));
            assertThatThrownBy(() -> KeyFile.load(file)).as("%s bytes", length).isInstanceOf(NoteRejected.class);
        }
    }

    @Test
    void saysWhichKeyFileIsNotThere() {
        assertThatThrownBy(() -> KeyFile.load(folder.resolve("none.key")))
                .isInstanceOf(UncheckedIOException.class)
                .hasMessageContaining("none.key");
    }

    @Test
    void neverPrintsTheSecret() {
        assertThat(SigningKey.generate("example.org/greenfold")).hasToString("signing key example.org/greenfold");
    }

    @Test
    void readsTheKeyFileThatTheFormatPageShows() throws IOException {
        String page;
        try (var in = Objects.requireNonNull(KeyFile.class.getResourceAsStream("/bedledger/ledger/FORMAT.md"))) {
            page = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        int start = page.indexOf("PRIVATE+KEY+example");
        Path file = folder.resolve("shown.key");
        Files.writeString(file, page.substring(start, page.indexOf("```", start)));
        SigningKey key = KeyFile.load(file).key();

        int checkpoint = page.indexOf("example.com/farm-log-test\n8\n");
        SignedNote shown = SignedNote.parse(
                page.substring(checkpoint, page.indexOf("```", checkpoint)).getBytes(StandardCharsets.UTF_8));
        assertThat(key.sign(shown.text())).isEqualTo(shown);
    }
}
