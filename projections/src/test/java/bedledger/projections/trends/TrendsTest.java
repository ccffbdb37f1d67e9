package bedledger.projections.trends;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.BedId;
import bedledger.language.FieldId;
import bedledger.language.SeasonBook;
import bedledger.projections.estimate.MassUnit;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.SourceKind;
import bedledger.projections.returned.Sum;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Two beds of an invented farm over three seasons. */
class TrendsTest {
    private static final BedId R1 = new BedId("R1");
    private static final BedId R2 = new BedId("R2");
    private static final LocalDate END = LocalDate.parse("2025-11-20");
    private final SeasonBook book = new SeasonBook();

    private Trends trends() {
        return Trends.of(book.farm(), Tables.bundled(), END, Options.DEFAULT);
    }

    private void twoBeds() {
        book.on("2023-03-01").did("register-field", "field=Reed", "gross=0.05ha");
        book.did("lay-out", "beds=R1 R2", "field=Reed", "length=20m", "width=0.75m");
    }

    private void threeSeasons() {
        twoBeds();
        book.on("2023-04-01").did("spread", "beds=R1 R2", "manure=cattle", "quantity=120kg");
        book.on("2023-05-01").did("till", "beds=R1", "depth=15cm", "passes=2");
        book.on("2023-05-10").did("transplant", "beds=R1", "crop=cabbage");
        book.on("2023-09-01").did("harvest", "beds=R1", "crop=cabbage", "quantity=50kg", "lot=2023/CAB-1", "last=yes");
        book.on("2023-09-10").did("sow-cover", "beds=R1", "crop=rye");
        book.on("2024-04-20")
                .did("quadrats", "bed=R1", "weights=400g 420g 380g", "frame=0.25m2", "dry=18%", "when=before-flailing");
        book.did("end-cover", "beds=R1", "how=mown");
        book.on("2024-05-01").did("broadfork", "beds=R2", "depth=25cm");
        book.on("2024-05-20").did("transplant", "beds=R2", "crop=tomato");
        book.on("2024-09-20").did("harvest", "beds=R2", "crop=tomato", "quantity=80kg", "lot=2024/TOM-1", "last=yes");
        book.did("haul", "beds=R2", "crop=tomato", "weight=15kg", "roots=cut");
        book.on("2025-04-01").did("harrow", "beds=R1");
        book.on("2025-06-01").did("tarp", "beds=R1", "material=silage film");
    }

    @Test
    void seasonsRunWithoutAGapToTheDayAsked() {
        threeSeasons();
        assertThat(trends().seasons())
                .containsExactly(
                        season("2023", "2023-01-01", "2023-12-31"),
                        season("2024", "2024-01-01", "2024-12-31"),
                        season("2025", "2025-01-01", "2025-11-20"));
    }

    private static Season season(String name, String from, String to) {
        return new Season(name, LocalDate.parse(from), LocalDate.parse(to));
    }

    @Test
    void aSeasonMayBeginInTheAutumn() {
        List<Season> seasons = Season.between(
                LocalDate.parse("2023-03-01"), END, new Options(false, MonthDay.of(10, 1), MassUnit.KILOGRAM));
        assertThat(seasons).first().isEqualTo(season("2022/2023", "2022-10-01", "2023-09-30"));
        assertThat(seasons).last().isEqualTo(season("2025/2026", "2025-10-01", "2025-11-20"));
    }

    @Test
    void sourcesAddUpToTheWholeAndBedsToTheSeason() {
        threeSeasons();
        Trends trends = trends();
        for (Season season : trends.seasons()) {
            Input all = trends.inputs().of(season);
            double sources = all.sources().stream()
                    .mapToDouble(source -> best(all.from(source, Measure.DRY)))
                    .sum();
            double beds = trends.beds().stream()
                    .mapToDouble(bed -> best(trends.inputs().of(bed, season).total(Measure.DRY)))
                    .sum();
            assertThat(sources).isCloseTo(best(all.total(Measure.DRY)), within(1e-9));
            assertThat(beds).isCloseTo(best(all.total(Measure.DRY)), within(1e-9));
        }
        assertThat(best(trends.inputs().of(trends.seasons().get(0)).total(Measure.DRY)))
                .isPositive();
    }

    @Test
    void theSeasonsAreThoseOfTheTotals() {
        threeSeasons();
        Trends trends = trends();
        trends.returned().totals().bySeason().forEach(total -> {
            Season season = trends.seasons().stream()
                    .filter(each -> each.name().equals(total.of()))
                    .findFirst()
                    .orElseThrow();
            for (Measure measure : Measure.values()) {
                Sum mine = trends.inputs().of(season).total(measure);
                assertThat(mine.known().isPresent())
                        .isEqualTo(total.get(measure).known().isPresent());
                total.get(measure).known().ifPresent(known -> {
                    assertThat(mine.known().orElseThrow().best()).isCloseTo(known.best(), within(1e-9));
                    assertThat(mine.known().orElseThrow().low()).isCloseTo(known.low(), within(1e-9));
                    assertThat(mine.known().orElseThrow().high()).isCloseTo(known.high(), within(1e-9));
                });
            }
        });
    }

    @Test
    void theRunningTotalOfTheLastSeasonIsAllThereIs() {
        threeSeasons();
        Trends trends = trends();
        Season last = trends.seasons().get(2);
        Input field = trends.inputs().upTo(new FieldId("Reed"), last);
        assertThat(best(field.total(Measure.DRY)))
                .isCloseTo(best(trends.returned().totals().all().get(Measure.DRY)), within(1e-9));
        assertThat(field.squareMetres()).isEqualTo(30);
        assertThat(trends.inputs().upTo(R1, trends.seasons().get(0)).entries())
                .isSubsetOf(trends.inputs().upTo(R1, last).entries());
    }

    private static double best(Sum sum) {
        return sum.known().map(known -> known.best()).orElse(0.0);
    }

    @Test
    void rootsAreEstimatedHoweverWellTheShootsWereMeasured() {
        threeSeasons();
        Trends trends = trends();
        assertThat(trends.inputs().of(R1, trends.seasons().get(1)).sources())
                .containsExactly(new Source(SourceKind.COVER_SHOOTS, true), new Source(SourceKind.COVER_ROOTS, false));
    }

    @Test
    void whatWasHauledOffStandsInItsSeasonAndIsNotCountedAsReturned() {
        threeSeasons();
        Trends trends = trends();
        Carted carted = trends.carted(R2, trends.seasons().get(1)).orElseThrow();
        assertThat(best(carted.dry())).isPositive();
        assertThat(trends.carted(R2, trends.seasons().get(0))).isEmpty();
        assertThat(trends.carted(R1, trends.seasons().get(1))).isEmpty();
    }

    @Test
    void daysOfASeasonAreAllAccountedFor() {
        threeSeasons();
        Trends trends = trends();
        Map<Ground, Long> first = trends.days(R1, trends.seasons().get(0));
        // Laid out on 1 March; cabbage from 10 May to 31 August; rye from 10 September.
        assertThat(first)
                .containsEntry(Ground.CROP, 114L)
                .containsEntry(Ground.COVER_CROP, 113L)
                .containsEntry(Ground.BARE, 79L);
        assertThat(sum(first)).isEqualTo(306);
        assertThat(sum(trends.days(R1, trends.seasons().get(1)))).isEqualTo(366);
        assertThat(trends.days(R1, trends.seasons().get(2))).containsEntry(Ground.TARP, 173L);
    }

    private static long sum(Map<Ground, Long> days) {
        return days.values().stream().mapToLong(Long::longValue).sum();
    }

    @Test
    void aBedThatIsNoLongerWorkedHasNoMoreDays() {
        twoBeds();
        book.on("2023-07-01").did("retire-bed", "beds=R2");
        assertThat(sum(trends().days(R2, trends().seasons().get(0)))).isEqualTo(122);
        assertThat(sum(trends().days(R2, trends().seasons().get(1)))).isZero();
    }

    @Test
    void tellsWhatMixesTheSoilFromWhatOnlyLoosensIt() {
        threeSeasons();
        Trends trends = trends();
        assertThat(trends.passes(R1, trends.seasons().get(0))).singleElement().satisfies(pass -> {
            assertThat(pass.mixes()).isTrue();
            assertThat(pass.passes()).hasValue(2);
            assertThat(pass.depth().orElseThrow().metres()).isEqualTo(0.15);
        });
        assertThat(trends.passes(R2, trends.seasons().get(1)))
                .singleElement()
                .satisfies(pass -> assertThat(pass.mixes()).isFalse());
        assertThat(trends.passes(R1, trends.seasons().get(2))).singleElement().satisfies(pass -> {
            assertThat(pass.passes()).isEmpty();
            assertThat(pass.depth()).isEmpty();
        });
    }

    @Test
    void aCropThatStandsOverTheTurnOfTheYearIsInBothSeasons() {
        threeSeasons();
        Trends trends = trends();
        assertThat(trends.rotation().in(R1, trends.seasons().get(0)))
                .extracting(Rotation.Stood::plain)
                .containsExactly("cabbage", "rye");
        assertThat(trends.rotation().in(R1, trends.seasons().get(1)))
                .extracting(Rotation.Stood::plain)
                .containsExactly("rye");
    }

    @Test
    void everyFamilyHasALetterOfItsOwn() {
        threeSeasons();
        assertThat(trends().rotation().key())
                .extracting(Rotation.Family::name)
                .containsExactlyInAnyOrder("Brassicaceae", "Poaceae", "Solanaceae");
        assertThat(trends().rotation().key())
                .extracting(Rotation.Family::letter)
                .doesNotHaveDuplicates();
    }

    @Test
    void namesWhatIsNotTheSameBetweenTwoSoilTests() {
        twoBeds();
        sampled("2023-11-01", "from-depth=0cm", "to-depth=20cm", "laboratory=Reed", "carbon-method=combustion");
        sampled("2024-11-20", "from-depth=0m", "to-depth=0.2m", "laboratory=Reed", "carbon-method=combustion");
        sampled("2025-04-01", "from-depth=0cm", "to-depth=15cm", "laboratory=Sedge");
        assertThat(trends().tests())
                .extracting(SampledSoil::changed)
                .containsExactly(
                        List.of(),
                        List.of(),
                        List.of(
                                SampledSoil.Change.LABORATORY,
                                SampledSoil.Change.METHOD_UNKNOWN,
                                SampledSoil.Change.DEPTH,
                                SampledSoil.Change.TIME_OF_YEAR));
    }

    private void sampled(String day, String... rest) {
        String[] words = new String[rest.length + 2];
        words[0] = "beds=R1 R2";
        words[1] = "organic-carbon=1.9%";
        System.arraycopy(rest, 0, words, 2, rest.length);
        book.on(day).did("sample-soil", words);
    }

    @Test
    void aWinterApartByTheTurnOfTheYearIsTheSameTimeOfYear() {
        twoBeds();
        sampled("2023-12-20", "laboratory=Reed");
        sampled("2025-01-10", "laboratory=Reed");
        assertThat(trends().tests().get(1).changed()).doesNotContain(SampledSoil.Change.TIME_OF_YEAR);
    }

    @Test
    void anEmptyBookHasNoSeasons() {
        Trends trends = trends();
        assertThat(trends.seasons()).isEmpty();
        assertThat(trends.beds()).isEmpty();
        assertThat(trends.spans()).isEmpty();
    }

    @Test
    void onlyTheBedsAskedForAreCounted() {
        threeSeasons();
        Trends one = Trends.of(book.farm(), Tables.bundled(), END, Options.DEFAULT, List.of(R2));
        assertThat(one.beds()).containsExactly(R2);
        assertThat(one.inputs().of(one.seasons().get(0)).squareMetres()).isEqualTo(15);
        assertThat(one.inputs().of(one.seasons().get(0)).total(Measure.DRY))
                .isEqualTo(trends().inputs().of(R2, trends().seasons().get(0)).total(Measure.DRY));
    }
}
