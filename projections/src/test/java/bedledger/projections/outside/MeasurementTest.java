package bedledger.projections.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.projections.estimate.DryShare;
import bedledger.projections.estimate.Quadrat;
import bedledger.projections.estimate.QuadratSample;
import bedledger.projections.tables.PackWeight;
import bedledger.projections.tables.Sampling;
import bedledger.projections.tables.Tables;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasurementTest {
    private static final Sampling SAMPLING = Tables.sampling();
    // International foot of 1959, exact: 0.3048 m; the acre of 43,560 such square feet.
    private static final double SQUARE_FOOT = 0.3048 * 0.3048;
    private static final double ACRE = 43_560 * SQUARE_FOOT;

    private static double poundsAnAcre(double squareFeet, double grams) {
        QuadratSample one = new QuadratSample(
                "worksheet", List.of(new Quadrat(squareFeet * SQUARE_FOOT, grams)), Optional.of(new DryShare(1)));
        return one.freshOnBed(ACRE, SAMPLING).best() / SAMPLING.kilogramsInAPound();
    }

    /** North Carolina cover crop worksheet, studylib.net/doc/6900202: prints 6534, 261 and 130.5. */
    @Test
    void coverCropWorksheet() {
        double pounds = poundsAnAcre(8, 1.2 * SAMPLING.kilogramsInAPound() * 1000);
        assertThat(pounds).isCloseTo(6534, within(1.0));
        assertThat(pounds * 0.04).isCloseTo(261, within(1.0));
        assertThat(pounds * 0.04 * 0.5).isCloseTo(130.5, within(1.0));
    }

    /** no-tillfarmer.com/articles/1532 prints 2000 lb an acre for 20.8 g a square foot; its 98 for 1 g is a slip for 96.03. */
    @Test
    void gramsASquareFoot() {
        assertThat(poundsAnAcre(1, 20.8)).isCloseTo(1998, within(1.0));
        assertThat(poundsAnAcre(1, 1)).isCloseTo(96.03, within(0.01));
    }

    /** Microwave method, farmllc.org/microwave_1.html: 100 g wet, 35 g dry. */
    @Test
    void microwaveDryMatter() {
        assertThat(DryShare.weighed(100, 35).value()).isEqualTo(0.35);
    }

    /** Two-sided 95 % quantiles of Student's t as every printed table gives them (from memory). */
    @ParameterizedTest
    @CsvSource({"2, 12.706", "3, 4.303", "4, 3.182", "5, 2.776", "11, 2.228", "31, 2.042"})
    void studentsT(int count, double printed) {
        List<Quadrat> quadrats = IntStream.range(0, count)
                .mapToObj(each -> new Quadrat(0.25, 500 + each))
                .toList();
        QuadratSample sample = new QuadratSample("t", quadrats, Optional.empty());
        assertThat(sample.freshPerSquareMetre(SAMPLING).t().orElseThrow()).isCloseTo(printed, within(0.0005));
    }

    /** USDA ERS Agricultural Handbook 697, a bushel of tomatoes: 53 lb from memory; pound of 1959. */
    @Test
    void aBushelOfTomatoes() {
        PackWeight bushel = Tables.bundled().packWeights("tomatoes").stream()
                .filter(each -> each.pack().equals("bushel"))
                .findFirst()
                .orElseThrow();
        assertThat(bushel.pounds().value() * SAMPLING.kilogramsInAPound()).isCloseTo(24.04, within(0.01));
        assertThat(bushel.pounds().rangeKnown()).isFalse();
    }
}
