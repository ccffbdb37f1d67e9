package bedledger.ledger.outside;

import static bedledger.ledger.outside.PublishedTree.ROOTS;
import static bedledger.ledger.outside.PublishedTree.leaf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedledger.ledger.tree.Hash;
import bedledger.ledger.tree.ProofRejected;
import bedledger.ledger.tree.ProofRejected.Reason;
import bedledger.ledger.tree.Proofs;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Proofs that must fail.
 *
 * <p>The kinds are those of the published must-fail files (transparency-dev/merkle, testdata/inclusion and
 * testdata/consistency), derived here anew from the five published proofs of each kind; the files themselves are not copied.
 * The kinds that do not change a size are tried on every pair up to eight entries as well.
 */
class MustFailProofsTest {

    private static final Hash SOME =
            PublishedTree.hash("abacaba000000000000000000000000000000000000000000060061e00123456");
    private static final int[][] INCLUSION = {{0, 1}, {0, 8}, {5, 8}, {2, 3}, {1, 5}};
    private static final int[][] CONSISTENCY = {{1, 8}, {6, 8}, {2, 5}, {6, 7}};

    private record Probe(String what, Runnable check) {

        DynamicTest test() {
            return DynamicTest.dynamicTest(
                    what, () -> assertThatThrownBy(check::run).isInstanceOf(ProofRejected.class));
        }
    }

    @TestFactory
    Stream<DynamicTest> refusesEveryInclusionPathThatWasTamperedWith() {
        List<Probe> probes = new ArrayList<>();
        for (int[] pair : INCLUSION) {
            sizesOfInclusion(probes, pair[0], pair[1]);
        }
        for (int size = 1; size <= 8; size++) {
            for (int index = 0; index < size; index++) {
                hashesOfInclusion(probes, index, size);
            }
        }
        assertThat(probes).hasSizeGreaterThan(200);
        return probes.stream().map(Probe::test);
    }

    private static void sizesOfInclusion(List<Probe> probes, long index, long size) {
        List<Hash> path = Proofs.inclusion(index, size, PublishedTree::leaf);
        Hash root = ROOTS.get((int) size);
        long[][] wrong = {{index - 1, size}, {index + 1, size}, {index ^ 2, size}, {index, size * 2}, {index, size / 2}
        };
        for (long[] at : wrong) {
            String what = "entry %d of %d passed off as %d of %d".formatted(index, size, at[0], at[1]);
            probes.add(new Probe(what, () -> Proofs.verifyInclusion(leaf(index), at[0], at[1], path, root)));
        }
    }

    private static void hashesOfInclusion(List<Probe> probes, int index, int size) {
        List<Hash> path = Proofs.inclusion(index, size, PublishedTree::leaf);
        Hash root = ROOTS.get(size);
        String of = " (entry %d of %d)".formatted(index, size);
        probes.add(new Probe("wrong leaf" + of, () -> Proofs.verifyInclusion(SOME, index, size, path, root)));
        for (Hash wrong : List.of(ROOTS.get(0), SOME)) {
            probes.add(
                    new Probe("wrong root" + of, () -> Proofs.verifyInclusion(leaf(index), index, size, path, wrong)));
        }
        spoilt(path, root, root)
                .forEach(bad -> probes.add(new Probe(
                        bad.what + of, () -> Proofs.verifyInclusion(leaf(index), index, size, bad.hashes, root))));
    }

    @TestFactory
    Stream<DynamicTest> refusesEveryConsistencyProofThatWasTamperedWith() {
        List<Probe> probes = new ArrayList<>();
        for (int[] pair : CONSISTENCY) {
            sizesOfConsistency(probes, pair[0], pair[1]);
        }
        for (int newer = 2; newer <= 8; newer++) {
            for (int older = 1; older < newer; older++) {
                hashesOfConsistency(probes, older, newer);
            }
        }
        assertThat(probes).hasSizeGreaterThan(200);
        return probes.stream().map(Probe::test);
    }

    private static void sizesOfConsistency(List<Probe> probes, long older, long newer) {
        List<Hash> proof = Proofs.consistency(older, newer, PublishedTree::leaf);
        Hash first = ROOTS.get((int) older);
        Hash second = ROOTS.get((int) newer);
        long[][] wrong = {
            {older - 1, newer}, {older + 1, newer}, {older ^ 2, newer}, {older, newer * 2}, {older, newer / 2}
        };
        for (long[] at : wrong) {
            String what = "%d and %d entries passed off as %d and %d".formatted(older, newer, at[0], at[1]);
            probes.add(new Probe(what, () -> Proofs.verifyConsistency(at[0], at[1], proof, first, second)));
        }
    }

    private static void hashesOfConsistency(List<Probe> probes, int older, int newer) {
        List<Hash> proof = Proofs.consistency(older, newer, PublishedTree::leaf);
        Hash first = ROOTS.get(older);
        Hash second = ROOTS.get(newer);
        String of = " (%d and %d entries)".formatted(older, newer);
        probes.add(
                new Probe("wrong older root" + of, () -> Proofs.verifyConsistency(older, newer, proof, SOME, second)));
        probes.add(
                new Probe("wrong newer root" + of, () -> Proofs.verifyConsistency(older, newer, proof, first, SOME)));
        probes.add(new Probe("swapped roots" + of, () -> Proofs.verifyConsistency(older, newer, proof, second, first)));
        spoilt(proof, first, second)
                .forEach(bad -> probes.add(new Probe(
                        bad.what + of, () -> Proofs.verifyConsistency(older, newer, bad.hashes, first, second))));
        probes.add(new Probe("no proof" + of, () -> Proofs.verifyConsistency(older, newer, List.of(), first, second)));
    }

    private record Spoilt(String what, List<Hash> hashes) {}

    private static List<Spoilt> spoilt(List<Hash> proof, Hash first, Hash second) {
        List<Spoilt> all = new ArrayList<>();
        for (Hash extra : List.of(first, second, SOME)) {
            all.add(new Spoilt("a hash more at the end", with(proof, proof.size(), extra)));
            all.add(new Spoilt("a hash more at the front", with(proof, 0, extra)));
        }
        for (int i = 0; i < proof.size(); i++) {
            for (int bit : new int[] {0, 3, 4, 7}) {
                all.add(new Spoilt("bit %d of hash %d changed".formatted(bit, i), flipped(proof, i, bit)));
            }
            List<Hash> fewer = new ArrayList<>(proof);
            fewer.remove(i);
            all.add(new Spoilt("hash %d taken out".formatted(i), fewer));
            all.add(new Spoilt("hash %d twice".formatted(i), with(proof, i, proof.get(i))));
        }
        if (proof.size() > 1) {
            all.add(new Spoilt("a hash put between", with(proof, 1, SOME)));
        }
        return all;
    }

    private static List<Hash> with(List<Hash> proof, int at, Hash extra) {
        List<Hash> more = new ArrayList<>(proof);
        more.add(at, extra);
        return more;
    }

    private static List<Hash> flipped(List<Hash> proof, int at, int bit) {
        byte[] bytes = proof.get(at).bytes();
        bytes[0] ^= (byte) (1 << bit);
        List<Hash> changed = new ArrayList<>(proof);
        changed.set(at, Hash.of(bytes));
        return changed;
    }

    /** The published kinds "garbage" and "WrongLeaf": what is not 32 bytes never gets as far as a proof. */
    @ParameterizedTest(name = "{0} bytes")
    @ValueSource(ints = {0, 9, 31, 33})
    void refusesAHashOfAnotherLength(int length) {
        assertThatIllegalArgumentException().isThrownBy(() -> Hash.of(new byte[length]));
    }

    /** The published folder consistency/additional. */
    @Test
    void refusesSizesThatProveNothing() {
        Hash empty = ROOTS.get(0);
        List<Hash> none = List.of();
        assertRejected(Reason.OUT_OF_RANGE, 0, 1, none, empty, ROOTS.get(1));
        assertRejected(Reason.OUT_OF_RANGE, 0, 1, List.of(empty), empty, empty);
        assertRejected(Reason.OUT_OF_RANGE, 1, 0, none, ROOTS.get(1), empty);
        assertRejected(Reason.OUT_OF_RANGE, 2, 1, none, ROOTS.get(2), ROOTS.get(1));
        assertRejected(Reason.OUT_OF_RANGE, -1, 1, none, SOME, ROOTS.get(1));
        assertRejected(Reason.TOO_SHORT, 3, 7, none, ROOTS.get(3), ROOTS.get(7));
        assertRejected(Reason.ROOT_DIFFERS, 0, 0, none, empty, SOME);
        assertRejected(Reason.ROOT_DIFFERS, 1, 1, none, ROOTS.get(1), SOME);
        assertRejected(Reason.TOO_LONG, 0, 0, List.of(empty), empty, empty);
        assertRejected(Reason.TOO_LONG, 1, 1, List.of(empty), ROOTS.get(1), ROOTS.get(1));
        assertThatCode(() -> Proofs.verifyConsistency(0, 0, none, empty, empty)).doesNotThrowAnyException();
        assertThatCode(() -> Proofs.verifyConsistency(1, 1, none, ROOTS.get(1), ROOTS.get(1)))
                .doesNotThrowAnyException();
    }

    private static void assertRejected(
            Reason reason, long older, long newer, List<Hash> proof, Hash first, Hash second) {
        assertThatThrownBy(() -> Proofs.verifyConsistency(older, newer, proof, first, second))
                .as("%d and %d", older, newer)
                .isInstanceOfSatisfying(
                        ProofRejected.class,
                        rejected -> assertThat(rejected.reason()).isEqualTo(reason));
    }
}
