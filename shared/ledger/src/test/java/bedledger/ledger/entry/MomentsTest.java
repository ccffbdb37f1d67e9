package bedledger.ledger.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MomentsTest {
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void readsAMomentAsTheStandardLibraryDoes(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int times = 0; times < 20_000; times++) {
            StringBuilder text = new StringBuilder(
                    Moments.written(Instant.ofEpochMilli(random.nextLong(-60_000_000_000_000L, 4_000_000_000_000L))));
            for (int changes = random.nextInt(3); changes > 0; changes--) {
                text.setCharAt(random.nextInt(text.length()), "0123456789-:.TZ".charAt(random.nextInt(15)));
            }
            assertThat(read(text.toString(), Moments::moment))
                    .as(text.toString())
                    .isEqualTo(read(text.toString(), Instant::parse));
        }
    }

    @Test
    void refusesAnHourAndADayThatAreNot() {
        assertThat(read("2025-07-08T25:00:00.000Z", Moments::moment)).isEmpty();
        assertThat(read("2025-02-30T12:00:00.000Z", Moments::moment)).isEmpty();
    }

    private static Optional<Instant> read(String text, Function<String, Instant> reading) {
        try {
            return Optional.of(reading.apply(text));
        } catch (DateTimeParseException refused) {
            return Optional.empty();
        }
    }
}
