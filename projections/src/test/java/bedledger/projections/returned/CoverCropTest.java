package bedledger.projections.returned;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.Entry;
import bedledger.projections.history.Heads;
import java.util.List;
import org.junit.jupiter.api.Test;

class CoverCropTest {
    private final ReedEnd farm = new ReedEnd();

    private void cover(String crop, String end, String... stage) {
        farm.on("2025-03-10").did("sow-cover", "beds=W4", "crop=" + crop);
        farm.on("2025-05-20").did("quadrats", "bed=W4", "weights=500g 520g 480g 500g", "frame=0.25m2", "dry=20%");
        String[] options = stage.length == 0
                ? new String[] {"beds=W4", "how=" + end}
                : new String[] {"beds=W4", "how=" + end, "stage=" + stage[0]};
        farm.on("2025-05-21").did("end-cover", options);
    }

    private Return shoots() {
        return farm.piece(SourceKind.COVER_SHOOTS);
    }

    @Test
    void nitrogenGoesByTheStage() {
        cover("rye", "mown", "flowering");

        // 2 kg/m² on 15 m² at 20 %: 6 kg; grasses at flowering 1.5 to 2.5 %, middle 2.0.
        assertThat(ReedEnd.dry(shoots())).isCloseTo(6, within(1e-9));
        assertThat(shoots().matter().nitrogen().orElseThrow().best()).isCloseTo(0.12, within(1e-9));
        assertThat(shoots().matter().carbonToNitrogen().orElseThrow().best()).isCloseTo(21, within(1e-9));
        assertThat(shoots().words()).contains("nitrogen by stage of growth: flowering");
        assertThat(ReedEnd.dry(farm.piece(SourceKind.COVER_ROOTS))).isCloseTo(6 * 0.213, within(1e-9));
    }

    @Test
    void beforeFloweringThereIsMoreOfIt() {
        cover("rye", "mown", "before-flowering");

        assertThat(shoots().matter().nitrogen().orElseThrow().best()).isCloseTo(0.15, within(1e-9));
    }

    @Test
    void aMixtureHasNoFigureByStageAndKeepsItsWideBand() {
        cover("rye and vetch", "crimped", "flowering");

        assertThat(shoots().matter().nitrogen().orElseThrow().best()).isCloseTo(6 * 0.024, within(1e-9));
        assertThat(shoots().words()).anyMatch(each -> each.contains("no figure for it alone"));
    }

    @Test
    void withoutQuadratsItIsIncomplete() {
        farm.on("2025-03-10").did("sow-cover", "beds=W4", "crop=oats and peas");
        farm.on("2025-05-21").did("flail", "beds=W4");

        assertThat(shoots().evidence()).isEqualTo(Evidence.NONE);
        assertThat(shoots().missing()).containsExactly("its mass: no quadrats were cut before it was ended");
    }

    @Test
    void withoutQuadratsAKnownCoverCropIsAGuessThatTotalsLeaveOut() {
        farm.on("2025-03-10").did("sow-cover", "beds=W4", "crop=rye");
        farm.on("2025-05-21").did("end-cover", "beds=W4", "how=mown", "stage=flowering");

        // 3000, 6500 and 10000 lb an acre on 15 m²; a pound an acre is 0.45359237 kg on 4046.8564224 m².
        double perPound = 15 * 0.45359237 / 4046.8564224;
        assertThat(shoots().evidence()).isEqualTo(Evidence.TYPICAL);
        assertThat(ReedEnd.dry(shoots())).isCloseTo(6500 * perPound, within(1e-9));
        assertThat(shoots().matter().dry().orElseThrow().low()).isCloseTo(3000 * perPound, within(1e-9));
        assertThat(shoots().matter().nitrogen().orElseThrow().best()).isCloseTo(6500 * perPound * 0.02, within(1e-9));
        Total all = farm.returned().totals().all();
        assertThat(all.get(Measure.DRY).known()).isEmpty();
        assertThat(all.typicalLeftOut()).isEqualTo(2);
    }

    @Test
    void hauledOffItsRootsStay() {
        cover("rye", "hauled-off");

        assertThat(ReedEnd.dry(shoots())).isZero();
        assertThat(ReedEnd.dry(farm.piece(SourceKind.COVER_ROOTS))).isCloseTo(6 * 0.213, within(1e-9));
    }

    @Test
    void grazedNobodyKnowsHowMuchWentBack() {
        cover("rye", "grazed");

        assertThat(shoots().isKnown()).isFalse();
        assertThat(shoots().missing()).anyMatch(each -> each.startsWith("how much the animals took"));
    }

    @Test
    void sownOverMoreThanTheBedsOnlyTheBedTopsCount() {
        cover("rye", "mown");
        Entry sown = farm.book.entries().get(3);

        List<Return> wide = ReedEnd.pieces(
                ReedEnd.returned(Heads.with(farm.book, sown, Heads.area("25m2"))), SourceKind.COVER_SHOOTS);
        List<Return> narrow = ReedEnd.pieces(
                ReedEnd.returned(Heads.with(farm.book, sown, Heads.area("5m2"))), SourceKind.COVER_SHOOTS);

        assertThat(ReedEnd.dry(wide.get(0))).isCloseTo(6, within(1e-9));
        assertThat(wide.get(0).words()).anyMatch(each -> each.endsWith("only the bed tops are counted"));
        assertThat(ReedEnd.dry(narrow.get(0))).isCloseTo(2, within(1e-9));
    }
}
