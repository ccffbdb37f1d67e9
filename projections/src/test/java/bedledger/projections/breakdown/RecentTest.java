package bedledger.projections.breakdown;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.BedId;
import bedledger.language.Farm;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.Returned;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is left out of a long book changes nothing of what is said. */
class RecentTest {
    private static final LocalDate ON = LocalDate.parse("2015-09-01");
    private final Coburn farm = new Coburn();

    RecentTest() {
        farm.book.on("2004-01-02").did("register-field", "field=Old", "gross=0.02ha");
        farm.book.did("lay-out", "beds=D1 D2 D3", "field=Old", "length=20m", "width=0.75m");
        farm.book.on("2005-03-01").did("transplant", "beds=D1", "crop=asparagus", "plants=60");
        for (int year = 2006; year <= 2015; year++) {
            farm.book.on(year + "-04-01").did("sow", "beds=D2 D3", "crop=lettuce");
            var harvest = farm.book
                    .on(year + "-06-10")
                    .did("harvest", "beds=D2 D3", "crop=lettuce", "quantity=99kg", "lot=" + year + "/L", "last=yes");
            farm.book.correct(
                    harvest,
                    "scale",
                    "harvest",
                    "beds=D2 D3",
                    "crop=lettuce",
                    "quantity=56kg",
                    "lot=" + year + "/L",
                    "last=yes");
            farm.book.did("flail", "beds=D2 D3");
        }
        farm.book
                .on("2015-05-01")
                .did("harvest", "beds=D1", "crop=asparagus", "quantity=12kg", "lot=2015/A", "last=yes");
        farm.book.on("2015-08-01").did("flail", "beds=D1");
    }

    private static List<Return> pieces(Farm farm, String bed) {
        return Returned.of(farm, Coburn.TABLES, ON, Options.DEFAULT).pieces().stream()
                .filter(piece -> piece.day().isAfter(LocalDate.parse("2012-01-01")))
                .filter(piece -> piece.beds().stream()
                        .anyMatch(share -> share.bed().name().equals(bed)))
                .toList();
    }

    @Test
    void recentPiecesAreTheSame() {
        Farm whole = farm.book.farm();
        for (String bed : List.of("D1", "D2", "D3")) {
            Farm part = Recent.of(whole, List.of(new BedId(bed)), ON);
            assertThat(part.written()).hasSizeLessThan(whole.written().size());
            assertThat(pieces(part, bed)).as(bed).isNotEmpty().isEqualTo(pieces(whole, bed));
        }
    }

    @Test
    void oneBedAloneSaysWhatAllTogetherSay() {
        Farm whole = farm.book.farm();
        Breakdown all = Breakdown.of(whole, Coburn.TABLES, farm.weather(), ON);
        assertThat(all.waiting()).hasSize(3);
        for (BedBreakdown each : all.waiting()) {
            assertThat(Breakdown.of(whole, Coburn.TABLES, farm.weather(), ON, each.bed()))
                    .contains(each);
        }
    }
}
