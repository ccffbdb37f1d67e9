package bedledger.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NaturalOrderTest {
    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}");

    @Test
    void ordersNamesAsPeopleDo() {
        assertThat(List.of("N10", "N2", "South", "N02", "N2a", "N").stream().sorted(NaturalOrder.INSTANCE))
                .containsExactly("N", "N02", "N2", "N2a", "N10", "South");
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void isTheOrderOfNamesWithTheirNumbersPadded(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int times = 0; times < 20_000; times++) {
            String one = name(random);
            String other = name(random);
            assertThat(Integer.signum(NaturalOrder.INSTANCE.compare(one, other)))
                    .as(one + " and " + other)
                    .isEqualTo(Integer.signum(byPadding(one, other)));
        }
    }

    private static int byPadding(String one, String other) {
        int padded = padded(one).compareTo(padded(other));
        return padded == 0 ? one.compareTo(other) : padded;
    }

    private static String padded(String name) {
        return NUMBER.matcher(name)
                .replaceAll(number -> "0".repeat(9 - number.group().length()) + number.group());
    }

    private static String name(RandomGenerator random) {
        StringBuilder name = new StringBuilder();
        for (int length = random.nextInt(14); length > 0; length--) {
            name.append("0011289-/:aNü".charAt(random.nextInt(13)));
        }
        return name.toString();
    }
}
