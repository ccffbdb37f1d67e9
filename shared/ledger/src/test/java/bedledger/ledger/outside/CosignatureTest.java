package bedledger.ledger.outside;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.CosignerKey;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.note.RawEd25519;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.note.SigningKey;
import bedledger.ledger.note.VerifierKey;
import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * C2SP tlog-cosignature, Ed25519 (type 0x04), read at C2SP/C2SP commit 01194db1: key ID, the message {@code cosignature/v1}, and
 * time ‖ signature, put together here by hand with the keys of RFC 8032 §7.1, tests 1 (the farm) and 2 (the certifier).
 */
class CosignatureTest {
    private static final String ORIGIN = "example.com/farm-log-test";
    private static final SigningKey FARM = RawEd25519.key(
            "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
            ORIGIN + "+fec874ed+AddamAGCsQq31Uv+08lkBzoO4XLz2qYjJa8CGmj3B1Ea");
    private static final String SECRET = "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb";
    private static final byte[] PUBLIC =
            HexFormat.of().parseHex("3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c");
    private static final String NAME = "certifier.example/w1";
    private static final Instant AT = Instant.ofEpochSecond(1679315147);
    private static final SignedNote NOTE = FARM.sign(new Checkpoint(ORIGIN, 8, PublishedTree.ROOTS.get(8)).text());

    private static byte[] id(int type) throws Exception {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        digest.update((NAME + "\n").getBytes(UTF_8));
        digest.update((byte) type);
        return Arrays.copyOf(digest.digest(PUBLIC), 4);
    }

    private static String key(int type) throws Exception {
        byte[] typed = ByteBuffer.allocate(33).put((byte) type).put(PUBLIC).array();
        return NAME + "+" + HexFormat.of().formatHex(id(type)) + "+"
                + Base64.getEncoder().encodeToString(typed);
    }

    private static SignedNote cosigned() throws Exception {
        return CosignerKey.cosign(NOTE, RawEd25519.key(SECRET, key(1)), AT);
    }

    @Test
    void isTheLineThatTheStandardDescribes() throws Exception {
        byte[] message = ("cosignature/v1\ntime 1679315147\n" + NOTE.text()).getBytes(UTF_8);
        byte[] signature = RawEd25519.sign(SECRET, message);
        byte[] blob = ByteBuffer.allocate(76)
                .put(id(4))
                .putLong(1679315147)
                .put(signature)
                .array();
        assertThat(cosigned())
                .hasToString(NOTE + "— " + NAME + " " + Base64.getEncoder().encodeToString(blob) + "\n");
    }

    @Test
    void isFoundByTheCosignersKeyAndPassedOverByTheFarms() throws Exception {
        CosignerKey cosigner = CosignerKey.parse(key(4));
        SignedNote read = SignedNote.parse(cosigned().toBytes());
        assertThat(cosigner.countersigned(read)).contains(AT);
        assertThat(cosigner.countersigned(NOTE)).isEmpty();
        assertThat(read.verify(List.of(FARM.verifier()))).containsExactly(FARM.verifier());
        assertThat(cosigner).hasToString(key(4));
        assertThat(CosignerKey.isOne(key(4))).isTrue();
        assertThat(CosignerKey.isOne(key(1))).isFalse();
    }

    @Test
    void failsOverAnotherCheckpointOrWithAnotherTime() throws Exception {
        CosignerKey cosigner = CosignerKey.parse(key(4));
        String another = new Checkpoint(ORIGIN, 7, PublishedTree.ROOTS.get(7)).text();
        SignedNote moved = new SignedNote(another, cosigned().signatures());
        assertThatThrownBy(() -> cosigner.countersigned(moved)).isInstanceOf(NoteRejected.class);
        String line = cosigned().signatures().get(1).base64();
        byte[] blob = Base64.getDecoder().decode(line);
        blob[11]++;
        String later = cosigned().toString().replace(line, Base64.getEncoder().encodeToString(blob));
        assertThatThrownBy(() -> cosigner.countersigned(SignedNote.parse(later.getBytes(UTF_8))))
                .isInstanceOf(NoteRejected.class);
        blob[4] = (byte) 0x80;
        String before = cosigned().toString().replace(line, Base64.getEncoder().encodeToString(blob));
        assertThatThrownBy(() -> cosigner.countersigned(SignedNote.parse(before.getBytes(UTF_8))))
                .isInstanceOf(NoteRejected.class);
    }

    @Test
    void keysOfTheOtherTypeAreRefused() throws Exception {
        String signer = key(1);
        String cosigner = key(4);
        assertThatThrownBy(() -> CosignerKey.parse(signer)).isInstanceOf(NoteRejected.class);
        assertThatThrownBy(() -> VerifierKey.parse(cosigner)).isInstanceOf(NoteRejected.class);
        assertThatThrownBy(() -> CosignerKey.parse(cosigner.replace("+BD", "+BE")))
                .isInstanceOf(NoteRejected.class);
    }
}
