package bedledger.ledger.outside;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.note.RawEd25519;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.note.SigningKey;
import bedledger.ledger.note.VerifierKey;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * C2SP signed-note and tlog-checkpoint (C2SP/C2SP, commit 5ba5ee83): the published example, and three checkpoints made for this
 * project with the key of RFC 8032 §7.1 test 1 and the published tree.
 */
class SignedNoteVectorsTest {

    private static final VerifierKey EXAMPLE_KEY =
            VerifierKey.parse("example.com/foo+530d903a+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2k");
    private static final String EXAMPLE = "This is an example message.\n\n— example.com/foo"
            + " Uw2QOkn8srV1yJGh2VYRlL1Tnagv1YEq6TfXppzi2ONncAlTgK7Ztg1ERYNZXsYjOBH3mFXmRKuwHjG1Yu72IneyaQM=\n";

    private static final String ORIGIN = "example.com/farm-log-test";
    private static final String VKEY = ORIGIN + "+fec874ed+AddamAGCsQq31Uv+08lkBzoO4XLz2qYjJa8CGmj3B1Ea";
    private static final String SEED = "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60";

    @Test
    void readsThePublishedExampleAndPrintsItBack() {
        SignedNote note = SignedNote.parse(EXAMPLE.getBytes(UTF_8));
        assertThat(note.text()).isEqualTo("This is an example message.\n");
        assertThat(note.verify(List.of(EXAMPLE_KEY))).containsExactly(EXAMPLE_KEY);
        assertThat(note.toBytes()).isEqualTo(EXAMPLE.getBytes(UTF_8));
    }

    @ParameterizedTest(name = "{0} entries")
    @CsvSource({
        "8, /sh07dbt8TuIdOBuTIJpMoh7bERzqjmZUc3XCOY5xywYd0dTvq+Mj1M5fkStxV7Z9SbkEoZVNiy9eGtGS+f2iJnV1Ag=, d18d86a534336bbf4ee5ed489450aa6944ca8aadc9156e4c0cbdf1b561142041",
        "1, /sh07QrXM0W5gw5jsSI1yAP2IGa0RRRB3Xxzzb3cECKUEFcqRhwhpYiiBtaL0UcnN6ZkgIGcz2qkOHT+JeYre+D0Dgw=, 6a95830107034e6eef80ea3c5a266cf03f784a52c91262a92c982fce0d4ea737",
        "0, /sh07dPgX7RomhVXmOaqenkMsqLvX573onFjKVtCKmmeO/CIhUziGg/08DS4DErzIYDFOPkJMvGOY6xbOa55h+UONQo=, aaedeb7c021d36cbd3c2482995fcb74332f3c8ff32cfeb2cd3ade5a0677e31b8"
    })
    void signsTheCheckpointsOfThePublishedTree(int size, String signature, String sha256) {
        SigningKey key = RawEd25519.key(SEED, VKEY);
        Checkpoint checkpoint = new Checkpoint(ORIGIN, size, PublishedTree.ROOTS.get(size));
        SignedNote note = key.sign(checkpoint.text());
        assertThat(note.signatures()).hasSize(1);
        assertThat(note.signatures().get(0).base64()).isEqualTo(signature);
        assertThat(Sha256.hex(note.toBytes())).isEqualTo(sha256);

        SignedNote read = SignedNote.parse(note.toBytes());
        assertThat(read).isEqualTo(note);
        assertThat(read.verify(List.of(VerifierKey.parse(VKEY)))).hasSize(1);
        assertThat(Checkpoint.parse(read.text())).isEqualTo(checkpoint);
    }

    @Test
    void passesSignaturesByUnknownKeysOver() {
        SignedNote note = SignedNote.parse((EXAMPLE + "— witness.example AAAAAAA=\n").getBytes(UTF_8));
        assertThat(note.verify(List.of(EXAMPLE_KEY))).containsExactly(EXAMPLE_KEY);
    }

    @Test
    void takesAsManySignaturesAsTheStandardAsksForAndMore() {
        String note = EXAMPLE + "— witness.example AAAAAAA=\n".repeat(20);
        assertThat(SignedNote.parse(note.getBytes(UTF_8)).verify(List.of(EXAMPLE_KEY)))
                .hasSize(1);
    }

    @Test
    void splitsAtTheLastEmptyLine() {
        SignedNote note = RawEd25519.key(SEED, VKEY).sign("one\n\ntwo\n");
        assertThat(SignedNote.parse(note.toBytes()).text()).isEqualTo("one\n\ntwo\n");
    }

    @TestFactory
    Stream<DynamicTest> refusesNotes() {
        String signature = EXAMPLE.substring(EXAMPLE.indexOf("— "));
        String base64 = signature.substring(signature.lastIndexOf(' ') + 1).strip();
        Map<String, String> notes = new LinkedHashMap<>();
        notes.put("nothing", "");
        notes.put("a changed letter", EXAMPLE.replace("message", "massage"));
        notes.put("a line feed more in the text", EXAMPLE.replace(".\n", ".\n\n"));
        notes.put("no final line feed", EXAMPLE.substring(0, EXAMPLE.length() - 1));
        notes.put("a line feed too many at the end", EXAMPLE + "\n");
        notes.put("no empty line", EXAMPLE.replace("\n\n", "\n"));
        notes.put("no signature", "This is an example message.\n\n");
        notes.put("carriage returns", EXAMPLE.replace("\n", "\r\n"));
        notes.put("a tab in the text", EXAMPLE.replace("is an", "is\tan"));
        notes.put("a zero byte in the text", EXAMPLE.replace("is an", "is\0an"));
        notes.put("DEL in the text", EXAMPLE.replace("is an", "is\u007fan"));
        notes.put("a hyphen for the long dash", EXAMPLE.replace("—", "-"));
        notes.put("an en dash for the long dash", EXAMPLE.replace("—", "–"));
        notes.put("two spaces after the dash", EXAMPLE.replace("— ", "—  "));
        notes.put("two spaces before the signature", EXAMPLE.replace(" Uw2", "  Uw2"));
        notes.put("a space after the signature", EXAMPLE.replace("aQM=", "aQM= "));
        notes.put("no name", EXAMPLE.replace("example.com/foo ", ""));
        notes.put("an empty name", EXAMPLE.replace("example.com/foo", ""));
        notes.put("a plus sign in the name", EXAMPLE.replace("com/foo", "com+foo"));
        notes.put("a no-break space in the name", EXAMPLE.replace("com/foo", "com\u00a0foo"));
        notes.put("another name", EXAMPLE.replace("com/foo", "com/bar"));
        notes.put("another key id", EXAMPLE.replace("Uw2QOk", "Uw2QOU"));
        notes.put("base64 without padding", EXAMPLE.replace("aQM=", "aQM"));
        notes.put("base64 with stray bits", EXAMPLE.replace("aQM=", "aQN="));
        notes.put("base64 of the web", EXAMPLE.replace("Uw2QOkn8", "Uw2QOk_8"));
        notes.put("base64 of a key id alone", EXAMPLE.replace(base64, "Uw2QOg=="));
        notes.put("a short signature", EXAMPLE.replace(base64, base64.substring(0, 40)));
        notes.put("a signature of another text", EXAMPLE.replace("Uw2QOkn8", "Uw2QOkn9"));
        notes.put("a bad one by a known key beside a good one", EXAMPLE + signature.replace("Uw2QOkn8", "Uw2QOkn9"));
        notes.put(
                "a good one by a known key after a bad one",
                EXAMPLE.replace("\n\n", "\n\n" + signature.replace("Uw2QOkn8", "Uw2QOkn9")));
        notes.put("text among the signatures", EXAMPLE + "signed\n");
        notes.put("101 signatures", EXAMPLE + "— witness.example AAAAAAA=\n".repeat(100));
        assertThat(notes.values()).doesNotContain(EXAMPLE).doesNotHaveDuplicates();
        return notes.entrySet().stream()
                .map(note -> DynamicTest.dynamicTest(
                        note.getKey(),
                        () -> assertThatThrownBy(
                                        () -> SignedNote.parse(note.getValue().getBytes(UTF_8))
                                                .verify(List.of(EXAMPLE_KEY)))
                                .isInstanceOf(NoteRejected.class)));
    }

    @Test
    void refusesANoteThatIsNotUtf8() {
        byte[] note = EXAMPLE.getBytes(UTF_8);
        note[3] = (byte) 0xff;
        assertThatThrownBy(() -> SignedNote.parse(note))
                .isInstanceOf(NoteRejected.class)
                .hasMessageContaining("not UTF-8");
    }

    @TestFactory
    Stream<DynamicTest> refusesCheckpoints() {
        String root = "XcnaeacGWamtVZy3Ad7ZoqudgjqtL0lgz+Nw7/RgQyg=";
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("nothing", "");
        texts.put("no root", ORIGIN + "\n8\n");
        texts.put("no final line feed", ORIGIN + "\n8\n" + root);
        texts.put("no origin", "\n8\n" + root + "\n");
        texts.put("a space in the origin", "example farm\n8\n" + root + "\n");
        texts.put("a leading zero", ORIGIN + "\n08\n" + root + "\n");
        texts.put("two zeros", ORIGIN + "\n00\n" + root + "\n");
        texts.put("a plus sign", ORIGIN + "\n+8\n" + root + "\n");
        texts.put("below zero", ORIGIN + "\n-8\n" + root + "\n");
        texts.put("a size that is no number", ORIGIN + "\neight\n" + root + "\n");
        texts.put("digits of another script", ORIGIN + "\n٨\n" + root + "\n");
        texts.put("a size beyond 63 bits", ORIGIN + "\n9223372036854775808\n" + root + "\n");
        texts.put("a root of 31 bytes", ORIGIN + "\n8\nXcnaeacGWamtVZy3Ad7ZoqudgjqtL0lgz+Nw7/RgQw==\n");
        texts.put("a root without padding", ORIGIN + "\n8\n" + root.replace("=", "") + "\n");
        texts.put("a root with stray bits", ORIGIN + "\n8\n" + root.replace("yg=", "yh=") + "\n");
        texts.put("an empty line after it", ORIGIN + "\n8\n" + root + "\n\n");
        texts.put("an extension line, which this program does not write", ORIGIN + "\n8\n" + root + "\nmore\n");
        return texts.entrySet().stream()
                .map(text -> DynamicTest.dynamicTest(
                        text.getKey(),
                        () -> assertThatThrownBy(() -> Checkpoint.parse(text.getValue()))
                                .isInstanceOf(NoteRejected.class)));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "nothing, ''",
        "no key, example.com/foo+530d903a",
        "no name, +530d903a+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2k",
        "a space in the name, example com+530d903a+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2k",
        "the id of another key, example.com/foo+530d903b+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2k",
        "an id in upper case, example.com/foo+530D903A+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2k",
        "another name, example.com/bar+530d903a+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2k",
        "another type, example.com/foo+530d903a+AukyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2k",
        "a key too short, example.com/foo+530d903a+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3Q==",
        "a line feed, 'example.com/foo+530d903a+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2k\n'"
    })
    void refusesVerifierKeys(String what, String vkey) {
        assertThatThrownBy(() -> VerifierKey.parse(vkey)).isInstanceOf(NoteRejected.class);
    }

    @Test
    void printsVerifierKeysBack() {
        assertThat(VerifierKey.parse(VKEY)).hasToString(VKEY);
        assertThat(EXAMPLE_KEY).hasToString("example.com/foo+530d903a+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2k");
    }
}
