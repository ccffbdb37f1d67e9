package bedledger.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.ledger.store.Killings.Moment;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Half an hour of kills, under the profile {@code kills}.
 *
 * <p>H2 without a journal loses acknowledged commits once it reuses space, which it does RETENTION_TIME after it freed it: so the
 * time is shortened to a second for most, and most live longer than that; the others are killed while they open and heal.
 */
@Tag("kills")
class ManyKillsTest {
    private static final int ROUNDS_TO_A_BOOK = 20;

    @TempDir
    Path scratch;

    @ParameterizedTest(name = "200 kills at a retention time of one second, seed {0}")
    @ValueSource(longs = 20260302)
    void losesNothingWhereSpaceIsReused(long seed) throws Exception {
        SplittableRandom random = new SplittableRandom(seed);
        Tally tally = new Tally();
        int pastRetention = 0;
        for (int book = 0; book < 10; book++) {
            Killings killings = new Killings(scratch, ";RETENTION_TIME=1000", tally);
            for (int round = 0; round < ROUNDS_TO_A_BOOK; round++) {
                boolean streams = random.nextInt(10) < 8;
                boolean lives = random.nextInt(10) < 7;
                Moment moment = lives
                        ? new Moment(1, random.nextLong(2000, 7000))
                        : new Moment(random.nextInt(2), random.nextLong(50, 1500));
                pastRetention += lives ? 1 : 0;
                boolean last = round == ROUNDS_TO_A_BOOK - 1;
                killings.kill(streams ? "stream" : "one-shot", random, moment, last || random.nextInt(4) > 0);
            }
            report(tally, killings);
        }
        System.out.println("RETENTION_TIME=1000: " + tally + "; " + pastRetention + " killed 2 to 7 s after opening");
        assertThat(pastRetention).isGreaterThanOrEqualTo(100);
        assertNothingLost(tally, 200);
    }

    @ParameterizedTest(name = "10 kills at the default retention time, after 50 to 70 s, seed {0}")
    @ValueSource(longs = 20260303)
    void losesNothingAtTheDefaultRetentionTime(long seed) throws Exception {
        SplittableRandom random = new SplittableRandom(seed);
        Tally tally = new Tally();
        for (int book = 0; book < 5; book++) {
            Killings killings = new Killings(scratch, "", tally);
            for (int round = 0; round < 2; round++) {
                killings.kill("stream", random, new Moment(1, random.nextLong(50_000, 70_000)), true);
            }
            report(tally, killings);
        }
        System.out.println("default retention: " + tally);
        assertNothingLost(tally, 10);
    }

    private static void report(Tally tally, Killings killings) {
        System.out.println("so far " + tally + "; this book " + killings.entries() + " entries, journal "
                + killings.folder().journal().toFile().length() + " bytes, database "
                + killings.folder().databaseFile().toFile().length());
    }

    private static void assertNothingLost(Tally tally, int kills) {
        assertThat(tally.kills).isEqualTo(kills);
        assertThat(tally.lost + tally.changed + tally.halfWritten)
                .as(tally.toString())
                .isZero();
    }
}
