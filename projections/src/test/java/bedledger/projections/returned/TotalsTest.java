package bedledger.projections.returned;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.MassUnit;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TotalsTest {
    private final ReedEnd farm = new ReedEnd();

    /** A season with a correction, a late entry, a joint flip, vines hauled off, a cover crop, compost, manure and mulch. */
    @BeforeEach
    void season() {
        farm.on("2025-03-05").did("build-pile", "pile=P1");
        farm.on("2025-03-10").did("spread", "beds=W1 W2", "manure=horse", "per-bed=40kg", "moisture=70%");
        farm.on("2025-03-12").did("sow-cover", "beds=W4", "crop=rye");
        farm.on("2025-04-10").did("transplant", "beds=W1 W2", "crop=cabbage");
        farm.on("2025-05-10").did("transplant", "beds=W5", "crop=tomato");
        farm.on("2025-05-20").did("quadrats", "bed=W4", "weights=500g 520g 480g 500g", "frame=0.25m2", "dry=20%");
        farm.on("2025-05-21").did("end-cover", "beds=W4", "how=mown", "stage=flowering");
        farm.on("2025-05-25").did("spread", "beds=W4", "pile=P1", "quantity=60kg");
        farm.on("2025-05-28").did("sow", "beds=W4", "crop=radish");
        farm.on("2025-06-25").did("harvest", "beds=W1 W2", "crop=cabbage", "quantity=30kg", "lot=2025/C-1");
        Entry wrong = farm.on("2025-07-02")
                .did("harvest", "beds=W1 W2", "crop=cabbage", "quantity=81kg", "lot=2025/C-2", "last=yes");
        farm.on("2025-07-05").did("flail", "beds=W1 W2", "passes=2");
        farm.book.did("tarp", "beds=W1 W2", "material=silage film");
        farm.on("2025-07-20").did("quadrats", "bed=W1", "weights=300g 340g", "frame=0.25m2", "dry=14%");
        farm.on("2025-07-08").writtenAt("2025-07-21T20:00:00Z").did("harrow", "beds=W1 W2", "tarp-folded-back=yes");
        farm.book.correct(
                wrong,
                "figures swapped",
                "harvest",
                "beds=W1 W2",
                "crop=cabbage",
                "quantity=18kg",
                "lot=2025/C-2",
                "last=yes");
        farm.on("2025-08-10").did("harvest", "beds=W5", "crop=tomato", "quantity=60kg", "lot=2025/T-1");
        farm.on("2025-08-15").did("untarp", "beds=W1");
        farm.book.did("transplant", "beds=W1", "crop=lettuce");
        farm.on("2025-10-01").did("finish", "beds=W5", "crop=tomato");
        farm.book.did("haul", "beds=W5", "crop=tomato", "weight=20kg", "roots=cut");
        farm.on("2025-10-10").did("mulch", "beds=W5", "kind=straw", "quantity=12kg");
        farm.on("2025-10-12").did("transplant", "beds=W6", "crop=cabbage");
        farm.on("2025-11-20").did("flail", "beds=W6");
    }

    private static double dry(Total total) {
        return total.get(Measure.DRY).known().map(Estimate::best).orElse(0.0);
    }

    private static Total named(List<Total> totals, String name) {
        return totals.stream()
                .filter(each -> each.of().startsWith(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyWayOfPuttingThePiecesTogetherGivesTheSameTotal() {
        Totals totals = farm.returned().totals();
        double all = dry(totals.all());

        assertThat(all).isGreaterThan(50);
        for (List<Total> way : List.of(totals.byBed(), totals.byCrop(), totals.byFlip(), totals.bySeason())) {
            assertThat(way.stream().mapToDouble(TotalsTest::dry).sum()).isCloseTo(all, within(1e-9));
        }
        assertThat(totals.all().dryByKind().values().stream()
                        .mapToDouble(sum -> sum.known().map(Estimate::best).orElse(0.0))
                        .sum())
                .isCloseTo(all, within(1e-9));
    }

    @Test
    void whatWasMeasuredAndWhatWasEstimatedStandApart() {
        Total all = farm.returned().totals().all();

        // Manure 80 x 0.3, compost 60 x 0.51, straw 12 x 0.86, rye 6 and its roots 6 x 0.213.
        assertThat(all.measured().known().orElseThrow().best()).isCloseTo(24 + 30.6 + 10.32 + 6 + 1.278, within(1e-9));
        assertThat(all.estimated().known().orElseThrow().best()).isCloseTo(dry(all) - 72.198, within(1e-9));
    }

    @Test
    void guessesFromATypicalYieldStayOutUnlessAskedFor() {
        Returned without = farm.returned();
        Returned with =
                Returned.of(farm.book.farm(), ReedEnd.TABLES, ReedEnd.NEW_YEARS_EVE, Options.DEFAULT.countingTypical());

        assertThat(named(without.totals().byBed(), "W6").typicalLeftOut()).isEqualTo(2);
        assertThat(named(without.totals().byBed(), "W6").get(Measure.DRY).known())
                .isEmpty();
        assertThat(dry(with.totals().all())).isGreaterThan(dry(without.totals().all()) + 2);
        assertThat(with.totals().all().typicalLeftOut()).isZero();
    }

    @Test
    void twoBedsOfOneEstimateAreWrongTheSameWay() {
        Totals totals = farm.returned().totals();
        Estimate one =
                named(totals.byBed(), "W1").dry(SourceKind.CROP_SHOOTS).known().orElseThrow();
        Estimate two =
                named(totals.byBed(), "W2").dry(SourceKind.CROP_SHOOTS).known().orElseThrow();
        Estimate both = named(totals.byCrop(), "cabbage")
                .dry(SourceKind.CROP_SHOOTS)
                .known()
                .orElseThrow();

        assertThat(one.low() + two.low()).isCloseTo(both.low(), within(1e-9));
        assertThat(one.high() + two.high()).isCloseTo(both.high(), within(1e-9));
    }

    @Test
    void aBedIsAlsoGivenPerAreaAndItsFlipsApart() {
        Totals totals = farm.returned().totals();
        Total w4 = named(totals.byBed(), "W4");

        assertThat(w4.perSquareMetre(Measure.DRY).orElseThrow().best()).isCloseTo(dry(w4) / 15, within(1e-9));
        assertThat(w4.tonnesPerHectare(Measure.DRY).orElseThrow().best()).isCloseTo(dry(w4) / 1.5, within(1e-9));
        assertThat(w4.kilogramsPerHectare(Measure.DRY).orElseThrow().best()).isCloseTo(dry(w4) / 0.0015, within(1e-6));
        Total flip = named(totals.byFlip(), "W4: rye ended 2025-05-21, radish from 2025-05-28");
        assertThat(flip.dryByKind())
                .containsOnlyKeys(SourceKind.COVER_SHOOTS, SourceKind.COVER_ROOTS, SourceKind.COMPOST);
        assertThat(named(totals.byFlip(), "W1: outside a flip").dryByKind()).containsOnlyKeys(SourceKind.MANURE);
        assertThat(named(totals.byBed(), "W1").sharedByArea()).isTrue();
    }

    @Test
    void missingIsCountedAndNotTakenForNothing() {
        Sum phosphorus = farm.returned().totals().all().get(Measure.PHOSPHORUS);

        assertThat(phosphorus.isComplete()).isFalse();
        assertThat(phosphorus.words()).contains("incomplete: unknown for ");
    }

    @Test
    void aSeasonMayBeginOnAnotherDay() {
        Options autumn = new Options(false, MonthDay.of(10, 1), MassUnit.KILOGRAM);
        Returned returned = Returned.of(farm.book.farm(), ReedEnd.TABLES, ReedEnd.NEW_YEARS_EVE, autumn);

        assertThat(returned.totals().bySeason()).extracting(Total::of).containsExactly("2024/2025", "2025/2026");
        assertThat(farm.returned().totals().bySeason()).extracting(Total::of).containsExactly("2025");
    }

    @Test
    void whatIsStillToComeIsNotYetReturned() {
        Returned june = Returned.of(farm.book.farm(), ReedEnd.TABLES, LocalDate.parse("2025-06-30"), Options.DEFAULT);

        assertThat(june.pieces()).extracting(Return::what).containsExactly("horse manure", "rye", "rye", "compost");
        assertThat(june.standing())
                .extracting(each -> each.crop().name())
                .containsExactly("cabbage", "cabbage", "radish", "tomato");
        assertThat(june.left()).isEmpty();
    }

    @ParameterizedTest(name = "entries shuffled with seed {0}")
    @ValueSource(longs = {3, 11, 20_250_705, 77, 1234})
    void theOrderInWhichEntriesAreHandedInDoesNotMatter(long seed) {
        List<Entry> shuffled = new ArrayList<>(farm.book.entries());
        Collections.shuffle(shuffled, new Random(seed));

        Returned returned = ReedEnd.returned(Farm.of(shuffled));

        assertThat(returned.pieces()).isEqualTo(farm.returned().pieces());
        assertThat(returned.left()).isEqualTo(farm.returned().left()).hasSize(1);
        assertThat(returned.standing()).isEqualTo(farm.returned().standing());
        assertThat(returned.totals().byFlip())
                .isEqualTo(farm.returned().totals().byFlip());
    }
}
