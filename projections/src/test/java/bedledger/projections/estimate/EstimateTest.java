package bedledger.projections.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bedledger.projections.tables.Citation;
import bedledger.projections.tables.Coefficient;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Range;
import bedledger.projections.tables.Status;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EstimateTest {
    private static final Estimate INDEX =
            Estimate.share(coefficient("leaf crop", Quantity.HARVEST_INDEX, 0.2, new Range(0.2, 0.5)));
    private static final Estimate CARBON =
            Estimate.share(coefficient("leaf crop", Quantity.RESIDUE_CARBON, 40, new Range(36, 44)));
    private static final Estimate ROOTS = Estimate.share(coefficient("leaf crop", Quantity.ROOT_TO_SHOOT, 0.1, null));

    private static Coefficient coefficient(String of, Quantity quantity, double value, @Nullable Range range) {
        return new Coefficient(of, quantity, value, range, new Citation("made up", "2026", "test", Status.MEMORY), "");
    }

    private static Estimate kilograms(String name, double best, double half) {
        return Estimate.measured(name, best, half, "kg");
    }

    @Test
    void theSameCauseTwiceAddsUpAndDifferentOnesCombineInQuadrature() {
        Estimate one = kilograms("scale", 10, 3);

        Estimate same = one.plus(kilograms("scale", 20, 4));
        assertThat(same.high() - same.best()).isCloseTo(7, within(1e-12));

        Estimate other = one.plus(kilograms("tape", 20, 4));
        assertThat(other.high() - other.best()).isCloseTo(5, within(1e-12));
        assertThat(other.low()).isCloseTo(25, within(1e-12));
    }

    @Test
    void aFigureLessItselfIsNothingWithoutDoubt() {
        Estimate nothing = kilograms("scale", 10, 3).minus(kilograms("scale", 10, 3));
        assertThat(nothing.best()).isZero();
        assertThat(nothing.deviations()).isEmpty();
    }

    @Test
    void scalingByAnExactNumberScalesTheBand() {
        Estimate scaled = kilograms("scale", 10, 3).times(2.5);
        assertThat(List.of(scaled.low(), scaled.best(), scaled.high())).containsExactly(17.5, 25.0, 32.5);
    }

    @Test
    void aCoefficientMovesTheFigureToBothOfItsEndsAsWorkedOutAgain() {
        Estimate whole = Estimate.exact(10, "kg").dividedBy(INDEX);
        assertThat(whole.best()).isEqualTo(50);
        assertThat(whole.low()).isCloseTo(20, within(1e-12));
        assertThat(whole.high()).isEqualTo(50);
    }

    @Test
    void saysThatABandIsOneSidedAndWhy() {
        Estimate whole = Estimate.exact(10, "kg").dividedBy(INDEX);
        assertThat(whole.isOneSided()).isTrue();
        assertThat(whole.remarks())
                .containsExactly("one-sided: the known ranges put nothing above the best value;"
                        + " leaf crop harvest index 0.2 is the low end of its range, 0.2 to 0.5");
    }

    @Test
    void namesACauseWithoutARangeAndLeavesItOutOfTheBand() {
        Estimate roots = Estimate.exact(10, "kg").times(ROOTS);
        assertThat(roots.hasBand()).isFalse();
        assertThat(roots.low()).isEqualTo(roots.best());
        assertThat(roots.remarks())
                .containsExactly("no range known for leaf crop root to shoot: the true doubt is wider than shown");
        assertThat(roots.inWords()).isEqualTo("1.00 kg (no range known)");
    }

    @Test
    void aCauseThatCancelsIsDroppedFromARatio() {
        Estimate whole = Estimate.exact(10, "kg").dividedBy(INDEX).times(ROOTS);
        Estimate share = whole.times(CARBON).ratioTo(whole, "kg/kg");
        assertThat(share.deviations()).containsOnlyKeys("leaf crop residue carbon");
        assertThat(share.isOneSided()).isFalse();
        assertThat(share.low()).isCloseTo(0.36, within(1e-12));
    }

    @Test
    void aLowEndBelowNothingIsCutAndSaysSo() {
        Estimate left =
                kilograms("vines", 8, 1).minus(kilograms("hauled", 6, 3)).clippedAtZero();
        assertThat(left.best()).isEqualTo(2);
        assertThat(left.low()).isZero();
        assertThat(left.high()).isCloseTo(2 + Math.sqrt(10), within(1e-12));
        assertThat(left.isClipped()).isTrue();
        assertThat(left.remarks()).containsExactly("low end clipped at 0");
    }

    @Test
    void aSumWithACutMassDoesNotReachBelowWhatItsPartsCanBe() {
        Estimate left =
                kilograms("vines", 8, 1).minus(kilograms("hauled", 6, 3)).clippedAtZero();
        Estimate together = left.plus(Estimate.exact(20, "kg"));

        assertThat(together.low()).isCloseTo(20, within(1e-9));
        assertThat(together.high()).isCloseTo(22 + Math.sqrt(10), within(1e-9));
        assertThat(together.isClipped()).isFalse();
        assertThat(together.remarks()).isEmpty();
    }

    @Test
    void aBestValueBelowNothingIsCutAndKeepsWhatLiesAbove() {
        Estimate left =
                kilograms("vines", 5, 3).minus(kilograms("hauled", 6, 1)).clippedAtZero();
        assertThat(left.best()).isZero();
        assertThat(left.low()).isZero();
        assertThat(left.high()).isCloseTo(2, within(1e-12));
        assertThat(left.remarks()).contains("best value clipped at 0: it came out below nothing");
    }

    @Test
    void aFigureThatIsNotCutSaysNothingOfIt() {
        Estimate left =
                kilograms("vines", 8, 1).minus(kilograms("hauled", 2, 1)).clippedAtZero();
        assertThat(left.isClipped()).isFalse();
        assertThat(left.remarks()).isEmpty();
    }

    @Test
    void refusesToAddKilogramsToShares() {
        assertThatThrownBy(() -> kilograms("scale", 1, 0).plus(CARBON)).hasMessageContaining("kg/kg");
    }

    @Test
    void refusesToDivideByNothing() {
        assertThatThrownBy(() -> kilograms("scale", 1, 0).ratioTo(Estimate.exact(0, "kg"), ""))
                .isInstanceOf(ArithmeticException.class);
    }

    @Test
    void aDivisorThatMayBeNothingLeavesNoRange() {
        Estimate ratio = kilograms("scale", 10, 1).ratioTo(kilograms("tape", 2, 3), "");
        assertThat(ratio.best()).isEqualTo(5);
        assertThat(ratio.rangeUnknownFor()).containsExactly("tape");
    }

    @Test
    void keepsTheGroundsOfItsParts() {
        Estimate carbon = kilograms("quadrats A", 10, 2)
                .behind(List.of(52L))
                .times(CARBON)
                .by("measured");
        assertThat(carbon.grounds().entries()).containsExactly(52L);
        assertThat(carbon.grounds().methods()).containsExactly("measured");
        assertThat(carbon.grounds().citations()).extracting(Citation::source).containsExactly("test");
    }

    static Stream<Long> seeds() {
        return LongStream.range(0, 40).boxed();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void lowBestAndHighAreInOrderAndSumsDoNotDependOnTheOrder(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Estimate a = any(random);
        Estimate b = any(random);
        Estimate c = any(random);
        Estimate one = a.plus(b).plus(c);
        Estimate two = c.plus(a).plus(b);
        assertThat(one.low()).isCloseTo(two.low(), within(1e-9));
        assertThat(one.high()).isCloseTo(two.high(), within(1e-9));
        for (Estimate each :
                List.of(one, a.times(CARBON), a.minus(b), a.minus(b).clippedAtZero(), a.dividedBy(INDEX))) {
            assertThat(each.low()).isLessThanOrEqualTo(each.best());
            assertThat(each.high()).isGreaterThanOrEqualTo(each.best());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void sharedCausesNeverMakeASumSurerThanIndependentOnes(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double first = random.nextDouble(1, 50);
        double second = random.nextDouble(1, 50);
        Estimate shared = kilograms("same", 100, first).plus(kilograms("same", 100, second));
        Estimate apart = kilograms("one", 100, first).plus(kilograms("two", 100, second));
        assertThat(shared.high()).isGreaterThan(apart.high());
        assertThat(shared.low()).isLessThan(apart.low());
    }

    private static Estimate any(SplittableRandom random) {
        Estimate sum = Estimate.exact(random.nextDouble(0, 20), "kg");
        for (int index = 0; index < 3; index++) {
            sum = sum.plus(kilograms("cause " + random.nextInt(4), random.nextDouble(0, 20), random.nextDouble(0, 5)));
        }
        return sum;
    }
}
