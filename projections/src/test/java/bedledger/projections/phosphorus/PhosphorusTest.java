package bedledger.projections.phosphorus;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.SeasonBook;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Returned;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class PhosphorusTest {
    private static final Tables TABLES = Tables.bundled();
    private final SeasonBook book = new SeasonBook();

    @BeforeEach
    void beds() {
        book.on("2025-02-01").did("register-field", "field=West", "gross=0.02ha");
        book.did("lay-out", "beds=W1 W2", "field=West", "length=10m", "width=1m");
        book.on("2025-05-01");
    }

    private List<PhosphorusBalance> balances() {
        Returned returned = Returned.of(book.farm(), TABLES, LocalDate.parse("2026-12-31"), Options.DEFAULT);
        return Phosphorus.of(book.farm(), TABLES, returned, Options.DEFAULT).balances();
    }

    /** RB209 prints 0.9 kg P2O5 per tonne of cabbage; P is 0.436 of it. */
    @Test
    void soldCabbageTakesItsPhosphorusAsPNotAsPhosphate() {
        book.did("found", "beds=W1 W2", "crop=cabbage");
        book.on("2025-08-01").did("harvest", "beds=W1 W2", "crop=cabbage", "quantity=200kg", "lot=2025/CAB-1");
        book.on("2026-01-10").did("sell", "lots=2025/CAB-1=150kg", "as=organic");
        book.did("donate", "lots=2025/CAB-1=10kg");
        book.did("take-back", "lots=2025/CAB-1=20kg");
        List<PhosphorusBalance> balances = balances();
        assertThat(balances).extracting(PhosphorusBalance::season).containsExactly("2025", "2025");
        assertThat(balances.get(0).sold().known().orElseThrow().best())
                .isCloseTo(70.0 / 1000 * 0.9 * 0.436, within(1e-9));
        assertThat(balances.get(0).surplus().orElseThrow().best()).isNegative();
    }

    /** Recorded is P, so it is not multiplied again. */
    @Test
    void recordedPhosphorusOfCompostIsTakenAsItIs() {
        book.did("build-pile", "pile=P1");
        book.did("spread", "beds=W1", "pile=P1", "quantity=100kg", "phosphorus=0.2%");
        assertThat(balances().get(0).surplus().orElseThrow().best()).isCloseTo(0.2, within(1e-9));
    }

    /** RB209: cattle manure 3.2 kg P2O5 per tonne fresh. */
    @Test
    void phosphateOfManureIsTurnedIntoP() {
        book.did("spread", "beds=W1", "manure=cattle", "quantity=100kg");
        assertThat(balances().get(0).broughtIn().known().orElseThrow().best())
                .isCloseTo(0.1 * 3.2 * 0.436, within(1e-9));
    }

    @Test
    void aCropThatNoTableHoldsIsIncompleteNotNothing() {
        book.did("found", "beds=W1", "crop=okra");
        book.on("2025-08-01").did("harvest", "beds=W1", "crop=okra", "quantity=20kg", "lot=2025/OKR-1");
        book.did("sell", "lots=2025/OKR-1=20kg", "as=organic");
        PhosphorusBalance balance = balances().get(0);
        assertThat(balance.surplus()).isEmpty();
        assertThat(balance.missing()).containsExactly("phosphorus of okra: no table has it");
    }

    @Test
    void aCompostThatNobodyAnalysedIsIncomplete() {
        book.did("build-pile", "pile=P1");
        book.did("spread", "beds=W1", "pile=P1", "quantity=100kg");
        assertThat(balances().get(0).surplus()).isEmpty();
        assertThat(balances().get(0).broughtIn().unknown()).isEqualTo(1);
    }

    @Test
    void bunchesSoldWithoutAWeightAreIncomplete() {
        book.did("found", "beds=W1", "crop=radish");
        book.on("2025-08-01").did("harvest", "beds=W1", "crop=radish", "quantity=40bunches", "lot=2025/RAD-1");
        book.did("sell", "lots=2025/RAD-1=40bunches", "as=organic");
        assertThat(balances().get(0).missing().get(0)).startsWith("the weight of what was sold");
    }

    @Test
    void aJoinedLotGoesBackToItsHarvestsByWeight() {
        book.did("found", "beds=W1 W2", "crop=cabbage");
        book.on("2025-08-01").did("harvest", "beds=W1", "crop=cabbage", "quantity=100kg", "lot=2025/CAB-1");
        book.did("harvest", "beds=W2", "crop=cabbage", "quantity=50kg", "lot=2025/CAB-2");
        book.on("2025-09-01").did("join-lots", "lots=2025/CAB-1=90kg 2025/CAB-2=30kg", "into=2025/CAB-S");
        book.on("2025-10-01").did("sell", "lots=2025/CAB-S=40kg", "as=organic");
        assertThat(balances())
                .extracting(each -> each.sold().known().orElseThrow().best() / (0.001 * 0.9 * 0.436))
                .satisfiesExactly(
                        first -> assertThat(first).isCloseTo(30, within(1e-6)),
                        second -> assertThat(second).isCloseTo(10, within(1e-6)));
    }
}
