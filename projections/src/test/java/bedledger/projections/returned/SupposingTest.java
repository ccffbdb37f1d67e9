package bedledger.projections.returned;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.BedId;
import bedledger.language.Farm;
import bedledger.language.Roots;
import bedledger.language.Share;
import bedledger.projections.estimate.Estimate;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What would have gone back had residue been hauled off that was flailed where it stood. */
class SupposingTest {
    private static final BedId W1 = new BedId("W1");
    private static final BedId W2 = new BedId("W2");
    private static final BedId W3 = new BedId("W3");
    private final ReedEnd farm = new ReedEnd();

    private void cabbage() {
        farm.on("2025-04-10").did("transplant", "beds=W1 W2", "crop=cabbage");
        farm.on("2025-07-02").did("harvest", "beds=W1 W2", "crop=cabbage", "quantity=48kg", "lot=2025/C-2", "last=yes");
        farm.on("2025-07-05").did("flail", "beds=W1 W2");
    }

    private Supposing suppose(String share, Roots roots, BedId... beds) {
        return Supposing.hauledOff(farm.book.farm(), List.of(beds), ReedEnd.NEW_YEARS_EVE, Share.parse(share), roots);
    }

    private List<Leaving> leaving(Supposing supposing) {
        return Leaving.of(supposing, farm.returned(), ReedEnd.returned(supposing.farm()));
    }

    private static Leaving of(List<Leaving> all, SourceKind kind) {
        return all.stream().filter(each -> each.kind() == kind).findFirst().orElseThrow();
    }

    private static double best(java.util.Optional<Estimate> estimate) {
        return estimate.orElseThrow().best();
    }

    @Test
    void allOfTheShootsLeaveAndTheRootsStayWhereTheyWereCut() {
        cabbage();

        List<Leaving> leaving = leaving(suppose("100%", Roots.CUT, W1));

        Leaving shoots = of(leaving, SourceKind.CROP_SHOOTS);
        // 48 kg x 0.0782 / 0.48 x 0.52, two thirds of it on W1.
        assertThat(best(shoots.recorded().dry())).isCloseTo(4.0664 * 2 / 3, within(1e-9));
        assertThat(best(shoots.supposed().dry())).isZero();
        assertThat(best(shoots.leaves().dry())).isCloseTo(4.0664 * 2 / 3, within(1e-9));
        assertThat(best(shoots.leaves().nitrogen())).isCloseTo(4.0664 * 2 / 3 * 0.027, within(1e-9));
        Leaving roots = of(leaving, SourceKind.CROP_ROOTS);
        assertThat(best(roots.leaves().dry())).isZero();
        assertThat(best(roots.supposed().dry())).isEqualTo(best(roots.recorded().dry()));
    }

    @Test
    void rootsThatArePulledLeaveWithTheirShare() {
        cabbage();

        Leaving roots = of(leaving(suppose("80%", Roots.PULLED, W1)), SourceKind.CROP_ROOTS);

        assertThat(best(roots.leaves().dry()))
                .isCloseTo(0.8 * best(roots.recorded().dry()), within(1e-12));
    }

    @Test
    void theBandOfWhatLeavesIsThatShareOfTheBandNotTwoDoubtsTogether() {
        cabbage();

        Leaving shoots = of(leaving(suppose("80%", Roots.CUT, W1)), SourceKind.CROP_SHOOTS);

        Estimate recorded = shoots.recorded().dry().orElseThrow();
        Estimate leaves = shoots.leaves().dry().orElseThrow();
        assertThat(leaves.best()).isCloseTo(0.8 * recorded.best(), within(1e-12));
        assertThat(leaves.low()).isCloseTo(0.8 * recorded.low(), within(1e-12));
        assertThat(leaves.high()).isCloseTo(0.8 * recorded.high(), within(1e-12));
        assertThat(leaves.hasBand()).isTrue();
    }

    @Test
    void theOtherBedAndEveryTotalButThisOneStayAsTheyAre() {
        cabbage();

        Returned supposed = ReedEnd.returned(suppose("100%", Roots.CUT, W1).farm());

        assertThat(best(bed(supposed, "W2").get(Measure.DRY).known()))
                .isCloseTo(best(bed(farm.returned(), "W2").get(Measure.DRY).known()), within(1e-12));
        assertThat(best(bed(supposed, "W1").get(Measure.DRY).known()))
                .isLessThan(best(bed(farm.returned(), "W1").get(Measure.DRY).known()));
    }

    private static Total bed(Returned returned, String name) {
        return returned.totals().byBed().stream()
                .filter(total -> total.of().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void nothingIsWrittenAndTheFarmItselfIsUntouched() {
        cabbage();
        Farm before = farm.book.farm();
        int entries = before.written().size();

        Supposing supposing = suppose("100%", Roots.CUT, W1, W2);

        assertThat(before.written()).hasSize(entries);
        assertThat(supposing.farm().written()).hasSize(entries + 2);
        assertThat(supposing.farm().misfits()).isEmpty();
        assertThat(supposing.hauls())
                .allSatisfy(haul -> assertThat(haul.entry().head().note()).isEqualTo("supposed, not in the book"));
    }

    @Test
    void itStandsBehindTheQuadratsThatMeasuredWhatWasThere() {
        farm.on("2025-04-10").did("transplant", "beds=W1", "crop=cabbage");
        farm.on("2025-07-02").did("harvest", "beds=W1", "crop=cabbage", "quantity=30kg", "lot=2025/C-2", "last=yes");
        farm.on("2025-07-04")
                .did(
                        "quadrats",
                        "bed=W1",
                        "weights=800g 900g 850g 870g",
                        "frame=0.25m2",
                        "dry=12%",
                        "when=before-flailing");
        farm.on("2025-07-05").did("flail", "beds=W1");

        Leaving shoots = of(leaving(suppose("50%", Roots.CUT, W1)), SourceKind.CROP_SHOOTS);

        assertThat(best(shoots.supposed().dry()))
                .isCloseTo(best(shoots.recorded().dry()) / 2, within(1e-9));
    }

    @Test
    void aShareIsOfWhatStillLayThereAfterWhatWasReallyHauledOff() {
        farm.on("2025-04-10").did("transplant", "beds=W1", "crop=cabbage");
        farm.on("2025-07-02").did("harvest", "beds=W1", "crop=cabbage", "quantity=30kg", "lot=2025/C-2", "last=yes");
        farm.on("2025-07-03").did("haul", "beds=W1", "crop=cabbage", "share=40%", "roots=cut");

        Leaving shoots = of(leaving(suppose("50%", Roots.CUT, W1)), SourceKind.CROP_SHOOTS);

        // 30 kg x 0.0782 / 0.48 x 0.52 x 0.6 lay there, half of it leaves.
        double lay = 30 * 0.0782 / 0.48 * 0.52 * 0.6;
        assertThat(best(shoots.recorded().dry())).isCloseTo(lay, within(1e-9));
        assertThat(best(shoots.leaves().dry())).isCloseTo(lay / 2, within(1e-9));
    }

    @Test
    void theFlipIsTheLastThatHadBegunByTheDay() {
        cabbage();
        farm.on("2025-07-20").did("sow", "beds=W1", "crop=radish");
        farm.on("2025-08-25").did("harvest", "beds=W1", "crop=radish", "quantity=9kg", "lot=2025/R-1", "last=yes");

        Supposing first = Supposing.hauledOff(
                farm.book.farm(), List.of(W1), LocalDate.parse("2025-08-01"), Share.parse("100%"), Roots.CUT);

        assertThat(first.hauls())
                .extracting(haul -> haul.cropping().crop().name())
                .containsExactly("cabbage");
        assertThat(suppose("100%", Roots.CUT, W1).hauls())
                .extracting(haul -> haul.cropping().crop().name())
                .containsExactly("radish");
        assertThat(of(leaving(first), SourceKind.CROP_SHOOTS).crop()).isEqualTo("cabbage");
    }

    @Test
    void whereNothingHadEndedThereIsNothingToHaulOff() {
        cabbage();

        Supposing supposing = suppose("100%", Roots.CUT, W1, W3);

        assertThat(supposing.nothingOn()).containsExactly(W3);
        assertThat(supposing.hauls()).hasSize(1);
    }

    @Test
    void whatIsNotKnownStaysUnknownAndIsNamed() {
        farm.on("2025-04-10").did("sow-cover", "beds=W3", "crop=rye and vetch");
        farm.on("2025-05-21").did("end-cover", "beds=W3", "how=mown", "stage=flowering");

        Leaving shoots = of(leaving(suppose("100%", Roots.CUT, W3)), SourceKind.COVER_SHOOTS);

        assertThat(shoots.leaves().dry()).isEmpty();
        assertThat(shoots.missing()).contains("its mass: no quadrats were cut before it was ended");
    }
}
