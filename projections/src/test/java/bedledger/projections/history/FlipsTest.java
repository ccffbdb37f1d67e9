package bedledger.projections.history;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.SeasonBook;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class FlipsTest {
    private static final BedId W1 = new BedId("W1");
    private final SeasonBook book = new SeasonBook();

    @BeforeEach
    void layOut() {
        book.on("2025-02-01").did("lay-out", "beds=W1 W2", "field=West", "length=20m", "width=0.75m");
        book.did("re-measure", "beds=W2", "length=10m", "width=0.75m");
    }

    private void cabbageFlipped() {
        book.on("2025-04-10").did("transplant", "beds=W1 W2", "crop=cabbage");
        book.on("2025-07-01").did("harvest", "beds=W1 W2", "crop=cabbage", "quantity=80kg", "lot=2025/C-1", "last=yes");
        book.on("2025-07-03").did("scout", "beds=W1 W2", "seen=nothing");
        book.on("2025-07-05").did("flail", "beds=W1 W2");
        book.on("2025-07-05").did("tarp", "beds=W1 W2");
        book.on("2025-08-02").did("untarp", "beds=W1");
        book.did("transplant", "beds=W1", "crop=lettuce");
    }

    @Test
    void goesFromTheEndOfTheCropToTheNextPlanting() {
        cabbageFlipped();

        List<Flip> flips = Flips.of(book.farm(), W1);

        assertThat(flips).hasSize(1);
        Flip flip = flips.get(0);
        assertThat(flip.name()).isEqualTo("W1: cabbage ended 2025-07-01, lettuce from 2025-08-02");
        assertThat(flip.days()).contains(32L);
        assertThat(flip.steps()).extracting(FlipStep::days).containsExactly(2L, 2L, 0L, 28L);
        assertThat(flip.minutesRecorded()).isEmpty();
        assertThat(flip.labourWords()).isEqualTo("not recorded: scout, flail, tarp, untarp");
        assertThat(Flips.of(book.farm(), new BedId("W2")).get(0).name())
                .isEqualTo("W2: cabbage ended 2025-07-01, nothing planted since");
    }

    @Test
    void labourIsPeopleTimesMinutesSharedByArea() {
        book.on("2025-04-10").did("transplant", "beds=W1 W2", "crop=cabbage");
        book.on("2025-07-01").did("harvest", "beds=W1 W2", "crop=cabbage", "quantity=80kg", "lot=2025/C-1", "last=yes");
        Entry flailed = book.on("2025-07-03").did("flail", "beds=W1 W2");
        book.did("tarp", "beds=W1 W2");

        Flip flip = Flips.of(Heads.with(book, flailed, Heads.worked(3, 10)), W1).get(0);

        // 20 m and 10 m of one width: two thirds of 30 person-minutes.
        assertThat(flip.minutesRecorded().orElseThrow()).isEqualTo(20.0);
        assertThat(flip.labourWords()).isEqualTo("flail: 30 minutes over 2 beds, 20 here by area; not recorded: tarp");
    }

    @Test
    void aFlailedStandingCropBeginsTheFlipWithItsFlailing() {
        book.on("2025-04-10").did("sow", "beds=W1", "crop=spinach");
        book.on("2025-06-10").did("flail", "beds=W1");

        Flip flip = Flips.of(book.farm(), W1).get(0);

        assertThat(flip.steps()).extracting(FlipStep::words).containsExactly("flail: W1");
        assertThat(flip.steps().get(0).days()).isZero();
    }

    @Test
    void anUndersownBedIsNeverEmptyAndSoNotFlipped() {
        book.on("2025-04-10").did("transplant", "beds=W1", "crop=cabbage");
        book.on("2025-06-10").did("sow-cover", "beds=W1", "crop=white clover");
        book.on("2025-07-01").did("finish", "beds=W1", "crop=cabbage");

        assertThat(Flips.of(book.farm(), W1)).isEmpty();
    }

    @Test
    void croppingsGatherPlantingsHarvestsAndEnd() {
        cabbageFlipped();
        Farm farm = book.farm();

        List<Cropping> croppings = Croppings.of(farm, LocalDate.parse("2025-12-31"));

        assertThat(croppings)
                .extracting(each -> each.bed() + " " + each.crop())
                .containsExactly("W1 cabbage", "W1 lettuce", "W2 cabbage");
        assertThat(croppings.get(0).harvests()).hasSize(1);
        assertThat(croppings.get(0).ended()).contains(LocalDate.parse("2025-07-01"));
        assertThat(croppings.get(0).squareMetres()).isEqualTo(15.0);
        assertThat(croppings.get(1).end()).isEmpty();
        assertThat(Croppings.of(farm, LocalDate.parse("2025-06-01")))
                .allMatch(each -> each.end().isEmpty());
    }

    @Test
    void whatStandsInABedThatIsSplitGoesOnInItsParts() {
        book.on("2025-04-10").did("transplant", "beds=W1", "crop=leek");
        book.on("2025-05-01").did("harvest", "beds=W1", "crop=leek", "quantity=2kg", "lot=2025/L-1");
        book.on("2025-05-10").did("split-bed", "bed=W1", "into=W1a W1b", "lengths=12m 8m");
        book.on("2025-09-01").did("finish", "beds=W1a", "crop=leek");

        List<Cropping> croppings = Croppings.of(book.farm(), LocalDate.parse("2025-12-31"));

        assertThat(croppings).extracting(each -> each.bed().name()).containsExactly("W1a", "W1b");
        assertThat(croppings).allMatch(each -> each.harvests().size() == 1);
        assertThat(croppings).extracting(Cropping::squareMetres).containsExactly(9.0, 6.0);
        assertThat(croppings.get(0).end()).isPresent();
        assertThat(croppings.get(1).end()).isEmpty();
    }

    @Test
    void aCropThatEndedBeforeTheSplitBelongsToTheWholeAlone() {
        book.on("2025-04-10").did("sow", "beds=W1", "crop=radish");
        book.on("2025-05-01").did("finish", "beds=W1", "crop=radish");
        book.on("2025-05-10").did("split-bed", "bed=W1", "into=W1a W1b", "lengths=12m 8m");

        assertThat(Croppings.of(book.farm(), LocalDate.parse("2025-12-31")))
                .extracting(each -> each.bed().name())
                .containsExactly("W1");
    }
}
