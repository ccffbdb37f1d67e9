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
 * Three quarters of an hour of kills, under the profile {@code kills}.
 *
 * <p>H2 without a journal loses acknowledged commits once it reuses space, which it does RETENTION_TIME after it freed it. The program
 * does not let it; most of these kills do, so that the journal is needed, and shorten the time to a second; the rest run it as it is.
 */
@Tag("kills")
class ManyKillsTest {
    private static final int ROUNDS_TO_A_BOOK = 20;
    private final Tally tally = new Tally();
    private int longLives;

    @TempDir
    Path scratch;

    @ParameterizedTest(name = "200 kills where space is reused after a second, seed {0}")
    @ValueSource(longs = 20260302)
    void losesNothingWhereSpaceIsReused(long seed) throws Exception {
        kill(200, new SplittableRandom(seed), ";RETENTION_TIME=1000" + Database.REUSE);
        System.out.println("RETENTION_TIME=1000: " + tally + "; " + longLives + " killed 2 to 7 s after opening");
        assertThat(longLives).isGreaterThanOrEqualTo(100);
        assertNothingLost(200);
    }

    @ParameterizedTest(name = "60 kills of the program as it is, seed {0}")
    @ValueSource(longs = 20260304)
    void losesNothingWithTheProgramsOwnSettings(long seed) throws Exception {
        kill(60, new SplittableRandom(seed), Database.NO_REUSE);
        System.out.println("own settings: " + tally + "; " + longLives + " killed 2 to 7 s after opening");
        assertNothingLost(60);
    }

    private void kill(int kills, SplittableRandom random, String more) throws Exception {
        for (int done = 0; done < kills; done += ROUNDS_TO_A_BOOK) {
            Killings book = new Killings(scratch, more, tally);
            for (int round = 1; round <= ROUNDS_TO_A_BOOK; round++) {
                boolean streams = random.nextInt(10) < 8;
                boolean lives = random.nextInt(10) < 7;
                Moment moment = lives
                        ? new Moment(1, random.nextLong(2000, 7000))
                        : new Moment(random.nextInt(2), random.nextLong(50, 1500));
                longLives += lives ? 1 : 0;
                boolean look = round == ROUNDS_TO_A_BOOK || random.nextInt(4) > 0;
                book.kill(streams ? "stream" : "one-shot", random, moment, look);
            }
            report(book);
        }
    }

    @ParameterizedTest(name = "10 kills at the default retention time, after 50 to 70 s, seed {0}")
    @ValueSource(longs = 20260303)
    void losesNothingAtTheDefaultRetentionTime(long seed) throws Exception {
        SplittableRandom random = new SplittableRandom(seed);
        for (int kills = 0; kills < 10; kills += 2) {
            Killings book = new Killings(scratch, Database.REUSE, tally);
            for (int round = 0; round < 2; round++) {
                book.kill("stream", random, new Moment(1, random.nextLong(50_000, 70_000)), true);
            }
            report(book);
        }
        System.out.println("default retention: " + tally);
        assertNothingLost(10);
    }

    private void report(Killings book) {
        System.out.println("so far " + tally + "; this book " + book.entries() + " entries, journal "
                + book.folder().journal().toFile().length() + " bytes, database "
                + book.folder().databaseFile().toFile().length());
    }

    private void assertNothingLost(int kills) {
        assertThat(tally.kills).isEqualTo(kills);
        assertThat(tally.lost + tally.changed + tally.halfWritten)
                .as(tally.toString())
                .isZero();
    }
}
