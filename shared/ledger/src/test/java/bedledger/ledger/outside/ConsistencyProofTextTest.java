package bedledger.ledger.outside;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.ConsistencyProof;
import bedledger.ledger.note.RawEd25519;
import bedledger.ledger.note.SigningKey;
import bedledger.ledger.tree.Frontier;
import bedledger.ledger.tree.Hash;
import bedledger.ledger.tree.Merkle;
import bedledger.ledger.tree.Proofs;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Consistency proofs between a thousand checkpoints, read from their text and verified by the algorithm of RFC 9162 §2.1.4.2, written down
 * here from its text with the JDK alone.
 *
 * <p>Any two of them: {@code -Dpairs=all} tries all 499,500 pairs, without it some thousands drawn by a seed.
 */
class ConsistencyProofTextTest {
    private static final int CHECKPOINTS = 1_000;
    private static final int DRAWN = 3_000;
    private static final String ORIGIN = "example.com/farm-log-test";
    private static final SigningKey KEY = RawEd25519.key(
            "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
            ORIGIN + "+fec874ed+AddamAGCsQq31Uv+08lkBzoO4XLz2qYjJa8CGmj3B1Ea");

    private final List<Hash> leaves = new ArrayList<>();
    private final List<Hash> roots = new ArrayList<>();

    ConsistencyProofTextTest() {
        Frontier tree = Frontier.empty();
        roots.add(tree.root());
        for (int entry = 1; entry <= CHECKPOINTS; entry++) {
            leaves.add(Merkle.leaf(("entry " + entry).getBytes(UTF_8)));
            tree = tree.append(leaves.get(entry - 1));
            roots.add(tree.root());
        }
    }

    private String text(int older, int newer) {
        String checkpoint = new Checkpoint(ORIGIN, newer, roots.get(newer)).text();
        List<Hash> path = Proofs.consistency(older, newer, index -> leaves.get((int) index));
        return new ConsistencyProof(older, path, KEY.sign(checkpoint)).text();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = 9162)
    void holdBetweenAnyTwoOfAThousandCheckpoints(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        int tried = 0;
        if ("all".equals(System.getProperty("pairs"))) {
            for (int newer = 2; newer <= CHECKPOINTS; newer++) {
                for (int older = 1; older < newer; older++, tried++) {
                    holds(older, newer);
                }
            }
            assertThat(tried).isEqualTo(CHECKPOINTS * (CHECKPOINTS - 1) / 2);
            return;
        }
        for (; tried < DRAWN; tried++) {
            int newer = random.nextInt(2, CHECKPOINTS + 1);
            holds(random.nextInt(1, newer), newer);
        }
    }

    private void holds(int older, int newer) {
        List<byte[]> path = Proofs.consistency(older, newer, index -> leaves.get((int) index)).stream()
                .map(Hash::bytes)
                .toList();
        assertThat(verifies(
                        older,
                        newer,
                        path,
                        roots.get(older).bytes(),
                        roots.get(newer).bytes()))
                .as("%d to %d", older, newer)
                .isTrue();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = 2141)
    void failWhereAnyHashOrRootOrSizeIsAnother(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int tried = 0; tried < DRAWN; tried++) {
            int newer = random.nextInt(2, CHECKPOINTS + 1);
            int older = random.nextInt(1, newer);
            List<byte[]> path = new ArrayList<>();
            Proofs.consistency(older, newer, index -> leaves.get((int) index)).forEach(hash -> path.add(hash.bytes()));
            byte[] first = roots.get(older).bytes();
            byte[] second = roots.get(newer).bytes();
            byte[] spoilt = List.of(path.get(random.nextInt(path.size())), first, second)
                    .get(random.nextInt(3));
            spoilt[random.nextInt(spoilt.length)] ^= (byte) (1 << random.nextInt(8));
            assertThat(verifies(older, newer, path, first, second))
                    .as("%d to %d", older, newer)
                    .isFalse();
        }
    }

    @Test
    void theTextHoldsTheProofAndReadsBack() {
        String text = text(617, 1_000);
        String[] lines = text.substring(0, text.indexOf("\n\n")).split("\n", -1);
        assertThat(lines[0]).isEqualTo("old 617");
        List<byte[]> path = Arrays.stream(lines, 1, lines.length)
                .map(line -> Base64.getDecoder().decode(line))
                .toList();
        assertThat(verifies(
                        617,
                        1_000,
                        path,
                        roots.get(617).bytes(),
                        roots.get(1_000).bytes()))
                .isTrue();
        assertThat(text.substring(text.indexOf("\n\n") + 2)).startsWith(ORIGIN + "\n1000\n");
        assertThat(ConsistencyProof.parse(text.getBytes(UTF_8)).text()).isEqualTo(text);
    }

    /** RFC 9162 §2.1.4.2, step by step, for 0 &lt; first &lt; second. */
    private static boolean verifies(long first, long second, List<byte[]> given, byte[] firstHash, byte[] secondHash) {
        List<byte[]> path = new ArrayList<>(given);
        if (path.isEmpty()) { // step 1
            return false;
        }
        if (Long.bitCount(first) == 1) { // step 2
            path.add(0, firstHash);
        }
        long fn = first - 1; // step 3
        long sn = second - 1;
        while ((fn & 1) == 1) { // step 4
            fn >>= 1;
            sn >>= 1;
        }
        byte[] fr = path.get(0); // step 5
        byte[] sr = path.get(0);
        for (byte[] c : path.subList(1, path.size())) { // step 6
            if (sn == 0) {
                return false;
            }
            if ((fn & 1) == 1 || fn == sn) {
                fr = node(c, fr);
                sr = node(c, sr);
                while ((fn & 1) == 0 && fn != 0) {
                    fn >>= 1;
                    sn >>= 1;
                }
            } else {
                sr = node(sr, c);
            }
            fn >>= 1;
            sn >>= 1;
        }
        return Arrays.equals(fr, firstHash) && Arrays.equals(sr, secondHash) && sn == 0; // step 7
    }

    private static byte[] node(byte[] left, byte[] right) {
        try {
            MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
            sha256.update((byte) 1);
            sha256.update(left);
            return sha256.digest(right);
        } catch (NoSuchAlgorithmException everyJdkHasIt) {
            throw new IllegalStateException(everyJdkHasIt);
        }
    }
}
