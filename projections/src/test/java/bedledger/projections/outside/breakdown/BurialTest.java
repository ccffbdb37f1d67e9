package bedledger.projections.outside.breakdown;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.BedId;
import bedledger.language.Farm;
import bedledger.language.SeasonBook;
import bedledger.projections.breakdown.Breakdown;
import bedledger.projections.tables.OwnValue;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Tables;
import bedledger.projections.weather.CsvWeather;
import bedledger.projections.weather.FarmWeather;
import bedledger.projections.weather.Weather;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Ghidey and Alberts 1993, mass lost in a year, standing, on the surface, buried: corn 41, 66, 78 %; soybean 37, 66, 79 %; wheat 17,
 * 36, 69 %; sorghum 45, 66, 80 %; cotton 40, 58, 76 % (abstract, agris 65df443e). As first-order rates the surface is 1.7 to 2.6
 * times as fast as standing, and buried 1.4 to 2.6 times as fast as the surface.
 *
 * <p>Their place is Missouri, the weather here is Seattle's, and the moisture on the ground was judged with the ratio of buried to
 * surface in view: the order, the ratio for four of the five crops, and the loss of buried residue are held against them.
 */
class BurialTest {
    private static final LocalDate START = LocalDate.parse("2013-06-01");

    private static double rate(String... work) {
        SeasonBook book = new SeasonBook();
        book.on("2012-01-02").did("register-field", "field=F", "gross=0.01ha");
        book.did("lay-out", "beds=A", "field=F", "length=10m", "width=1m");
        book.on("2013-02-01").did("sow-cover", "beds=A", "crop=wheat");
        book.on(START.toString()).did("quadrats", "bed=A", "weights=1kg 1kg 1kg 1kg", "frame=1m2", "dry=40%");
        String[] rest = new String[work.length - 1];
        System.arraycopy(work, 1, rest, 0, rest.length);
        book.did(work[0], rest);
        Tables tables =
                Tables.bundled().with(List.of(new OwnValue("wheat", Quantity.LEAF_SHARE, 0, null, "straw only")));
        double left = Breakdown.of(book.farm(), tables, seattle(book.farm()), START.plusDays(365))
                .bed(new BedId("A"))
                .orElseThrow()
                .share()
                .orElseThrow()
                .best();
        return -Math.log(left);
    }

    private static Weather seattle(Farm farm) {
        var text = new InputStreamReader(
                Objects.requireNonNull(BurialTest.class.getResourceAsStream(
                        "/bedledger/projections/outside/weather/seattle-2012-2015.csv")),
                StandardCharsets.UTF_8);
        return FarmWeather.of(
                farm, List.of(CsvWeather.read("seattle", text)), Optional.empty(), LocalDate.parse("2015-12-31"));
    }

    @Test
    void standingGoesSlowestAndBuriedFastest() {
        double standing = rate("end-cover", "beds=A", "how=winter-killed");
        double surface = rate("end-cover", "beds=A", "how=mown");
        double buried = rate("till", "beds=A", "implement=plough", "passes=2");
        assertThat(standing).isLessThan(surface);
        assertThat(surface).isLessThan(buried);
        assertThat(buried / surface).isBetween(1.4, 1.6);
        assertThat(1 - Math.exp(-buried)).isBetween(0.64, 0.80);
    }
}
