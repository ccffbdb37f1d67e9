package bedledger.domain;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.ActId;
import java.time.Instant;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ActIdsTest {
    private static final Instant NOW = Instant.parse("2025-07-14T20:30:00.123Z");

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(ints = {1, 2, 3})
    void risesEvenWhileTheClockStandsOrGoesBack(int seed) {
        ActIds ids = new ActIds(new Random(seed));
        assertThat(Stream.generate(() -> ids.next(NOW)).limit(10_000))
                .isSorted()
                .doesNotHaveDuplicates();
        ActId last = ids.next(NOW);
        assertThat(ids.next(NOW.minusSeconds(5))).isGreaterThan(last);
        assertThat(ids.next(NOW.plusSeconds(5))).isGreaterThan(last);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(ints = {1, 2, 3})
    void isAUuidOfVersionSevenWithTheMillisecondInFront(int seed) {
        UUID id = UUID.fromString(new ActIds(new Random(seed)).next(NOW).toString());
        assertThat(id.version()).isEqualTo(7);
        assertThat(id.variant()).isEqualTo(2);
        assertThat(id.getMostSignificantBits() >>> 16).isEqualTo(NOW.toEpochMilli());
    }
}
