package bedledger.projections.breakdown;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.BedId;
import bedledger.language.SeasonBook;
import bedledger.projections.history.BedAreas;
import bedledger.projections.weather.DayWeather;
import bedledger.projections.weather.Origin;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold in any weather and after any work. */
class CoursePropertiesTest {
    private static final LocalDate START = LocalDate.parse("2025-05-01");
    private static final int DAYS = 200;

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 25);
    }

    private static RandomGenerator random(int seed) {
        return RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    }

    /** Any weather with soil below the optimum, so that warmer is never slower. */
    private static Weather weather(int seed) {
        return day -> {
            RandomGenerator chance = random(seed * 100_003 + (int) day.toEpochDay());
            double mean = -5 + 33 * chance.nextDouble();
            OptionalDouble rain = chance.nextInt(10) == 0
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(chance.nextBoolean() ? 0 : 12 * chance.nextDouble());
            return Optional.of(new DayWeather(
                    day,
                    mean - 4,
                    mean + 4,
                    rain,
                    Origin.CSV_FILE,
                    rain.isPresent() ? Optional.of(Origin.CSV_FILE) : Optional.empty()));
        };
    }

    private static SeasonBook book() {
        SeasonBook book = new SeasonBook();
        book.on("2025-01-01").did("register-field", "field=F", "gross=0.01ha");
        book.did("lay-out", "beds=A B", "field=F", "length=10m", "width=1m");
        return book;
    }

    private static BedDays days(SeasonBook book, String bed, int seed) {
        Climate climate = new Climate(weather(seed), START.minusDays(14), START.plusDays(DAYS));
        return new BedDays(book.farm(), new BedId(bed), climate, new BedAreas(book.farm()), START.plusDays(DAYS));
    }

    private static Part part(BedDays days, double rate) {
        return new Part(days, rate, 3, 14, 14 + DAYS, Assumptions.BEST);
    }

    private static void work(SeasonBook book, RandomGenerator chance) {
        boolean tarp = false;
        for (int at = 0; at < 8; at++) {
            book.on(START.plusDays(at * 20L + chance.nextInt(20)).toString());
            switch (chance.nextInt(5)) {
                case 0 -> book.did("flail", "beds=A");
                case 1 -> book.did("harrow", "beds=A", "passes=" + (1 + chance.nextInt(3)));
                case 2 -> book.did("till", "beds=A");
                case 3 -> book.did("irrigate", "beds=A", "depth=8mm");
                default -> {
                    book.did(tarp ? "untarp" : "tarp", "beds=A");
                    tarp = !tarp;
                }
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void massIsNeverBelowNothingAndOnlyFalls(int seed) {
        SeasonBook book = book();
        work(book, random(seed));
        Part part = part(days(book, "A", seed), 0.2);
        assertThat(part.left[0]).isEqualTo(1);
        for (int at = 1; at <= DAYS; at++) {
            assertThat(part.left[at]).isBetween(0.0, part.left[at - 1]);
            assertThat(part.onTop[at]).isBetween(0.0, part.left[at] + 1e-12);
        }
        assertThat(part.left[DAYS]).isLessThan(1);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void leavesGoBeforeStalks(int seed) {
        SeasonBook book = book();
        work(book, random(seed));
        BedDays days = days(book, "A", seed);
        Part stalks = part(days, 0.02);
        Part leaves = part(days, 0.06);
        for (int at = 0; at <= DAYS; at++) {
            assertThat(leaves.left[at]).isLessThanOrEqualTo(stalks.left[at]);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void tarpNeverSlowsResidueOnTheGround(int seed) {
        SeasonBook book = book();
        book.on(START.toString()).did("flail", "beds=A B");
        book.did("tarp", "beds=B");
        Part bare = part(days(book, "A", seed), 0.02);
        Part tarped = part(days(book, "B", seed), 0.02);
        for (int at = 0; at <= DAYS; at++) {
            assertThat(tarped.left[at]).isLessThanOrEqualTo(bare.left[at]);
        }
        assertThat(tarped.left[DAYS]).isLessThan(bare.left[DAYS]);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void runningMeanIsThatOfTheSoilStandIn(int seed) {
        Weather weather = weather(seed);
        Climate climate = new Climate(weather, START, START.plusDays(30));
        var soil = new bedledger.projections.weather.SoilWarmth(weather);
        for (int at = 7; at <= 30; at++) {
            assertThat(climate.soil[at])
                    .isCloseTo(soil.on(START.plusDays(at)).orElseThrow(), org.assertj.core.api.Assertions.within(1e-9));
        }
    }
}
