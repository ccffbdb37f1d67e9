package bedledger.ledger.outside;

import static bedledger.ledger.outside.PublishedTree.N01;
import static bedledger.ledger.outside.PublishedTree.N03;
import static bedledger.ledger.outside.PublishedTree.N23;
import static bedledger.ledger.outside.PublishedTree.N45;
import static bedledger.ledger.outside.PublishedTree.N47;
import static bedledger.ledger.outside.PublishedTree.N67;
import static bedledger.ledger.outside.PublishedTree.hash;
import static bedledger.ledger.outside.PublishedTree.l;
import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;

import bedledger.ledger.tree.Frontier;
import bedledger.ledger.tree.Hash;
import bedledger.ledger.tree.Merkle;
import bedledger.ledger.tree.Proofs;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** RFC 9162 §2.1 against the published tree; the two fold hashes were computed apart from this program, for this project. */
class MerkleVectorsTest {

    @Test
    void hashesLeavesAndNodesAsPublished() {
        assertThat(Merkle.emptyRoot()).isEqualTo(PublishedTree.ROOTS.get(0));
        assertThat(Merkle.leaf(new byte[0])).isEqualTo(l(0));
        assertThat(Merkle.leaf("L123456".getBytes(US_ASCII)))
                .isEqualTo(hash("395aa064aa4c29f7010acfe3f25db9485bbd4b91897b6ad7ad547639252b4d56"));
        for (int i = 0; i < 8; i++) {
            assertThat(PublishedTree.leaf(i)).isEqualTo(l(i));
        }
        assertThat(Merkle.node(l(0), l(1))).isEqualTo(N01);
        assertThat(Merkle.node(l(2), l(3))).isEqualTo(N23);
        assertThat(Merkle.node(l(4), l(5))).isEqualTo(N45);
        assertThat(Merkle.node(l(6), l(7))).isEqualTo(N67);
        assertThat(Merkle.node(N01, N23)).isEqualTo(N03);
        assertThat(Merkle.node(N45, N67)).isEqualTo(N47);
    }

    @Test
    void growsThroughThePublishedRoots() {
        Frontier tree = Frontier.empty();
        assertThat(tree.root()).isEqualTo(PublishedTree.ROOTS.get(0));
        for (int size = 1; size <= 8; size++) {
            tree = tree.append(PublishedTree.leaf(size - 1));
            assertThat(tree.root()).as("size %s", size).isEqualTo(PublishedTree.ROOTS.get(size));
            assertThat(Frontier.parse(tree.toBytes())).isEqualTo(tree);
        }
    }

    static Stream<Arguments> inclusionPaths() {
        return Stream.of(
                Arguments.of(0, 1, List.of(), "published"),
                Arguments.of(0, 8, List.of(l(1), N23, N47), "published"),
                Arguments.of(5, 8, List.of(l(4), N67, N03), "published"),
                Arguments.of(2, 3, List.of(N01), "published"),
                Arguments.of(1, 5, List.of(l(0), N23, l(4)), "published"),
                Arguments.of(6, 7, List.of(N45, N03), "computed for this project"),
                Arguments.of(3, 4, List.of(l(2), N01), "computed for this project"));
    }

    @ParameterizedTest(name = "entry {0} of {1}, {3}")
    @MethodSource("inclusionPaths")
    void leadsFromLeafToRoot(int index, int size, List<Hash> path, String source) {
        assertThat(Proofs.inclusion(index, size, PublishedTree::leaf)).isEqualTo(path);
        Proofs.verifyInclusion(l(index), index, size, path, PublishedTree.ROOTS.get(size));
    }

    static Stream<Arguments> consistencyProofs() {
        Hash n46 = hash("837dbb152e9b079010717e84e865da4ebc0fa198a806d59d31bf15accef22d0e");
        return Stream.of(
                Arguments.of(1, 1, List.of(), "published"),
                Arguments.of(1, 8, List.of(l(1), N23, N47), "published"),
                Arguments.of(6, 8, List.of(N45, N67, N03), "published"),
                Arguments.of(2, 5, List.of(N23, l(4)), "published"),
                Arguments.of(6, 7, List.of(N45, l(6), N03), "published"),
                Arguments.of(3, 7, List.of(l(2), l(3), N01, n46), "computed for this project"),
                Arguments.of(4, 8, List.of(N47), "computed for this project"));
    }

    @ParameterizedTest(name = "{0} entries and {1}, {3}")
    @MethodSource("consistencyProofs")
    void leadsFromTheOlderTreeToTheNewer(int older, int newer, List<Hash> proof, String source) {
        assertThat(Proofs.consistency(older, newer, PublishedTree::leaf)).isEqualTo(proof);
        Proofs.verifyConsistency(older, newer, proof, PublishedTree.ROOTS.get(older), PublishedTree.ROOTS.get(newer));
    }

    @Test
    void foldsAllInclusionPathsToOneHash() {
        String lines = IntStream.rangeClosed(1, 8)
                .boxed()
                .flatMap(n ->
                        IntStream.range(0, n).mapToObj(m -> line(m, n, Proofs.inclusion(m, n, PublishedTree::leaf))))
                .collect(Collectors.joining());
        assertThat(Sha256.hex(lines.getBytes(US_ASCII)))
                .isEqualTo("1b500e2b061d9bf5c9e121804be985d4802fde066ce0d7d18f03b17d1bac4365");
    }

    @Test
    void foldsAllConsistencyProofsToOneHash() {
        String lines = IntStream.rangeClosed(1, 8)
                .boxed()
                .flatMap(n -> IntStream.rangeClosed(1, n)
                        .mapToObj(m -> line(m, n, Proofs.consistency(m, n, PublishedTree::leaf))))
                .collect(Collectors.joining());
        assertThat(Sha256.hex(lines.getBytes(US_ASCII)))
                .isEqualTo("954472d64b440c8f26770eb9e6563e5e29cc141978ba343303d6c1aed2f92820");
    }

    private static String line(int m, int n, List<Hash> hashes) {
        return m + " " + n + hashes.stream().map(hash -> " " + hash).collect(Collectors.joining()) + "\n";
    }
}
