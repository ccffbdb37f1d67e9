package bedledger.projections.returned;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.RandomSeason;
import bedledger.language.Roots;
import bedledger.language.SeasonBook;
import bedledger.language.Share;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.tables.OwnValue;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Tables;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of any season, over seasons that nobody planned; the seed stands in the name of each. */
class RandomSeasonTest {
    static LongStream seeds() {
        return LongStream.concat(LongStream.rangeClosed(1, 24), LongStream.of(20_251_231, -7));
    }

    private static Returned returned(SeasonBook book) {
        return ReedEnd.returned(book.farm());
    }

    private static Returned with(SeasonBook book, Tables tables) {
        return Returned.of(book.farm(), tables, ReedEnd.NEW_YEARS_EVE, Options.DEFAULT);
    }

    private static Stream<Estimate> figures(Returned returned) {
        return Stream.concat(
                returned.pieces().stream().flatMap(piece -> piece.matter().estimates()),
                totals(returned)
                        .flatMap(total -> total.measures().values().stream().flatMap(sum -> sum.known().stream())));
    }

    private static Stream<Total> totals(Returned returned) {
        Totals totals = returned.totals();
        return Stream.of(List.of(totals.all()), totals.byBed(), totals.byCrop(), totals.byFlip(), totals.bySeason())
                .flatMap(List::stream);
    }

    @Test
    void theSeasonsAreValidAndNotAllAlike() {
        List<Integer> sizes = new ArrayList<>();
        seeds().forEach(seed -> {
            SeasonBook book = RandomSeason.metric(seed);
            assertThat(book.farm().misfits()).as("seed " + seed).isEmpty();
            assertThat(returned(book).pieces()).as("seed " + seed).isNotEmpty();
            sizes.add(book.entries().size());
        });
        assertThat(sizes.stream().distinct()).hasSizeGreaterThan(10);
        assertThat(seeds().mapToObj(seed -> returned(RandomSeason.metric(seed)))
                        .flatMap(each -> each.pieces().stream())
                        .map(Return::evidence)
                        .distinct())
                .contains(Evidence.QUADRATS, Evidence.FROM_YIELD, Evidence.RECORDED_QUANTITY);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noMassIsBelowNothingAndNoBandIsUpsideDown(long seed) {
        assertThat(figures(returned(RandomSeason.metric(seed)))).isNotEmpty().allSatisfy(each -> {
            assertThat(each.low()).isNotNegative().isLessThanOrEqualTo(each.best() + 1e-9);
            assertThat(each.high()).isGreaterThanOrEqualTo(each.best() - 1e-9);
        });
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void totalsAreTheSumsOfTheirParts(long seed) {
        Returned returned = returned(RandomSeason.metric(seed));
        for (Measure measure : Measure.values()) {
            double pieces = returned.pieces().stream()
                    .flatMap(piece -> piece.matter().get(measure).stream())
                    .mapToDouble(Estimate::best)
                    .sum();
            Totals totals = returned.totals();
            assertThat(best(totals.all(), measure)).isCloseTo(pieces, within(1e-6 + 1e-9 * pieces));
            for (List<Total> several : List.of(totals.byBed(), totals.byCrop(), totals.byFlip(), totals.bySeason())) {
                assertThat(several.stream()
                                .mapToDouble(each -> best(each, measure))
                                .sum())
                        .isCloseTo(pieces, within(1e-6 + 1e-9 * pieces));
            }
        }
    }

    /** Doubts combined are never wider than all of them at their worst at once. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noTotalReachesBeyondItsPartsAtTheirWorst(long seed) {
        Returned returned = returned(RandomSeason.metric(seed));
        for (Measure measure : Measure.values()) {
            List<Estimate> parts = returned.pieces().stream()
                    .flatMap(piece -> piece.matter().get(measure).stream())
                    .toList();
            Optional<Estimate> known = returned.totals().all().get(measure).known();
            if (known.isPresent()) {
                assertThat(known.get().low())
                        .isGreaterThanOrEqualTo(
                                parts.stream().mapToDouble(Estimate::low).sum() - 1e-6);
                assertThat(known.get().high())
                        .isLessThanOrEqualTo(
                                parts.stream().mapToDouble(Estimate::high).sum() + 1e-6);
            }
        }
    }

    private static double best(Total total, Measure measure) {
        return total.get(measure).known().map(Estimate::best).orElse(0.0);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theOrderInWhichEntriesAreHandedInDoesNotMatter(long seed) {
        SeasonBook book = RandomSeason.metric(seed);
        List<Entry> shuffled = new ArrayList<>(book.entries());
        Collections.shuffle(shuffled, new Random(seed));

        assertThat(ReedEnd.returned(Farm.of(shuffled)).pieces())
                .isEqualTo(returned(book).pieces());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theSameSeasonInPoundsAndFeetComesToTheSame(long seed) {
        List<Return> metric = returned(RandomSeason.metric(seed)).pieces();
        List<Return> us = returned(RandomSeason.usCustomary(seed)).pieces();

        assertThat(us).hasSameSizeAs(metric);
        for (int at = 0; at < metric.size(); at++) {
            assertThat(us.get(at).what()).isEqualTo(metric.get(at).what());
            same(
                    us.get(at).matter().estimates().toList(),
                    metric.get(at).matter().estimates().toList());
        }
    }

    private static void same(List<Estimate> one, List<Estimate> two) {
        assertThat(one).hasSameSizeAs(two);
        for (int at = 0; at < one.size(); at++) {
            for (Function<Estimate, Double> end :
                    List.<Function<Estimate, Double>>of(Estimate::low, Estimate::best, Estimate::high)) {
                double expected = end.apply(two.get(at));
                assertThat(end.apply(one.get(at))).isCloseTo(expected, within(1e-6 * Math.max(1, expected)));
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aHeavierHarvestNeverLeavesLessByTheSameMethod(long seed) {
        List<Return> light = returned(RandomSeason.metric(seed)).pieces();
        List<Return> heavy = returned(RandomSeason.harvesting(seed, 1.7)).pieces();

        assertThat(heavy).hasSameSizeAs(light);
        for (int at = 0; at < light.size(); at++) {
            if (light.get(at).evidence() == Evidence.FROM_YIELD) {
                assertThat(dry(heavy.get(at))).isGreaterThanOrEqualTo(dry(light.get(at)));
            }
        }
    }

    private static double dry(Return piece) {
        return piece.matter().dry().map(Estimate::best).orElse(0.0);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aCropThatIsAllProductLeavesNoShoots(long seed) {
        Tables all = harvestIndex(1);

        assertThat(with(RandomSeason.metric(seed), all).pieces().stream()
                        .filter(RandomSeasonTest::shootsFromYield)
                        .filter(Return::isKnown))
                .allSatisfy(piece -> assertThat(dry(piece)).isZero());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aCropOfWhichNextToNothingIsProductGoesBackWhole(long seed) {
        double index = 1e-6;
        Returned returned = with(RandomSeason.metric(seed), harvestIndex(index));

        for (Return piece : returned.pieces()) {
            boolean hauled = piece.method().contains("hauled off")
                    || piece.remarks().stream().anyMatch(each -> each.startsWith("hauled off"));
            if (shootsFromYield(piece) && !hauled) {
                double product = ReedEnd.TABLES
                                .coefficient(piece.what(), Quantity.PRODUCT_DRY_SHARE)
                                .orElseThrow()
                                .value()
                        * harvested(piece);
                assertThat(dry(piece)).isCloseTo(product / index - product, within(1e-6 * product / index));
            }
        }
    }

    private static double harvested(Return piece) {
        return piece.remarks().stream()
                .filter(each -> each.endsWith(" kg fresh harvested"))
                .mapToDouble(each -> Double.parseDouble(each.substring(0, each.indexOf(' '))))
                .findFirst()
                .orElseThrow();
    }

    private static boolean shootsFromYield(Return piece) {
        return piece.kind() == SourceKind.CROP_SHOOTS && piece.evidence() == Evidence.FROM_YIELD;
    }

    private static Tables harvestIndex(double value) {
        return ReedEnd.TABLES.with(ReedEnd.TABLES.coefficients().stream()
                .filter(each -> each.quantity() == Quantity.HARVEST_INDEX)
                .map(each -> new OwnValue(each.of(), Quantity.HARVEST_INDEX, value, null, "a supposition"))
                .toList());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void residueSupposedHauledOffLeavesItsShareAndNothingElseMoves(long seed) {
        SeasonBook book = RandomSeason.metric(seed);
        Supposing supposing = Supposing.hauledOff(
                book.farm(), book.farm().beds(), ReedEnd.NEW_YEARS_EVE, Share.parse("60%"), Roots.CUT);
        Returned recorded = returned(book);
        Returned supposed = ReedEnd.returned(supposing.farm());

        double leaves = 0;
        for (Leaving each : Leaving.of(supposing, recorded, supposed)) {
            double share = each.kind().isShoots() ? 0.6 : 0;
            Optional<Estimate> before = each.recorded().dry();
            assertThat(each.leaves().dry().map(Estimate::best).orElse(0.0))
                    .isCloseTo(share * before.map(Estimate::best).orElse(0.0), within(1e-9));
            leaves += each.leaves().dry().map(Estimate::best).orElse(0.0);
        }
        assertThat(best(recorded.totals().all(), Measure.DRY)
                        - best(supposed.totals().all(), Measure.DRY))
                .isCloseTo(leaves, within(1e-6));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aHarvestThatNobodyWeighedIsIncompleteAndNeverANumber(long seed) {
        List<Return> pieces = returned(RandomSeason.countedInHeads(seed)).pieces();

        assertThat(pieces.stream().filter(RandomSeasonTest::shootsFromYield)).allSatisfy(piece -> {
            assertThat(piece.matter().estimates()).isEmpty();
            assertThat(piece.missing()).anyMatch(each -> each.startsWith("the weight of 30 heads"));
        });
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aCropTheTablesDoNotKnowIsIncompleteAndNeverANumber(long seed) {
        List<Return> pieces = returned(RandomSeason.growing(seed, "sea kale")).pieces();

        assertThat(pieces.stream().filter(piece -> piece.what().equals("sea kale")))
                .isNotEmpty()
                .filteredOn(piece -> piece.evidence() != Evidence.QUADRATS)
                .allSatisfy(piece -> {
                    assertThat(piece.matter().estimates()).isEmpty();
                    assertThat(piece.missing()).isNotEmpty();
                });
        assertThat(pieces.stream().filter(piece -> piece.what().equals("sea kale")))
                .allSatisfy(piece -> {
                    assertThat(piece.matter().carbon()).isEmpty();
                    assertThat(piece.matter().nitrogen()).isEmpty();
                });
    }
}
