package bedledger.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.ledger.store.Killings.Moment;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A few kills for the ordinary build; {@link ManyKillsTest} has the many. */
class KillTest {
    @TempDir
    Path scratch;

    @ParameterizedTest(name = "processes that write on and on, seed {0}")
    @ValueSource(longs = 11)
    void losesNothingAcknowledgedWhenAWriterIsKilled(long seed) throws Exception {
        SplittableRandom random = new SplittableRandom(seed);
        Tally tally = new Tally();
        Killings book = new Killings(scratch, ";RETENTION_TIME=200" + Database.REUSE, tally);
        for (int kill = 0; kill < 4; kill++) {
            long said = kill == 2 ? 1 : random.nextLong(10_000, 100_000);
            book.kill("stream", random, new Moment(said, random.nextLong(100)), kill != 1);
        }
        assertThat(tally.acknowledged).as(tally.toString()).isGreaterThan(60);
        assertNothingLost(tally, 4);
    }

    @ParameterizedTest(name = "processes that open, write one and close, seed {0}")
    @ValueSource(longs = 12)
    void losesNothingAcknowledgedWhenACommandIsKilled(long seed) throws Exception {
        SplittableRandom random = new SplittableRandom(seed);
        Tally tally = new Tally();
        Killings book = new Killings(scratch, Database.NO_REUSE, tally);
        for (int kill = 0; kill < 2; kill++) {
            book.kill("one-shot", random, new Moment(random.nextLong(1000, 3000), random.nextLong(100)), true);
        }
        assertThat(tally.acknowledged).as(tally.toString()).isGreaterThan(2);
        assertNothingLost(tally, 2);
    }

    private static void assertNothingLost(Tally tally, int kills) {
        System.out.println(tally);
        assertThat(tally.kills).isEqualTo(kills);
        assertThat(tally.lost + tally.changed + tally.halfWritten)
                .as(tally.toString())
                .isZero();
    }
}
