package bedledger.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FarmTest {
    private static final BedId N1 = new BedId("N1");
    private static final LocalDate JULY_12 = LocalDate.parse("2025-07-12");
    private final SeasonBook book = new SeasonBook();

    @BeforeEach
    void layOut() {
        book.on("2025-02-20").did("register-field", "field=North", "gross=0.05ha");
        book.did("lay-out", "beds=N1 N2", "field=North", "length=20m", "width=0.75m");
    }

    @Test
    void aTarpLiesUntilItIsLifted() {
        book.on("2025-07-08").did("tarp", "beds=N1", "material=silage film");
        book.on("2025-08-01").did("untarp", "beds=N1");

        Timeline<BedState> timeline = book.farm().bed(N1);

        assertThat(timeline.on(JULY_12).tarp()).isNotNull();
        assertThat(timeline.on(LocalDate.parse("2025-08-01")).tarp()).isNull();
    }

    @Test
    void aLateEntryTakesItsPlaceOnItsDay() {
        book.on("2025-07-08").did("tarp", "beds=N1");
        book.on("2025-07-22").did("check-tarp", "beds=N1", "leaves=gone");
        Entry late = book.on("2025-07-11")
                .writtenAt("2025-07-24T20:00:00Z")
                .did("harrow", "beds=N1", "tarp-folded-back=yes");

        List<Long> order = book.farm().bed(N1).steps().stream()
                .map(step -> step.entry().number())
                .toList();

        assertThat(order).containsExactly(2L, 3L, late.number(), 4L);
    }

    @Test
    void whatNoLongerFitsStaysInForceAndChangesNothing() {
        Entry tarp = book.on("2025-07-08").did("tarp", "beds=N1");
        Entry lifted = book.on("2025-08-01").did("untarp", "beds=N1");
        book.strike(tarp, "it was N2");

        Farm farm = book.farm();

        assertThat(farm.inForce()).contains(lifted).doesNotContain(tarp);
        assertThat(farm.misfits()).containsOnlyKeys(lifted.number());
    }

    @Test
    void strikingACorrectionLeavesNothingInForce() {
        Entry first = book.on("2025-07-08").did("tarp", "beds=N1");
        Entry second = book.correct(first, "it was both beds", "tarp", "beds=N1 N2");
        book.strike(second, "neither was tarped");

        assertThat(book.farm().ofKind(BedWork.Tarped.class)).isEmpty();
    }

    @Test
    void onlyAnEntryInForceCanBeAnswered() {
        Entry first = book.on("2025-07-08").did("tarp", "beds=N1");
        Entry second = book.correct(first, "it was N2", "tarp", "beds=N2");
        Entry third = book.correct(first, "it was N2 after all", "tarp", "beds=N2");

        assertThat(book.farm().standing().idle()).containsExactly(third);
        assertThat(book.farm().ofKind(BedWork.Tarped.class)).containsExactly(second);
    }

    @Test
    void bothHalvesOfASplitBedInheritItsHistory() {
        book.on("2025-03-01").did("tarp", "beds=N1");
        book.on("2025-03-20").did("split-bed", "bed=N1", "into=N1a N1b", "lengths=12m 8m");
        book.on("2025-04-01").did("untarp", "beds=N1b");

        Farm farm = book.farm();

        assertThat(farm.misfits()).isEmpty();
        assertThat(farm.bed(new BedId("N1a")).now().tarp()).isNotNull();
        assertThat(farm.bed(new BedId("N1b")).now().tarp()).isNull();
        assertThat(farm.bed(new BedId("N1b")).now().squareMetres()).isEqualTo(6.0);
        assertThat(farm.bed(new BedId("N1a")).steps()).hasSize(3);
    }

    @Test
    void flailingAStandingCropEndsIt() {
        book.on("2025-05-01").did("sow", "beds=N1", "crop=spinach");
        book.on("2025-06-12").did("flail", "beds=N1");

        assertThat(book.farm().bed(N1).now().crops()).isEmpty();
    }

    @ParameterizedTest(name = "shuffled with seed {0}")
    @ValueSource(longs = {1, 7, 20_250_708, 99})
    void theOrderInWhichEntriesAreHandedInDoesNotMatter(long seed) {
        book.on("2025-05-01").did("sow", "beds=N1 N2", "crop=spinach");
        Entry wrong =
                book.on("2025-06-10").did("harvest", "beds=N1", "crop=spinach", "quantity=14kg", "lot=2025/SPI-0610");
        book.correct(wrong, "swapped", "harvest", "beds=N2", "crop=spinach", "quantity=41kg", "lot=2025/SPI-0610");
        book.on("2025-06-11").did("untarp", "beds=N2");
        List<Entry> shuffled = new ArrayList<>(book.entries());
        Collections.shuffle(shuffled, new Random(seed));

        Farm farm = Farm.of(shuffled);

        assertThat(farm.bed(N1)).isEqualTo(book.farm().bed(N1));
        assertThat(farm.inForce()).isEqualTo(book.farm().inForce());
        assertThat(farm.misfits()).isEqualTo(book.farm().misfits()).hasSize(1);
    }
}
