package bedledger.projections.returned;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.projections.estimate.Deviation;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.history.Cropping;
import bedledger.projections.history.Heads;
import bedledger.projections.tables.Coefficient;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Shoots and roots from weighed harvests; figures worked by hand from the table's coefficients. */
class FromYieldTest {
    private final ReedEnd farm = new ReedEnd();

    private Entry cabbage(String last) {
        farm.on("2025-04-10").did("transplant", "beds=W1 W2", "crop=cabbage");
        farm.on("2025-06-25").did("harvest", "beds=W1 W2", "crop=cabbage", "quantity=30kg", "lot=2025/C-1");
        return farm.on("2025-07-02")
                .did("harvest", "beds=W1 W2", "crop=cabbage", "quantity=" + last, "lot=2025/C-2", "last=yes");
    }

    @Test
    void bedsHarvestedTogetherAreEstimatedTogetherAndSharedByArea() {
        cabbage("18kg");
        farm.on("2025-07-05").did("flail", "beds=W1 W2", "half-bed=yes");

        Return shoots = farm.piece(SourceKind.CROP_SHOOTS);

        // 48 kg x 0.0782 / 0.48 = 7.82 kg whole crop; x 0.52 residue; x 0.107 roots.
        assertThat(ReedEnd.dry(shoots)).isCloseTo(4.0664, within(1e-9));
        assertThat(shoots.matter().carbon().orElseThrow().best()).isCloseTo(4.0664 * 0.4, within(1e-9));
        assertThat(shoots.matter().nitrogen().orElseThrow().best()).isCloseTo(4.0664 * 0.027, within(1e-9));
        assertThat(shoots.matter().fresh().orElseThrow().best()).isCloseTo(4.0664 / 0.11, within(1e-9));
        assertThat(ReedEnd.dry(farm.piece(SourceKind.CROP_ROOTS))).isCloseTo(7.82 * 0.107, within(1e-9));
        assertThat(shoots.evidence()).isEqualTo(Evidence.FROM_YIELD);
        assertThat(shoots.day()).isEqualTo("2025-07-02");
        assertThat(shoots.isSharedByArea()).isTrue();
        assertThat(shoots.on(new BedId("W1")).dry().orElseThrow().best()).isCloseTo(4.0664 * 2 / 3, within(1e-9));
        assertThat(shoots.on(new BedId("W2")).dry().orElseThrow().best()).isCloseTo(4.0664 / 3, within(1e-9));
        assertThat(shoots.on(new BedId("W3")).dry()).isEmpty();
        assertThat(shoots.words())
                .contains("harvested over W1 W2 at once, shared by area: #5 #6", "48 kg fresh harvested");
        assertThat(shoots.entries()).containsExactly(4L, 5L, 6L);
        assertThat(shoots.coefficients())
                .extracting(each -> each.quantity().words())
                .contains("harvest index", "product dry share", "residue nitrogen", "residue carbon");
    }

    @Test
    void rootsCarryCarbonAndNitrogenByTheGroupTheirCropBelongsTo() {
        cabbage("18kg");

        Return roots = farm.piece(SourceKind.CROP_ROOTS);

        double dry = 7.82 * 0.107;
        assertThat(roots.matter().carbon().orElseThrow().best()).isCloseTo(dry * 0.43, within(1e-9));
        assertThat(roots.matter().nitrogen().orElseThrow().best()).isCloseTo(dry * 0.015, within(1e-9));
        assertThat(roots.missing()).isEmpty();
        assertThat(roots.coefficients())
                .extracting(Coefficient::key)
                .contains("all crops root carbon", "other crops root nitrogen", "cabbage harvest index");
    }

    @Test
    void theCarbonOfRootsIsWrongTheSameWayForAllCrops() {
        cabbage("18kg");
        farm.on("2025-04-10").did("sow", "beds=W3", "crop=carrot");
        farm.on("2025-08-01").did("harvest", "beds=W3", "crop=carrot", "quantity=20kg", "lot=2025/A-1", "last=yes");

        Estimate carbon = ReedEnd.pieces(farm.returned(), SourceKind.CROP_ROOTS).stream()
                .map(piece -> piece.matter().carbon().orElseThrow())
                .reduce(Estimate::plus)
                .orElseThrow();

        Deviation shared = Objects.requireNonNull(carbon.deviations().get("all crops root carbon"));
        assertThat(shared.atHigh()).isCloseTo(carbon.best() * 3 / 43, within(1e-9));
    }

    @Test
    void aCropThatRb209KnowsIsHeldAgainstItsCriticalNitrogen() {
        farm.on("2025-04-10").did("transplant", "beds=W3", "crop=cauliflower");
        farm.on("2025-07-01")
                .did("harvest", "beds=W3", "crop=cauliflower", "quantity=45kg", "lot=2025/F-1", "last=yes");

        // 45 kg x 0.0793 / 0.37 = 9.64 kg on 15 m², 6.43 t/ha: 3.45 (1 + 0.6 exp(-0.26 x 6.43)) = 3.84 %.
        assertThat(farm.piece(SourceKind.CROP_SHOOTS).words())
                .contains(
                        "RB209, p. 41: a whole crop of 9.64 kg dry on this area, not short of nitrogen, holds 3.8 % of it,"
                                + " 0.37 kg (a cross-check only; residue and product together)");
    }

    @Test
    void aCorrectionChangesTheFigureAndWhatWasKnownBeforeItDoesNot() {
        Entry wrong = cabbage("81kg");
        Farm before = farm.book.farm();
        farm.book.writtenAt("2025-07-04T20:00:00Z");
        farm.book.correct(
                wrong,
                "figures swapped",
                "harvest",
                "beds=W1 W2",
                "crop=cabbage",
                "quantity=18kg",
                "lot=2025/C-2",
                "last=yes");

        assertThat(ReedEnd.dry(farm.piece(SourceKind.CROP_SHOOTS))).isCloseTo(4.0664, within(1e-9));
        Returned known = Returned.of(before, ReedEnd.TABLES, LocalDate.parse("2025-07-03"), Options.DEFAULT);
        // 111 kg x 0.0782 / 0.48 x 0.52
        assertThat(ReedEnd.dry(ReedEnd.pieces(known, SourceKind.CROP_SHOOTS).get(0)))
                .isCloseTo(9.40355, within(1e-9));
    }

    @Test
    void eachBedKeepsWhatWasWeighedOnItAlone() {
        farm.on("2025-04-10").did("sow", "beds=W3 W4", "crop=carrot");
        farm.on("2025-08-01").did("harvest", "beds=W3", "crop=carrot", "quantity=20kg", "lot=2025/A-1");
        farm.on("2025-08-09").did("harvest", "beds=W3 W4", "crop=carrot", "quantity=10kg", "lot=2025/A-2", "last=yes");

        Return shoots = farm.piece(SourceKind.CROP_SHOOTS);

        assertThat(shoots.beds()).extracting(BedShare::share).containsExactly(25.0 / 30, 5.0 / 30);
    }

    @Test
    void bedsThatEndOnDifferentDaysAreDifferentPiecesOfOneHarvest() {
        farm.on("2025-04-10").did("sow", "beds=W3 W4", "crop=carrot");
        farm.on("2025-08-01").did("harvest", "beds=W3 W4", "crop=carrot", "quantity=30kg", "lot=2025/A-1");
        farm.on("2025-08-09").did("finish", "beds=W3", "crop=carrot");
        farm.on("2025-08-20").did("flail", "beds=W4");

        List<Return> shoots = farm.pieces(SourceKind.CROP_SHOOTS);

        assertThat(shoots)
                .extracting(Return::day)
                .extracting(LocalDate::toString)
                .containsExactly("2025-08-09", "2025-08-20");
        assertThat(shoots).allMatch(Return::isSharedByArea);
        assertThat(shoots.get(1).words()).anyMatch(each -> each.startsWith("it was standing when #"));
        double together = 30 * 0.1171 / 0.81 * 0.19;
        assertThat(ReedEnd.dry(shoots.get(0))).isCloseTo(together / 2, within(1e-9));
    }

    @Test
    void aCountWithAWeightEachIsAWeightAndOneWithoutIsIncomplete() {
        farm.on("2025-04-10").did("transplant", "beds=W3", "crop=lettuce");
        farm.on("2025-05-30")
                .did("harvest", "beds=W3", "crop=lettuce", "quantity=40heads", "each=0.35kg", "lot=2025/L-1");
        Entry counted = farm.on("2025-06-02")
                .did("harvest", "beds=W3", "crop=lettuce", "quantity=12heads", "lot=2025/L-2", "last=yes");

        Return incomplete = farm.piece(SourceKind.CROP_SHOOTS);
        assertThat(incomplete.isKnown()).isFalse();
        assertThat(incomplete.evidence()).isEqualTo(Evidence.FROM_YIELD);
        assertThat(incomplete.missing()).anyMatch(each -> each.startsWith("the weight of 12 heads (#6)"));

        farm.book.correct(
                counted,
                "weighed one",
                "harvest",
                "beds=W3",
                "crop=lettuce",
                "quantity=12heads",
                "each=350g",
                "lot=2025/L-2",
                "last=yes");
        assertThat(ReedEnd.dry(farm.piece(SourceKind.CROP_SHOOTS))).isCloseTo(52 * 0.35 * 0.0436, within(1e-9));
    }

    @Test
    void aCropThatStandsHasReturnedNothingYet() {
        farm.on("2025-04-10").did("transplant", "beds=W3", "crop=kale");
        farm.on("2025-07-10").did("harvest", "beds=W3", "crop=kale", "quantity=5kg", "lot=2025/K-1");

        Returned returned = farm.returned();

        assertThat(returned.pieces()).isEmpty();
        assertThat(returned.standing()).extracting(Cropping::planted).containsExactly(4L);
    }

    @Test
    void theAreaWorkedAndHalfBedsDoNotChangeTheMass() {
        cabbage("18kg");
        Entry flailed = farm.on("2025-07-05").did("flail", "beds=W1 W2", "half-bed=yes");

        Returned half = ReedEnd.returned(Heads.with(farm.book, flailed, Heads.area("7m2")));

        assertThat(ReedEnd.dry(ReedEnd.pieces(half, SourceKind.CROP_SHOOTS).get(0)))
                .isEqualTo(ReedEnd.dry(farm.piece(SourceKind.CROP_SHOOTS)));
    }

    @Test
    void aTypicalYieldIsAGuessThatSaysSo() {
        farm.on("2025-04-10").did("transplant", "beds=W3", "crop=cabbage");
        farm.on("2025-06-20").did("flail", "beds=W3");

        Return guess = farm.piece(SourceKind.CROP_SHOOTS);

        assertThat(guess.evidence()).isEqualTo(Evidence.TYPICAL);
        // 30,000 lb an acre on 15 m²: 50.4 kg fresh, x 0.0782 / 0.48 x 0.52.
        double fresh = 30_000 * 0.45359237 * 15 / 4046.8564224;
        assertThat(ReedEnd.dry(guess)).isCloseTo(fresh * 0.0782 / 0.48 * 0.52, within(1e-9));
        assertThat(guess.words()).anyMatch(each -> each.startsWith("a guess from a typical yield"));
        assertThat(guess.matter().dry().orElseThrow().hasBand()).isTrue();
    }

    @Test
    void withoutHarvestOrTypicalYieldNothingIsSaid() {
        farm.on("2025-04-10").did("sow", "beds=W3", "crop=radish");
        farm.on("2025-06-20").did("flail", "beds=W3");

        Return nothing = farm.piece(SourceKind.CROP_SHOOTS);

        assertThat(nothing.evidence()).isEqualTo(Evidence.NONE);
        assertThat(nothing.isKnown()).isFalse();
        assertThat(nothing.missing()).isNotEmpty();
    }

    @Test
    void aCropTheTablesDoNotKnowIsIncompleteByName() {
        farm.on("2025-04-10").did("transplant", "beds=W3", "crop=oca");
        farm.on("2025-10-20").did("harvest", "beds=W3", "crop=oca", "quantity=9kg", "lot=2025/O-1", "last=yes");

        assertThat(farm.piece(SourceKind.CROP_SHOOTS).missing()).contains("oca harvest index", "oca product dry share");
    }

    @Test
    void aHarvestThatFitsOneBedOnlyIsCountedThereAndNamedForTheOther() {
        farm.on("2025-04-10").did("transplant", "beds=W3", "crop=kale");
        Entry both = farm.on("2025-07-10")
                .did("harvest", "beds=W3 W4", "crop=kale", "quantity=8kg", "lot=2025/K-1", "last=yes");

        Returned returned = farm.returned();

        Return shoots = ReedEnd.pieces(returned, SourceKind.CROP_SHOOTS).get(0);
        assertThat(shoots.words()).contains("4 kg fresh harvested", "#5 does not fit W4: its share is left out");
        assertThat(returned.notCounted())
                .extracting(each -> each.entry().number() + " " + each.bed())
                .containsExactly(both.number() + " W4");
    }

    @Test
    void partsOfASplitBedHaveTheirShareOfWhatTheWholeYielded() {
        farm.on("2025-04-10").did("transplant", "beds=W3", "crop=leek");
        farm.on("2025-07-10").did("harvest", "beds=W3", "crop=leek", "quantity=10kg", "lot=2025/L-1");
        farm.on("2025-08-01").did("split-bed", "bed=W3", "into=W3a W3b", "lengths=12m 8m");
        farm.on("2025-09-01").did("finish", "beds=W3a W3b", "crop=leek");

        Return shoots = farm.piece(SourceKind.CROP_SHOOTS);

        assertThat(shoots.words()).contains("10 kg fresh harvested");
        assertThat(shoots.beds())
                .extracting(each -> each.bed() + " " + Numbers.two(each.share()))
                .containsExactly("W3a 0.6", "W3b 0.4");
    }

    @Test
    void theIpccStandsBesideACropItHas() {
        farm.on("2025-04-10").did("sow", "beds=W3", "crop=potato");
        farm.on("2025-08-10").did("harvest", "beds=W3", "crop=potato", "quantity=45kg", "lot=2025/P-1", "last=yes");

        List<CrossCheck> checks = farm.piece(SourceKind.CROP_SHOOTS).crossChecks();

        // 30 t/ha of potatoes, IPCC 2006 Table 11.2: 30 x 0.22 x 0.1 + 1.06 = 1.72 t/ha, 2.58 kg on 15 m².
        assertThat(checks).extracting(CrossCheck::name).contains("IPCC 2006, Potato");
        assertThat(checks.get(0).shoots()).isCloseTo(2.58, within(1e-9));
        assertThat(checks.get(0).words()).contains("cross-check only");
    }

    @Test
    void evidenceThatWasNotUsedIsListedWithItsInterval() {
        cabbage("18kg");

        OtherEvidence typical = farm.piece(SourceKind.CROP_SHOOTS).others().get(0);

        assertThat(typical.evidence()).isEqualTo(Evidence.TYPICAL);
        Estimate used = farm.piece(SourceKind.CROP_SHOOTS).matter().dry().orElseThrow();
        assertThat(typical.overlaps())
                .isEqualTo(used.low() <= typical.dry().high() && typical.dry().low() <= used.high());
        assertThat(typical.words()).startsWith("typical: ");
    }
}
