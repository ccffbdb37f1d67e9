package bedledger.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class LineageTest {
    private final SeasonBook book = new SeasonBook();

    @BeforeEach
    void store() {
        book.on("2025-09-01").did("found-lot", "lot=2025/A", "crop=carrot", "quantity=100kg");
        book.did("found-lot", "lot=2025/B", "crop=carrot", "quantity=40kg");
        book.did("found-lot", "lot=2025/P", "crop=parsnip", "quantity=40kg");
        book.on("2025-09-02").did("join-lots", "lots=2025/A=70kg 2025/B=40kg", "into=2025/AB");
        book.on("2025-09-03").did("split-lot", "lot=2025/AB", "into=2025/AB1=25kg 2025/AB2=15kg");
        book.on("2025-09-04").did("join-lots", "lots=2025/AB2=15kg 2025/P=10kg", "into=2025/MIX");
    }

    private Lineage on(String day) {
        return Lineage.of(book.farm(), LocalDate.parse(day));
    }

    private static LotId lot(String name) {
        return LotId.parse("2025/" + name);
    }

    @Test
    void leadsBackToEveryLotAPartCameFrom() {
        assertThat(on("2025-12-31").origins(lot("MIX"))).containsExactly(lot("P"), lot("A"), lot("B"));
        assertThat(on("2025-12-31").parents(lot("AB")).stream().map(link -> link.from() + " " + link.amount()))
                .containsExactly("2025/A 70 kg", "2025/B 40 kg");
    }

    @Test
    void leadsForwardToEveryLotThatHasSomeOfIt() {
        assertThat(on("2025-12-31").madeOf(lot("A")))
                .containsExactly(lot("A"), lot("AB"), lot("AB1"), lot("AB2"), lot("MIX"));
        assertThat(on("2025-09-03").madeOf(lot("A"))).doesNotContain(lot("MIX"));
    }

    @Test
    void knowsTheCropOnlyWhereItIsOne() {
        assertThat(on("2025-12-31").crop(lot("AB1"))).contains(new CropName("carrot"));
        assertThat(on("2025-12-31").crop(lot("MIX"))).isEmpty();
        assertThat(on("2025-12-31").crop(lot("nobody"))).isEmpty();
    }

    @Test
    void aRingOfLotsComesToAnEnd() {
        SeasonBook ring = new SeasonBook();
        ring.on("2025-09-01").did("split-lot", "lot=2025/X", "into=2025/Y=1kg");
        ring.did("split-lot", "lot=2025/Y", "into=2025/X=1kg");

        Lineage lineage = Lineage.of(ring.farm(), LocalDate.parse("2025-12-31"));

        assertThat(lineage.sources(lot("X"))).contains(lot("X"), lot("Y"));
        assertThat(lineage.madeOf(lot("Y"))).contains(lot("X"), lot("Y"));
    }
}
