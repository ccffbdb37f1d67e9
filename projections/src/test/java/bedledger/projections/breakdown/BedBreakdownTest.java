package bedledger.projections.breakdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.projections.weather.DayWeather;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BedBreakdownTest {
    private final Coburn farm = new Coburn().broccoli();

    private Coburn flipped() {
        farm.book.on("2013-07-08").did("flail", "beds=C1 C2", "passes=2");
        farm.book.did("tarp", "beds=C1 C2");
        farm.book.on("2013-07-11").did("harrow", "beds=C1 C2", "passes=1", "tarp-folded-back=yes");
        return farm;
    }

    @Test
    void agreesWithALoopOverTheDaysWrittenForThisTest() {
        BedBreakdown bed = flipped().bed("C1", "2013-08-20");
        Weather weather = farm.weather();
        double leaves = 1;
        double stalks = 1;
        double yesterday = 0;
        int dry = 0;
        for (LocalDate day = LocalDate.parse("2013-06-23"); !day.isAfter(bed.on()); day = day.plusDays(1)) {
            DayWeather here = weather.on(day).orElseThrow();
            double rain = here.rainMm().orElseThrow();
            dry = rain > 0 ? 0 : dry + 1;
            double wet = rain > 0 ? Math.min(1, rain / 4 + 0.4 * yesterday) : dry >= 4 ? 0 : 0.4 * yesterday;
            yesterday = wet;
            if (!day.isAfter(LocalDate.parse("2013-07-06"))) {
                continue;
            }
            double loss;
            if (day.isBefore(LocalDate.parse("2013-07-08"))) {
                loss = Math.min(factor(here.mean()), wet);
            } else {
                double soil = 0;
                for (int back = 0; back < 7; back++) {
                    soil += weather.on(day.minusDays(back)).orElseThrow().mean() / 7;
                }
                loss = factor(soil + 2);
            }
            leaves *= 1 - 0.06 * loss;
            stalks *= 1 - 0.02 * loss;
        }
        assertThat(bed.share().orElseThrow().best()).isCloseTo(0.6 * leaves + 0.4 * stalks, within(1e-9));
    }

    private static double factor(double celsius) {
        return (2 * celsius * celsius * 1024 - Math.pow(celsius, 4)) / 1048576;
    }

    @Test
    void harrowingHidesAPartAndDelaysFineSeedByTwoWeeks() {
        BedBreakdown bed = flipped().bed("C1", "2013-07-12");
        assertThat(bed.onTop().orElseThrow().best())
                .isCloseTo(0.85 * bed.left().orElseThrow().best(), within(0.02));
        assertThat(bed.ready(Use.TRANSPLANTS).orElseThrow().earliest()).isEqualTo("2013-07-25");
        assertThat(bed.remarks()).anySatisfy(word -> assertThat(word).contains("worked in"));
    }

    @Test
    void datesStandInTheirOrder() {
        BedBreakdown bed = flipped().bed("C1", "2013-07-20");
        for (ReadyDate date : bed.ready()) {
            LocalDate likely = date.likely().orElseThrow();
            assertThat(date.earliest()).isBeforeOrEqualTo(likely);
            date.latest().ifPresent(latest -> assertThat(latest).isAfterOrEqualTo(likely));
        }
        assertThat(bed.ready(Use.TRANSPLANTS).orElseThrow().likely().orElseThrow())
                .isBefore(bed.ready(Use.LARGE_SEED).orElseThrow().likely().orElseThrow());
        assertThat(bed.ready(Use.LARGE_SEED).orElseThrow().likely().orElseThrow())
                .isBefore(bed.ready(Use.FINE_SEED).orElseThrow().likely().orElseThrow());
    }

    @Test
    void likelyDateIsTheFirstDayOnWhichTheCoverIsLittleEnough() {
        ReadyDate date = flipped().bed("C1", "2013-07-20").ready(Use.LARGE_SEED).orElseThrow();
        LocalDate likely = date.likely().orElseThrow();
        assertThat(farm.bed("C1", likely.toString()).cover().orElseThrow().best())
                .isLessThanOrEqualTo(0.2);
        assertThat(farm.bed("C1", likely.minusDays(1).toString())
                        .cover()
                        .orElseThrow()
                        .best())
                .isGreaterThan(0.2);
    }

    @Test
    void theGrowersOwnLimitTakesThePlaceOfTheTables() {
        flipped();
        LocalDate on = LocalDate.parse("2013-07-20");
        Breakdown own = Breakdown.of(farm.book.farm(), Coburn.TABLES, farm.weather(), on, Optional.of(0.2));
        LocalDate fine = own.bed(new BedId("C1"))
                .orElseThrow()
                .ready(Use.FINE_SEED)
                .orElseThrow()
                .likely()
                .orElseThrow();
        assertThat(farm.bed("C1", "2013-07-20")
                        .ready(Use.LARGE_SEED)
                        .orElseThrow()
                        .likely())
                .contains(fine);
    }

    @Test
    void commonPracticeStandsBesideTheDateWithItsStatus() {
        Practice practice = flipped().bed("C1", "2013-07-20").practice().orElseThrow();
        assertThat(practice.words())
                .contains("5 to 8 weeks", "brassica stalks", "common practice, no source", "2013-08-12");
    }

    @Test
    void standingCropIsNotWaiting() {
        Coburn standing = new Coburn();
        standing.book.on("2013-04-18").did("transplant", "beds=C1", "crop=broccoli", "plants=80");
        assertThat(standing.on("2013-06-01").waiting()).isEmpty();
    }

    @Test
    void plantedBedWaitsNoMore() {
        flipped();
        farm.book.on("2013-08-20").did("untarp", "beds=C1");
        farm.book.did("transplant", "beds=C1", "crop=lettuce", "plants=80");
        assertThat(farm.on("2013-08-21").waiting())
                .extracting(bed -> bed.bed().name())
                .containsExactly("C2");
    }

    @Test
    void withoutWeatherNothingIsShownButWhatToDo() {
        flipped();
        BedBreakdown bed = Breakdown.of(farm.book.farm(), Coburn.TABLES, Weather.NONE, LocalDate.parse("2013-07-20"))
                .bed(new BedId("C1"))
                .orElseThrow();
        assertThat(bed.left()).isEmpty();
        assertThat(bed.ready()).isEmpty();
        assertThat(bed.missing().get(0)).contains("no weather is known for 2013-07-06", "bedledger weather --add");
    }

    @Test
    void unknownMassIsIncompleteAndNotNothing() {
        Coburn cover = new Coburn();
        cover.book.on("2012-09-20").did("sow-cover", "beds=C3", "crop=rye and vetch");
        cover.book.on("2013-05-01").did("end-cover", "beds=C3", "how=mown");
        BedBreakdown bed = cover.bed("C3", "2013-05-20");
        assertThat(bed.left()).isEmpty();
        assertThat(bed.missing().get(0)).contains("rye and vetch", "quadrats");
    }

    @Test
    void beyondTheWeatherKnownTheSameDaysOfOtherYearsStandIn() {
        farm.book.on("2015-04-18").did("transplant", "beds=C1", "crop=broccoli", "plants=80");
        farm.book
                .on("2015-12-20")
                .did("harvest", "beds=C1", "crop=broccoli", "quantity=16kg", "lot=2015/B-2", "last=yes");
        farm.book.did("flail", "beds=C1");
        ReadyDate date = farm.bed("C1", "2015-12-31").ready(Use.FINE_SEED).orElseThrow();
        assertThat(date.likely().orElseThrow()).isAfter("2016-02-01");
        assertThat(date.coverage().words()).contains("12 days CSV file", "mean of the same days in the years known");
    }

    @Test
    void orderOfWritingDoesNotMatter() {
        flipped();
        farm.book.on("2013-07-22").did("check-tarp", "beds=C1", "leaves=gone", "stalks=whole");
        BedBreakdown asWritten = farm.bed("C2", "2013-08-01");
        List<Entry> entries = new ArrayList<>(farm.book.entries());
        for (int seed = 1; seed <= 5; seed++) {
            Collections.shuffle(entries, new Random(seed));
            BedBreakdown shuffled = Breakdown.of(
                            Farm.of(entries), Coburn.TABLES, farm.weather(), LocalDate.parse("2013-08-01"))
                    .bed(new BedId("C2"))
                    .orElseThrow();
            assertThat(shuffled).as("seed " + seed).isEqualTo(asWritten);
        }
    }

    @Test
    void wateringCountsOnlyWhereAnAmountIsKnown() {
        Coburn bare = new Coburn().broccoli();
        bare.book.on("2013-07-06").did("flail", "beds=C1 C2");
        double dry = bare.bed("C1", "2013-08-10").share().orElseThrow().best();
        for (int day = 10; day < 25; day++) {
            bare.book.on("2013-07-" + day).did("irrigate", "beds=C1");
        }
        assertThat(bare.bed("C1", "2013-08-10").share().orElseThrow().best()).isEqualTo(dry);
        for (int day = 10; day < 25; day++) {
            bare.book.on("2013-07-" + day).did("irrigate", "beds=C1", "depth=10mm");
        }
        assertThat(bare.bed("C1", "2013-08-10").share().orElseThrow().best()).isLessThan(dry - 0.02);
        assertThat(bare.bed("C2", "2013-08-10").share().orElseThrow().best()).isEqualTo(dry);
    }
}
