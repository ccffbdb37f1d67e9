package bedledger.projections.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bedledger.projections.tables.Tables;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Invented quadrats of 0.25 m² on a bed of 22.5 m². */
class QuadratSampleTest {
    private static final double BED = 22.5;
    private static final Tables TABLES = Tables.bundled();

    private static QuadratSample quadrats(double dryShare, double... grams) {
        return new QuadratSample(
                "quadrats A #52",
                DoubleStream.of(grams).mapToObj(each -> new Quadrat(0.25, each)).toList(),
                dryShare == 0 ? Optional.empty() : Optional.of(new DryShare(dryShare)));
    }

    @Test
    void twoQuadratsGiveAWideInterval() {
        QuadratSample two = quadrats(0.38, 610, 540);
        Estimate dry = two.dryOnBed("broccoli", BED, TABLES).orElseThrow();

        assertThat(dry.best()).isCloseTo(19.7, within(0.05));
        assertThat(dry.high() - dry.best()).isCloseTo(15.2, within(0.05));
        assertThat(two.freshPerSquareMetre(Tables.sampling()).t().orElseThrow()).isCloseTo(12.71, within(0.005));
        assertThat(dry.deviations()).containsOnlyKeys("quadrats A #52");
    }

    @Test
    void warnsOfFewQuadratsAndOfADryShareOutsideTheTable() {
        assertThat(quadrats(0.38, 610, 540).warnings("broccoli", BED, TABLES, MassUnit.KILOGRAM))
                .extracting(SampleWarning::text)
                .containsExactly(
                        "n = 2; at least 4 spots are advised",
                        "38 % dry is outside the table's 10 % to 18 %: soil in the sample, or half-dried?"
                                + " At 12 % it would be 6.21 kg dry");
    }

    @Test
    void fourEvenQuadratsWithAnOrdinaryDryShareNeedNoWord() {
        assertThat(quadrats(0.12, 600, 620, 590, 610).warnings("broccoli", BED, TABLES, MassUnit.KILOGRAM))
                .isEmpty();
    }

    @Test
    void warnsOfUnevenQuadrats() {
        assertThat(quadrats(0.12, 100, 620, 590, 1200).warnings("broccoli", BED, TABLES, MassUnit.KILOGRAM))
                .extracting(SampleWarning::kind)
                .containsExactly(SampleWarning.Kind.UNEVEN);
    }

    @Test
    void oneQuadratHasNoInterval() {
        Estimate dry = quadrats(0.12, 600).dryOnBed("broccoli", BED, TABLES).orElseThrow();
        assertThat(dry.best()).isCloseTo(6.48, within(1e-9));
        assertThat(dry.hasBand()).isFalse();
        assertThat(dry.rangeUnknownFor()).containsExactly("quadrats A #52");
    }

    @Test
    void withoutADryShareTheTablesIsTakenAndDoubted() {
        QuadratSample sample = quadrats(0, 600, 620, 590, 610);
        Estimate dry = sample.dryOnBed("broccoli", BED, TABLES).orElseThrow();
        assertThat(dry.deviations()).containsOnlyKeys("quadrats A #52", "broccoli residue dry share");
        assertThat(sample.warnings("broccoli", BED, TABLES, MassUnit.KILOGRAM))
                .extracting(SampleWarning::kind)
                .containsExactly(SampleWarning.Kind.DRY_SHARE_FROM_TABLE);
    }

    @Test
    void withoutAnyDryShareTheDryMassIsUnknown() {
        assertThat(quadrats(0, 600, 620).dryOnBed("okra", BED, TABLES)).isEmpty();
    }

    @Test
    void theIntervalNeverReachesBelowNothing() {
        Estimate dry =
                quadrats(0.12, 100, 600).dryOnBed("broccoli", BED, TABLES).orElseThrow();
        assertThat(dry.low()).isZero();
        assertThat(dry.isClipped()).isTrue();
    }

    @Test
    void refusesQuadratsThatCannotBe() {
        assertThatThrownBy(() -> new Quadrat(0, 5)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> new Quadrat(0.25, -5)).hasMessageContaining("-5");
        assertThatThrownBy(() -> new QuadratSample("none", List.of(), Optional.empty()))
                .hasMessageContaining("none");
        assertThatThrownBy(() -> new DryShare(38)).hasMessageContaining("38");
    }
}
