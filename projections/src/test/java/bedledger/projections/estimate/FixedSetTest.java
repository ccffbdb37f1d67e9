package bedledger.projections.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SortedSet;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FixedSetTest {
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void holdsWhatBothSetsHoldInOrder(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int times = 0; times < 2000; times++) {
            SortedSet<Long> one = some(random);
            SortedSet<Long> other = some(random);
            SortedSet<Long> both = new TreeSet<>(one);
            both.addAll(other);

            FixedSet<Long> together = FixedSet.of(one).and(FixedSet.of(other));

            assertThat(together).containsExactlyElementsOf(both).isEqualTo(both);
            for (long member = 0; member < 12; member++) {
                assertThat(together.contains(member)).isEqualTo(both.contains(member));
                assertThat(together.headSet(member)).isEqualTo(both.headSet(member));
            }
        }
    }

    private static SortedSet<Long> some(RandomGenerator random) {
        SortedSet<Long> some = new TreeSet<>();
        for (int size = random.nextInt(8); size > 0; size--) {
            some.add(random.nextLong(12));
        }
        return some;
    }
}
