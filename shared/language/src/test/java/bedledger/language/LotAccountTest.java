package bedledger.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class LotAccountTest {
    private static final LocalDate END = LocalDate.parse("2025-12-31");
    private final SeasonBook book = new SeasonBook();

    @BeforeEach
    void store() {
        book.on("2025-09-01").did("found-lot", "lot=2025/A", "crop=carrot", "quantity=100kg");
        book.did("found-lot", "lot=2025/B", "crop=carrot", "quantity=40kg");
    }

    private LotAccount account(String lot) {
        return LotAccount.of(book.farm(), LotId.parse(lot), END);
    }

    private String left(String lot) {
        return account(lot).left().orElseThrow().toString();
    }

    @Test
    void takesFromALotWhatWasSoldGivenAwayAndLostAndAddsWhatCameBack() {
        book.on("2025-09-02").did("sell", "lots=2025/A=60kg 2025/B=5kg", "as=organic");
        book.did("donate", "lots=2025/A=10kg");
        book.did("lose", "lots=2025/A=2.5kg", "cause=rotten");
        book.did("take-back", "lots=2025/A=1kg");

        assertThat(left("2025/A")).isEqualTo("28.5 kg");
        assertThat(left("2025/B")).isEqualTo("35 kg");
    }

    @Test
    void carriesQuantitiesThroughAJoinAndASplit() {
        book.on("2025-09-02").did("join-lots", "lots=2025/A=70kg 2025/B=40kg", "into=2025/AB");
        book.on("2025-09-03").did("split-lot", "lot=2025/AB", "into=2025/AB1=25kg 2025/AB2=15kg");
        book.on("2025-09-04").did("sell", "lots=2025/AB1=5kg 2025/AB=71kg", "as=organic");

        assertThat(left("2025/A")).isEqualTo("30 kg");
        assertThat(left("2025/B")).isEqualTo("0 kg");
        assertThat(left("2025/AB")).isEqualTo("−1 kg");
        assertThat(left("2025/AB1")).isEqualTo("20 kg");
        assertThat(left("2025/AB2")).isEqualTo("15 kg");
    }

    @Test
    void aJoinedLotThatWasWeighedAgainHoldsWhatWasWeighed() {
        book.on("2025-09-02").did("join-lots", "lots=2025/A=70kg 2025/B=40kg", "into=2025/AB", "quantity=108kg");

        assertThat(left("2025/AB")).isEqualTo("108 kg");
    }

    @Test
    void packsStayInTheirLotAndSayWhatABoxWeighs() {
        book.on("2025-09-02").did("pack", "lot=2025/A", "packs=20boxes", "size=4kg", "containers=new");
        book.on("2025-09-03").did("sell", "lots=2025/A=6boxes", "as=organic");

        assertThat(left("2025/A")).isEqualTo("76 kg");
    }

    @Test
    void aBoxOfTwoSizesIsNotTurnedIntoAWeight() {
        book.on("2025-09-02").did("pack", "lot=2025/A", "packs=10boxes", "size=4kg");
        book.did("pack", "lot=2025/A", "packs=4boxes", "size=5kg");
        book.on("2025-09-03").did("sell", "lots=2025/A=6boxes", "as=organic");

        assertThat(left("2025/A")).isEqualTo("100 kg");
        assertThat(account("2025/A").left().orElseThrow().apart()).hasSize(1);
    }

    @Test
    void headsAreWeighedByTheOneThatWasWeighedAtHarvest() {
        book.on("2025-02-01").did("register-field", "field=North", "gross=0.05ha");
        book.did("lay-out", "beds=N1", "field=North", "length=20m", "width=0.75m");
        book.did("found", "beds=N1", "crop=cabbage");
        book.on("2025-09-01")
                .did("harvest", "beds=N1", "crop=cabbage", "quantity=100heads", "lot=2025/C", "each=1.5kg");
        book.on("2025-09-02").did("sell", "lots=2025/C=30kg", "as=organic");

        assertThat(left("2025/C")).isEqualTo("80 heads");
    }

    @Test
    void aLotThatNothingBeganHasNoBalance() {
        assertThat(account("2025/X").left()).isEmpty();
    }

    @Test
    void aNewLotCannotTakeANameThatIsThere() {
        Entry join = book.on("2025-09-02").did("join-lots", "lots=2025/A=70kg 2025/B=40kg", "into=2025/AB");
        book.strike(join, "they were not joined");
        book.on("2025-09-03").did("split-lot", "lot=2025/A", "into=2025/B=20kg");

        assertThat(book.farm().misfits()).hasSize(1);
        assertThat(book.farm().misfits().values().iterator().next().get(0).why())
                .contains("is there already");
    }

    @Test
    void strikingAJoinLeavesItsSalesWithoutALot() {
        Entry join = book.on("2025-09-02").did("join-lots", "lots=2025/A=70kg 2025/B=40kg", "into=2025/AB");
        Entry sale = book.on("2025-09-03").did("sell", "lots=2025/AB=5kg", "as=organic");
        book.strike(join, "they were not joined");

        assertThat(book.farm().misfits()).containsOnlyKeys(sale.number());
        assertThat(left("2025/A")).isEqualTo("100 kg");
    }
}
