package bedledger.projections.returned;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.BedId;
import org.junit.jupiter.api.Test;

class SpreadTest {
    private final ReedEnd farm = new ReedEnd();

    @Test
    void manureOnEachBedIsTheSameOnEach() {
        farm.on("2025-03-10").did("spread", "beds=W1 W2", "manure=horse", "per-bed=40kg");

        Return manure = farm.piece(SourceKind.MANURE);

        assertThat(manure.what()).isEqualTo("horse manure");
        assertThat(manure.matter().fresh().orElseThrow().best()).isEqualTo(80);
        assertThat(manure.on(new BedId("W2")).fresh().orElseThrow().best()).isEqualTo(40);
        assertThat(manure.isSharedByArea()).isFalse();
        // 25 % dry and 5 kg N a tonne in RB209.
        assertThat(ReedEnd.dry(manure)).isCloseTo(20, within(1e-9));
        assertThat(manure.matter().nitrogen().orElseThrow().best()).isCloseTo(0.4, within(1e-9));
    }

    @Test
    void aQuantityOverAllBedsIsSharedByArea() {
        farm.on("2025-03-10").did("build-pile", "pile=P1");
        farm.on("2025-05-10").did("spread", "beds=W1 W2", "pile=P1", "quantity=90kg");

        Return compost = farm.piece(SourceKind.COMPOST);

        assertThat(compost.on(new BedId("W1")).fresh().orElseThrow().best()).isCloseTo(60, within(1e-9));
        assertThat(compost.isSharedByArea()).isTrue();
        assertThat(compost.words()).anyMatch(each -> each.contains("unknown until it is analysed"));
    }

    @Test
    void whatWasRecordedComesBeforeTheListingAndTheListingBeforeTheTables() {
        farm.on("2025-03-01")
                .did(
                        "list-material",
                        "material=Pressed pulp",
                        "nitrogen=2%",
                        "dry=50%",
                        "carbon=42%",
                        "phosphorus=0.3%");
        farm.on("2025-03-10").did("spread", "beds=W1", "material=Pressed pulp", "quantity=10kg", "moisture=60%");

        Return pulp = farm.piece(SourceKind.MATERIAL);

        assertThat(ReedEnd.dry(pulp)).isCloseTo(4, within(1e-9));
        assertThat(pulp.matter().carbon().orElseThrow().best()).isCloseTo(1.68, within(1e-9));
        assertThat(pulp.matter().nitrogen().orElseThrow().best()).isCloseTo(0.2, within(1e-9));
        assertThat(pulp.matter().phosphorus().orElseThrow().best()).isCloseTo(0.03, within(1e-9));
        assertThat(pulp.missing()).isEmpty();
        assertThat(pulp.entries()).containsExactly(4L, 5L);
    }

    @Test
    void aVolumeHasNoWeight() {
        farm.on("2025-03-10").did("build-pile", "pile=P1");
        farm.on("2025-05-10").did("spread", "beds=W1", "pile=P1", "quantity=200L");

        assertThat(farm.piece(SourceKind.COMPOST).isKnown()).isFalse();
        assertThat(farm.piece(SourceKind.COMPOST).missing())
                .anyMatch(each -> each.contains("no bulk density is on record"));
    }

    @Test
    void anUnlistedMaterialIsIncompleteByName() {
        farm.on("2025-03-10").did("spread", "beds=W1", "material=Grey powder", "quantity=10kg");

        assertThat(farm.piece(SourceKind.MATERIAL).missing()).contains("Grey powder dry share", "Grey powder nitrogen");
        assertThat(farm.piece(SourceKind.MATERIAL).words()).contains("Grey powder is not listed");
    }

    @Test
    void aPlantMulchGoesBackAndAPlasticOneDoesNot() {
        farm.on("2025-05-10").did("mulch", "beds=W1", "kind=straw", "quantity=20kg");
        farm.on("2025-05-11").did("mulch", "beds=W3", "kind=polyethylene");

        Return straw = farm.piece(SourceKind.MULCH);

        assertThat(ReedEnd.dry(straw)).isCloseTo(17.2, within(1e-9));
    }

    @Test
    void aMulchTakenOffAgainIsNotCountedThere() {
        farm.on("2025-05-10").did("mulch", "beds=W1 W3", "kind=straw", "quantity=20kg");
        farm.on("2025-09-10").did("unmulch", "beds=W3");

        assertThat(farm.pieces(SourceKind.MULCH))
                .hasSize(2)
                .satisfiesExactly(
                        lying -> assertThat(ReedEnd.dry(lying)).isCloseTo(8.6, within(1e-9)),
                        taken -> assertThat(taken.missing()).anyMatch(each -> each.contains("taken off (#5)")));
    }

    @Test
    void whatWasSpreadAfterTheDayAskedAboutIsNotThereYet() {
        farm.on("2026-01-10").did("spread", "beds=W1", "manure=horse", "per-bed=40kg");

        assertThat(farm.returned().pieces()).isEmpty();
    }
}
