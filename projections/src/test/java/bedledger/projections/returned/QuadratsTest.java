package bedledger.projections.returned;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.Entry;
import org.junit.jupiter.api.Test;

class QuadratsTest {
    private final ReedEnd farm = new ReedEnd();

    private void cabbage() {
        farm.on("2025-04-10").did("transplant", "beds=W3", "crop=cabbage");
        farm.on("2025-07-02").did("harvest", "beds=W3", "crop=cabbage", "quantity=48kg", "lot=2025/C-1", "last=yes");
    }

    private Entry cut(String... more) {
        String[] all = new String[more.length + 3];
        all[0] = "bed=W3";
        all[1] = "weights=600g 700g 650g 650g";
        all[2] = "frame=0.25m2";
        System.arraycopy(more, 0, all, 3, more.length);
        return farm.book.did("quadrats", all);
    }

    @Test
    void quadratsCutBeforeFlailingStandForWhatWasReturned() {
        cabbage();
        farm.on("2025-07-03");
        Entry cut = cut("dry=12%");
        farm.on("2025-07-05").did("flail", "beds=W3");

        Return shoots = farm.piece(SourceKind.CROP_SHOOTS);

        // 2600 g/m² on 15 m² at 12 %.
        assertThat(shoots.evidence()).isEqualTo(Evidence.QUADRATS);
        assertThat(ReedEnd.dry(shoots)).isCloseTo(4.68, within(1e-9));
        assertThat(shoots.matter().fresh().orElseThrow().best()).isCloseTo(39, within(1e-9));
        assertThat(shoots.entries()).contains(cut.number());
        assertThat(shoots.isSharedByArea()).isFalse();
        // The harvested 48 kg x 0.0782 is part of the whole crop that roots are reckoned from.
        assertThat(ReedEnd.dry(farm.piece(SourceKind.CROP_ROOTS))).isCloseTo((4.68 + 3.7536) * 0.107, within(1e-9));
    }

    @Test
    void theYieldIsThenListedBesideThem() {
        cabbage();
        farm.on("2025-07-03");
        cut("dry=12%");

        OtherEvidence yield = farm.piece(SourceKind.CROP_SHOOTS).others().get(0);

        assertThat(yield.evidence()).isEqualTo(Evidence.FROM_YIELD);
        assertThat(yield.dry().best()).isCloseTo(4.0664, within(1e-9));
        assertThat(yield.overlaps()).isTrue();
        assertThat(yield.words()).contains("the intervals overlap");
    }

    @Test
    void whatWasHauledBeforeTheyWereCutIsNotTakenOffAgain() {
        cabbage();
        farm.on("2025-07-03").did("haul", "beds=W3", "weight=10kg", "roots=cut");
        cut("dry=12%");
        assertThat(ReedEnd.dry(farm.piece(SourceKind.CROP_SHOOTS))).isCloseTo(4.68, within(1e-9));

        farm.on("2025-07-04").did("haul", "beds=W3", "weight=10kg", "dry=10%", "roots=cut");
        assertThat(ReedEnd.dry(farm.piece(SourceKind.CROP_SHOOTS))).isCloseTo(3.68, within(1e-9));
    }

    @Test
    void quadratsCutAfterFlailingAreWhatIsLeft() {
        cabbage();
        farm.on("2025-07-05").did("flail", "beds=W3");
        farm.on("2025-07-19");
        cut("dry=13%");

        Returned returned = farm.returned();

        assertThat(ReedEnd.pieces(returned, SourceKind.CROP_SHOOTS).get(0).evidence())
                .isEqualTo(Evidence.FROM_YIELD);
        assertThat(returned.left()).hasSize(1);
        Left left = returned.left().get(0);
        assertThat(left.dry().orElseThrow().best()).isCloseTo(39 * 0.13, within(1e-9));
        assertThat(left.returned().orElseThrow().best()).isCloseTo(4.0664, within(1e-9));
        assertThat(left.overlaps()).contains(true);
        assertThat(left.words())
                .contains(
                        "cut after the residue was shredded: this is what is left, it does not replace what was returned",
                        "the intervals overlap, so nothing is contradicted")
                .anyMatch(each -> each.contains("14 days earlier") && each.contains("though mass only falls"));
    }

    @Test
    void underATarpTheyAreLeftEvenWithoutFlailing() {
        cabbage();
        farm.on("2025-07-05").did("tarp", "beds=W3");
        farm.on("2025-07-19");
        cut("dry=13%");

        assertThat(farm.returned().left()).hasSize(1);
    }

    @Test
    void whatTheGrowerSaysOfTheDayWinsOverThePlaceAndTheClashIsSaid() {
        cabbage();
        Entry flail = farm.on("2025-07-05").did("flail", "beds=W3");
        cut("dry=13%", "when=at-flailing");

        Return shoots = farm.piece(SourceKind.CROP_SHOOTS);

        assertThat(shoots.evidence()).isEqualTo(Evidence.QUADRATS);
        assertThat(shoots.words()).anyMatch(each -> each.contains("though #" + flail.number() + " stands before them"));
    }

    @Test
    void aSampleSaysWhatIsUnusualAboutIt() {
        cabbage();
        farm.on("2025-07-05").did("flail", "beds=W3");
        farm.on("2025-07-19").did("quadrats", "bed=W3", "weights=610g 540g", "frame=0.25m2", "dry=40%");

        Left left = farm.returned().left().get(0);

        assertThat(left.words())
                .contains("n = 2; at least 4 spots are advised")
                .anyMatch(each -> each.startsWith("40 % dry is outside the table's 9 % to 18 %: soil in the sample"));
    }

    @Test
    void quadratsWithoutADryShareTakeTheTablesAndSayWhat() {
        cabbage();
        farm.on("2025-07-03");
        cut();

        Return shoots = farm.piece(SourceKind.CROP_SHOOTS);

        assertThat(ReedEnd.dry(shoots)).isCloseTo(39 * 0.11, within(1e-9));
        assertThat(shoots.words()).contains("no dry share was measured; the table's 11 % is used");
    }

    @Test
    void theLastQuadratsAreUsedAndEarlierOnesListed() {
        cabbage();
        farm.on("2025-07-03");
        cut("dry=12%");
        farm.on("2025-07-04").did("quadrats", "bed=W3", "weights=500g 520g 480g 500g", "frame=0.25m2", "dry=12%");

        Return shoots = farm.piece(SourceKind.CROP_SHOOTS);

        assertThat(ReedEnd.dry(shoots)).isCloseTo(2.0 * 15 * 0.12, within(1e-9));
        assertThat(shoots.others())
                .filteredOn(each -> each.evidence() == Evidence.QUADRATS)
                .singleElement()
                .satisfies(each -> assertThat(each.words()).contains("cut earlier, #6 on 2025-07-03"));
    }

    @Test
    void quadratsWhereNothingIsKnownToHaveStoodAreComparedWithNothing() {
        farm.on("2025-07-04").did("quadrats", "bed=W3", "weights=500g", "frame=0.25m2", "dry=12%");

        Left left = farm.returned().left().get(0);

        assertThat(left.crop()).isEmpty();
        assertThat(left.dry().orElseThrow().best()).isCloseTo(3.6, within(1e-9));
        assertThat(left.words()).anyMatch(each -> each.contains("compared with nothing"));
    }
}
