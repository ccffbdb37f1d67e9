package bedledger.projections.breakdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.projections.estimate.MassUnit;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Returned;
import bedledger.projections.tables.TableFile;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FarmRateTest {
    private final Coburn farm = new Coburn().broccoli();

    private FarmRateTest flipped() {
        farm.book.on("2013-07-08").did("flail", "beds=C1 C2", "passes=2");
        farm.book.did("tarp", "beds=C1 C2");
        return this;
    }

    private Going going(String day) {
        Returned returned = Returned.of(farm.book.farm(), Coburn.TABLES, LocalDate.parse(day), Options.DEFAULT);
        Pieces pieces = new Pieces(farm.book.farm(), Coburn.TABLES, farm.weather(), returned, MassUnit.KILOGRAM);
        BedId bed = new BedId("C1");
        pieces.reachBackTo(pieces.of(bed).get(0).day());
        return pieces.going(pieces.of(bed).get(0), bed, Map.of()).orElseThrow();
    }

    private static Look look(Entry entry, Going going, Look.Of of, int day, double share, double error) {
        return new Look(entry, going, of, day, share, error, "made up");
    }

    private static double stalksTimes(FarmRate rate) {
        return rate.rates().stalks().parameter().value() / rate.group().rate().value();
    }

    @Test
    void withoutALookTheTableStands() {
        flipped();
        assertThat(farm.on("2013-08-01").rates()).isEmpty();
    }

    @Test
    void manyGoodMeasurementsFindTheRateTheyWereMadeFrom() {
        flipped();
        Going going = going("2013-09-30");
        Entry entry = farm.book.entries().get(0);
        double truth = 1.6 * going.group.rate().value();
        List<Look> looks = new ArrayList<>();
        for (int day = going.first + 20; day < going.first + 80; day += 5) {
            Part part = going.partTo(day, truth);
            looks.add(look(entry, going, Look.Of.STALKS, day, part.left[part.left.length - 1], 0.03));
        }
        FarmRate rate = FarmRate.of(going.group, looks);
        assertThat(stalksTimes(rate)).isCloseTo(1.6, within(0.1));
        assertThat(rate.stalks()).isEqualTo(12);
        assertThat(rate.leaves()).isZero();
        assertThat(rate.rates().leaves().parameter()).isEqualTo(going.group.rate());
    }

    /** The grid against the same posterior on a line a hundred times as fine, written for this test. */
    @Test
    void gridFindsTheModeOfThePosterior() {
        flipped();
        Going going = going("2013-09-30");
        int day = going.first + 40;
        Look look = look(farm.book.entries().get(0), going, Look.Of.STALKS, day, 0.3, 0.1);
        double best = Double.NEGATIVE_INFINITY;
        double mode = 0;
        for (double times = -3; times <= 3; times += 0.0005) {
            double spread = Math.log(times < 0 ? 0.02 / 0.0133 : 0.0536 / 0.02) / 1.96;
            Part part = going.partTo(day, 0.02 * Math.exp(times));
            double log = -times * times / (2 * spread * spread) + look.logLikelihood(part.left[part.left.length - 1]);
            if (log > best) {
                best = log;
                mode = times;
            }
        }
        assertThat(Math.log(stalksTimes(FarmRate.of(going.group, List.of(look)))))
                .isCloseTo(mode, within(0.026));
    }

    @Test
    void lookThatSaysNothingLeavesTheRateWhereItWas() {
        flipped();
        Going going = going("2013-09-30");
        Look vague = look(farm.book.entries().get(0), going, Look.Of.STALKS, going.first + 40, 0.5, 100);
        assertThat(stalksTimes(FarmRate.of(going.group, List.of(vague)))).isCloseTo(1, within(1e-9));
    }

    @Test
    void leavesGoneEarlyHastenTheLeavesAndStalksWholeSlowTheStalks() {
        flipped();
        farm.book.on("2013-07-24").did("check-tarp", "beds=C1 C2", "leaves=gone", "stalks=whole");
        FarmRate rate = farm.on("2013-08-01").rates().iterator().next();
        assertThat(rate.rates().leaves().parameter().value()).isGreaterThan(0.06 * 1.3);
        assertThat(rate.rates().stalks().parameter().value()).isLessThan(0.02);
        assertThat(rate.leaves()).as("one look over two beds is one").isEqualTo(1);
        assertThat(rate.words().get(0)).contains("on 1 look");
    }

    @Test
    void quadratsDriedFarOutsideTheTableWeighLess() {
        assertThat(shiftBy("12%")).isGreaterThan(1.3 * shiftBy("38%")).isGreaterThan(0.01);
    }

    /** How far the log of the stalks' rate moves for quadrats of the same dry mass at some dry share. */
    private static double shiftBy(String dry) {
        FarmRateTest test = new FarmRateTest().flipped();
        String fresh = dry.equals("12%") ? "300g 310g 290g 300g" : "94.7g 97.9g 91.6g 94.7g";
        test.farm
                .book
                .on("2013-07-29")
                .did("quadrats", "bed=C1", "weights=" + fresh, "frame=0.25m2", "dry=" + dry, "when=after-flailing");
        FarmRate rate = test.farm.on("2013-08-01").rates().iterator().next();
        return Math.abs(Math.log(stalksTimes(rate)))
                + Math.abs(Math.log(rate.rates().leaves().parameter().value() / 0.06));
    }

    @Test
    void lookAtAStruckCheckIsForgotten() {
        flipped();
        Entry check = farm.book.on("2013-07-24").did("check-tarp", "beds=C1", "leaves=gone");
        farm.book.strike(check, "wrong bed");
        assertThat(farm.on("2013-08-01").rates()).isEmpty();
    }

    @Test
    void aLaterLookDoesNotChangeWhatWasSaidOfAnEarlierDay() {
        flipped();
        BedBreakdown before = farm.bed("C1", "2013-07-20");
        farm.book.on("2013-07-24").did("check-tarp", "beds=C1", "leaves=gone");
        assertThat(farm.bed("C1", "2013-07-20")).isEqualTo(before);
    }

    @Test
    void everyCropOfTheTablesHasAGroupAndADuration() {
        assertThat(Coburn.TABLES.crops()).allSatisfy(crop -> {
            assertThat(ResidueGroup.ofCrop(crop.name())).as(crop.name()).isPresent();
            assertThat(ResidueGroup.practiceOfCrop(crop.name())).isPresent();
        });
        assertThat(new TableFile("breakdown-crops", Tables.EDITION).rows(row -> row.text("crop")))
                .allSatisfy(name -> assertThat(Coburn.TABLES.crop(name)).isPresent());
    }
}
