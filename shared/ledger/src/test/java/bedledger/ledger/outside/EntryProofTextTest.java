package bedledger.ledger.outside;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.EntryProof;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.note.RawEd25519;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.tree.Proofs;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** C2SP tlog-proof, read at C2SP/C2SP commit 0065ea5b, over the published tree: entry 6 of 8, whose path is published too. */
class EntryProofTextTest {
    private static final String ORIGIN = "example.com/farm-log-test";
    private static final SignedNote NOTE = RawEd25519.key(
                    "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
                    ORIGIN + "+fec874ed+AddamAGCsQq31Uv+08lkBzoO4XLz2qYjJa8CGmj3B1Ea")
            .sign(new Checkpoint(ORIGIN, 8, PublishedTree.ROOTS.get(8)).text());
    private static final String TEXT = "c2sp.org/tlog-proof@v1\nextra QEFCQw==\nindex 5\n"
            + "vBoGQ7EuTS18d5GPROD095qDi2z57FtcKD4fTYhZnms=\n"
            + "yoVOoSjtBQtBs1/8G4e46yveRh6eO1WW7Oa51ZdaCuA=\n"
            + "037kGJdt2VdTwcc4Yrk5j6Kiz5tP8P3+izDNlSCWFLc=\n\n" + NOTE;

    @Test
    void isTheFileThatTheStandardDescribes() {
        byte[] line = PublishedTree.LEAVES.get(5);
        EntryProof proof = new EntryProof(line, 5, Proofs.inclusion(5, 8, PublishedTree::leaf), NOTE);
        assertThat(proof.text()).isEqualTo(TEXT);
        assertThat(EntryProof.isOne(TEXT.getBytes(UTF_8))).isTrue();
        EntryProof read = EntryProof.parse(TEXT.getBytes(UTF_8));
        assertThat(read.text()).isEqualTo(TEXT);
        Proofs.verifyInclusion(PublishedTree.leaf(5), read.index(), 8, read.path(), PublishedTree.ROOTS.get(8));
    }

    @TestFactory
    Stream<DynamicTest> refuses() {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("nothing", "");
        texts.put("another version", TEXT.replace("@v1", "@v2"));
        texts.put("more on the first line", TEXT.replace("@v1", "@v1 "));
        texts.put("no line of the entry", TEXT.replace("extra QEFCQw==\n", ""));
        texts.put("a leading zero", TEXT.replace("index 5", "index 05"));
        texts.put("an index below zero", TEXT.replace("index 5", "index -5"));
        texts.put("an index beyond 63 bits", TEXT.replace("index 5", "index 9223372036854775808"));
        texts.put("a short hash", TEXT.replace("SCWFLc=", "SCW="));
        texts.put("no empty line", TEXT.replaceFirst("\n\n", "\n"));
        texts.put("no checkpoint", TEXT.substring(0, TEXT.indexOf("\n\n") + 2));
        texts.put("carriage returns", TEXT.replace("\n", "\r\n"));
        texts.put("no end of hashes", TEXT.replace("\n\n", "\n" + "A".repeat(43) + "=\n".repeat(1)));
        assertThat(texts.values()).doesNotContain(TEXT).doesNotHaveDuplicates();
        return texts.entrySet().stream()
                .map(text -> DynamicTest.dynamicTest(
                        text.getKey(),
                        () -> assertThatThrownBy(
                                        () -> EntryProof.parse(text.getValue().getBytes(UTF_8)))
                                .isInstanceOf(NoteRejected.class)));
    }
}
