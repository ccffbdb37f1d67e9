package bedledger.ledger.verify;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.ledger.tree.Frontier;
import bedledger.ledger.tree.Merkle;
import bedledger.ledger.tree.Proofs;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two programs for one tree, written from two sections of the standard, and the proofs between all their sizes. */
class TreeHeadTest {

    @ParameterizedTest(name = "300 random entries, seed {0}")
    @ValueSource(longs = {1, 2})
    void agreesWithTheTreeThatWrites(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        TreeHead head = new TreeHead();
        Frontier frontier = Frontier.empty();
        for (int size = 0; size <= 300; size++) {
            assertThat(head.root())
                    .as("size %s", size)
                    .isEqualTo(frontier.root().bytes());
            byte[] entry = new byte[random.nextInt(40)];
            random.nextBytes(entry);
            head.add(entry);
            frontier = frontier.append(Merkle.leaf(entry));
        }
    }

    @ParameterizedTest(name = "all sizes up to 40, seed {0}")
    @ValueSource(longs = {1})
    void provesEveryOlderTreeToBeTheBeginning(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Frontier> trees = new ArrayList<>(List.of(Frontier.empty()));
        List<byte[]> entries = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            byte[] entry = new byte[8];
            random.nextBytes(entry);
            entries.add(entry);
            trees.add(trees.get(i).append(Merkle.leaf(entry)));
        }
        int proofs = 0;
        for (int newer = 1; newer <= 40; newer++) {
            for (int older = 1; older <= newer; older++, proofs++) {
                Proofs.verifyConsistency(
                        older,
                        newer,
                        Proofs.consistency(older, newer, index -> Merkle.leaf(entries.get((int) index))),
                        trees.get(older).root(),
                        trees.get(newer).root());
                Proofs.verifyInclusion(
                        Merkle.leaf(entries.get(older - 1)),
                        older - 1,
                        newer,
                        Proofs.inclusion(older - 1, newer, index -> Merkle.leaf(entries.get((int) index))),
                        trees.get(newer).root());
            }
        }
        assertThat(proofs).as("proofs of each kind").isEqualTo(820);
    }
}
