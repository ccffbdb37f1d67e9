package bedledger.projections.returned;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.Entry;
import org.junit.jupiter.api.Test;

class HauledOffTest {
    /** 60 kg of tomatoes: 60 x 0.0548 / 0.5 = 6.576 kg whole crop, half of it vines. */
    private static final double WHOLE = 6.576;

    private final ReedEnd farm = new ReedEnd();

    private Entry tomatoHauled(String... how) {
        farm.on("2025-05-10").did("transplant", "beds=W5", "crop=tomato");
        farm.on("2025-08-10").did("harvest", "beds=W5", "crop=tomato", "quantity=60kg", "lot=2025/T-1");
        farm.on("2025-10-01").did("finish", "beds=W5", "crop=tomato");
        return farm.book.did("haul", how);
    }

    private Return shoots() {
        return farm.piece(SourceKind.CROP_SHOOTS);
    }

    private Return roots() {
        return farm.piece(SourceKind.CROP_ROOTS);
    }

    @Test
    void vinesCutAtTheGroundLeaveTheirRoots() {
        tomatoHauled("beds=W5", "crop=tomato", "weight=20kg", "roots=cut");

        // 20 kg at the table's 14 % is 2.8 kg dry.
        assertThat(ReedEnd.dry(shoots())).isCloseTo(WHOLE / 2 - 2.8, within(1e-9));
        assertThat(ReedEnd.dry(roots())).isCloseTo(WHOLE * 0.14, within(1e-9));
        assertThat(roots().words()).contains("cut at the ground (#7): the roots stay");
        assertThat(shoots().words())
                .contains(
                        "hauled off (#7): 20 kg fresh = 2.80 kg (2.40 to 4.00) dry at the table's dry share, of 3.29 kg (3.29 to"
                                + " 6.71) that stood there");
        assertThat(shoots().entries()).contains(7L);
    }

    @Test
    void pulledVinesTakeTheirCrownsWithThem() {
        tomatoHauled("beds=W5", "crop=tomato", "weight=90kg", "roots=pulled");

        assertThat(ReedEnd.dry(roots())).isZero();
        assertThat(roots().words())
                .anyMatch(
                        each -> each.startsWith("pulled (#7): the crowns went in the proportion of the shoots, 100 %"));
    }

    @Test
    void aFewVinesPulledTakeAFewCrowns() {
        tomatoHauled("beds=W5", "crop=tomato", "weight=2kg", "roots=pulled");

        // 2 kg at the table's 14 % is 0.28 kg dry of half the whole crop.
        assertThat(ReedEnd.dry(roots())).isCloseTo(WHOLE * 0.14 * (1 - 0.28 / (WHOLE / 2)), within(1e-9));
    }

    @Test
    void whetherCutOrPulledMattersAndIsAskedFor() {
        tomatoHauled("beds=W5", "crop=tomato", "weight=20kg");

        assertThat(roots().isKnown()).isFalse();
        assertThat(roots().missing()).anyMatch(each -> each.contains("cut or pulled is not on record"));
    }

    @Test
    void moreHauledThanStoodIsNothingReturnedAndSaysSo() {
        tomatoHauled("beds=W5", "crop=tomato", "weight=90kg", "roots=cut");

        assertThat(ReedEnd.dry(shoots())).isZero();
        assertThat(shoots().matter().carbonToNitrogen()).isEmpty();
        assertThat(shoots().words()).anyMatch(each -> each.startsWith("best value clipped at 0"));
    }

    @Test
    void aDryShareMeasuredOnWhatWasHauledWins() {
        tomatoHauled("beds=W5", "crop=tomato", "weight=10kg", "dry=20%", "roots=cut");

        assertThat(ReedEnd.dry(shoots())).isCloseTo(WHOLE / 2 - 2, within(1e-9));
    }

    @Test
    void aShareIsTakenOffAsAShare() {
        tomatoHauled("beds=W5", "crop=tomato", "share=75%", "roots=pulled");

        assertThat(ReedEnd.dry(shoots())).isCloseTo(WHOLE / 2 * 0.25, within(1e-9));
        assertThat(ReedEnd.dry(roots())).isCloseTo(WHOLE * 0.14 * 0.25, within(1e-9));
    }

    @Test
    void hauledWithoutWeightOrShareIsIncomplete() {
        tomatoHauled("beds=W5", "crop=tomato", "roots=cut");

        assertThat(shoots().isKnown()).isFalse();
        assertThat(shoots().missing()).anyMatch(each -> each.startsWith("how much was hauled off (#7)"));
    }

    @Test
    void aHaulOverTwoBedsIsSharedByArea() {
        farm.on("2025-04-10").did("transplant", "beds=W1 W2", "crop=cabbage");
        farm.on("2025-07-02").did("harvest", "beds=W1", "crop=cabbage", "quantity=30kg", "lot=2025/C-2", "last=yes");
        farm.on("2025-07-03").did("haul", "beds=W1 W2", "weight=9kg", "roots=cut");

        // W1 has two thirds of the area: 6 kg at 11 % dry.
        assertThat(ReedEnd.dry(shoots())).isCloseTo(30 * 0.0782 / 0.48 * 0.52 - 0.66, within(1e-9));
        assertThat(shoots().words()).anyMatch(each -> each.startsWith("hauled off (#6): 6 kg fresh, shared by area"));
    }

    @Test
    void whatWasHauledWhereNothingStoodIsNamed() {
        Entry haul = farm.on("2025-04-10").did("haul", "beds=W6", "weight=5kg");

        assertThat(farm.returned().notCounted()).extracting(NotCounted::entry).containsExactly(haul);
    }
}
