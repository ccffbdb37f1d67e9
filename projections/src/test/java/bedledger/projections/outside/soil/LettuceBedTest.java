package bedledger.projections.outside.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.SeasonBook;
import bedledger.projections.nitrogen.Nitrogen;
import bedledger.projections.nitrogen.Release;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Returned;
import bedledger.projections.returned.SourceKind;
import bedledger.projections.tables.Tables;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** A bed of lettuce from the harvest to the nitrogen, computed outside this program from the tables and equations named. */
class LettuceBedTest {
    /**
     * 10 m², 28 kg of heads: 39.1 g N in the residue (RB209 harvest index 0.50, USDA water, 3.2 % N), 18.2 g to the next crop by PNW 636,
     * 51 % or 20 g in the end by the STICS v8 residue module at C:N 12.5.
     */
    @Test
    void tenSquareMetresOfLettuce() {
        SeasonBook book = new SeasonBook();
        book.on("2025-02-01").did("register-field", "field=West", "gross=0.02ha");
        book.did("lay-out", "beds=W1", "field=West", "length=10m", "width=1m");
        book.on("2025-05-01").did("found", "beds=W1", "crop=lettuce");
        book.on("2025-06-01").did("harvest", "beds=W1", "crop=lettuce", "quantity=28kg", "lot=2025/LET-1", "last=yes");
        book.did("till", "beds=W1");
        Returned returned = Returned.of(book.farm(), Tables.bundled(), LocalDate.parse("2025-06-22"), Options.DEFAULT);
        Release shoots = Nitrogen.of(book.farm(), returned, Weather.NONE, Options.DEFAULT).releases().stream()
                .filter(each -> each.piece().kind() == SourceKind.CROP_SHOOTS)
                .findFirst()
                .orElseThrow();
        assertThat(shoots.nitrogen().orElseThrow().best()).isCloseTo(0.0391, within(1e-4));
        assertThat(shoots.otherWay().orElseThrow().kilograms().best()).isCloseTo(0.0182, within(1e-4));
        assertThat(shoots.inTheEnd().orElseThrow().best()).isCloseTo(0.020, within(5e-4));
    }
}
