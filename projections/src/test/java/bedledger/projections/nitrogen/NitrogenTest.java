package bedledger.projections.nitrogen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.BedId;
import bedledger.language.SeasonBook;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Returned;
import bedledger.projections.returned.SourceKind;
import bedledger.projections.returned.Sum;
import bedledger.projections.tables.Parameters;
import bedledger.projections.tables.Tables;
import bedledger.projections.weather.DayWeather;
import bedledger.projections.weather.Origin;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class NitrogenTest {
    private static final Tables TABLES = Tables.bundled();
    private final SeasonBook book = new SeasonBook();

    @BeforeEach
    void beds() {
        book.on("2025-02-01").did("register-field", "field=West", "gross=0.02ha");
        book.did("lay-out", "beds=W1 W2", "field=West", "length=10m", "width=1m");
    }

    private static Weather always(double celsius) {
        return day -> Optional.of(
                new DayWeather(day, celsius - 4, celsius + 4, OptionalDouble.empty(), Origin.NOTED, Optional.empty()));
    }

    private Nitrogen nitrogen(String day, Weather weather) {
        Returned returned = Returned.of(book.farm(), TABLES, LocalDate.parse(day), Options.DEFAULT);
        return Nitrogen.of(book.farm(), returned, weather, Options.DEFAULT);
    }

    private static Release only(Nitrogen nitrogen, SourceKind kind) {
        List<Release> found = nitrogen.releases().stream()
                .filter(each -> each.piece().kind() == kind)
                .toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private void lettuce(String bed) {
        book.on("2025-05-01").did("found", "beds=" + bed, "crop=lettuce");
        book.on("2025-06-01")
                .did("harvest", "beds=" + bed, "crop=lettuce", "quantity=28kg", "lot=2025/" + bed, "last=yes");
    }

    private static double best(Optional<Estimate> estimate) {
        return estimate.orElseThrow().best();
    }

    @Test
    void tilledLettuceFreesWhatTheModuleSaysAtItsNormalisedDays() {
        lettuce("W1");
        book.did("till", "beds=W1");
        Release release = only(nitrogen("2025-06-22", always(15)), SourceKind.CROP_SHOOTS);
        double days = 21 * 0.8;
        double share = new Turnover(Parameters.of("residue-turnover"), Placement.WORKED_IN)
                .of(12.5)
                .after(days)
                .shareOfNitrogen();
        assertThat(best(release.normalisedDays())).isCloseTo(days, within(1e-9));
        assertThat(best(release.freed())).isCloseTo(best(release.nitrogen()) * share, within(1e-9));
        assertThat(release.freed().orElseThrow().low()).isLessThan(best(release.freed()));
    }

    @Test
    void withoutWeatherOnlyTheEndIsTold() {
        lettuce("W1");
        book.did("till", "beds=W1");
        Release release = only(nitrogen("2025-06-22", Weather.NONE), SourceKind.CROP_SHOOTS);
        assertThat(release.freed()).isEmpty();
        assertThat(release.uncaught()).isEmpty();
        assertThat(release.inTheEnd()).isPresent();
        assertThat(release.missing()).containsExactly("when it comes: no temperature is known on 21 of 21 days");
    }

    @Test
    void oneDayWithoutWeatherIsNamedAndNotGuessed() {
        lettuce("W1");
        Weather gap = day -> day.equals(LocalDate.parse("2025-06-10"))
                ? Optional.empty()
                : always(15).on(day);
        Release release = only(nitrogen("2025-06-22", gap), SourceKind.CROP_SHOOTS);
        assertThat(release.freed()).isEmpty();
        assertThat(release.missing().get(0)).contains("1 of 21 days");
    }

    @Test
    void rootsWithoutCarbonAndNitrogenAreIncompleteNotNothing() {
        lettuce("W1");
        Nitrogen nitrogen = nitrogen("2025-06-22", always(15));
        NitrogenTotal all = nitrogen.totals().all(bed -> true);
        assertThat(all.nitrogen().pieces()).isEqualTo(2);
        nitrogen.releases().stream().filter(each -> each.nitrogen().isEmpty()).forEach(each -> {
            assertThat(each.freed()).isEmpty();
            assertThat(each.missing()).isNotEmpty();
            assertThat(all.freed().isComplete()).isFalse();
        });
    }

    @Test
    void whatWasHauledOffToTheLastLeafIsKnownToBeNothing() {
        lettuce("W1");
        book.did("haul", "beds=W1", "crop=lettuce", "share=100%", "roots=cut");
        book.on("2025-06-10").did("sow", "beds=W1", "crop=radish");
        Nitrogen nitrogen = nitrogen("2025-06-22", always(15));
        Release shoots = only(nitrogen, SourceKind.CROP_SHOOTS);
        assertThat(shoots.missing()).isEmpty();
        NitrogenTotal all = NitrogenTotal.of("W1", OptionalDouble.empty(), List.of(shoots));
        for (Sum sum : List.of(
                all.nitrogen(),
                all.freed(),
                all.inTheEnd(),
                all.coverCropLine(),
                all.onLeakyDays(),
                all.underTarp(),
                all.before(),
                all.during())) {
            assertThat(sum.isComplete()).isTrue();
            assertThat(best(sum.known())).isZero();
            assertThat(sum.known().orElseThrow().high()).isZero();
        }
    }

    @Test
    void noOtherWayGivesLessThanNothing() {
        book.on("2025-05-01").did("spread", "beds=W1", "manure=poultry", "quantity=40kg");
        Estimate rb209 = only(nitrogen("2025-06-22", always(15)), SourceKind.MANURE)
                .otherWay()
                .orElseThrow()
                .kilograms();
        assertThat(rb209.low()).isNotNegative();
        Estimate reachesBelow = Estimate.measured("a share", 0.1, 0.3, "kg");
        assertThat(new OtherWay(OtherWay.RB209, reachesBelow).kilograms().low()).isZero();
    }

    @Test
    void aTarpKeepsTheRainOffAndHurriesTheDecay() {
        lettuce("W1");
        lettuce("W2");
        book.on("2025-06-02").did("flail", "beds=W1 W2");
        book.did("tarp", "beds=W1", "material=silage film");
        List<Release> shoots = nitrogen("2025-07-02", always(15)).releases().stream()
                .filter(each -> each.piece().kind() == SourceKind.CROP_SHOOTS)
                .toList();
        Release tarped = shoots.stream()
                .filter(each -> each.bed().equals(new BedId("W1")))
                .findFirst()
                .orElseThrow();
        Release open = shoots.stream()
                .filter(each -> each.bed().equals(new BedId("W2")))
                .findFirst()
                .orElseThrow();
        assertThat(best(tarped.normalisedDays())).isGreaterThan(best(open.normalisedDays()));
        assertThat(tarped.uncaught().orElseThrow().leakyDays()).isEqualTo(1);
        assertThat(tarped.uncaught().orElseThrow().tarpedDays()).isEqualTo(30);
        assertThat(open.uncaught().orElseThrow().leakyDays()).isEqualTo(31);
        assertThat(best(open.uncaught().orElseThrow().onLeakyDays())).isCloseTo(best(open.freed()), within(1e-9));
    }

    @Test
    void whatIsSetFreeBeforeAndWhileTheNextCropStandsIsAllThereIs() {
        lettuce("W1");
        book.did("till", "beds=W1");
        book.on("2025-06-12").did("transplant", "beds=W1", "crop=cabbage");
        Release release = only(nitrogen("2025-08-12", always(18)), SourceKind.CROP_SHOOTS);
        Following next = release.following().orElseThrow();
        assertThat(best(next.before()) + best(next.during())).isCloseTo(best(release.freed()), within(1e-9));
        assertThat(next.verdict()).contains(Verdict.FEEDS);
        assertThat(next.ended()).isFalse();
        assertThat(best(release.uncaught().orElseThrow().onLeakyDays())).isCloseTo(best(next.before()), within(1e-9));
    }

    @Test
    void strawTilledInRobsTheNextCrop() {
        book.on("2025-04-01").did("mulch", "beds=W1", "kind=straw", "quantity=20kg");
        book.on("2025-06-01").did("till", "beds=W1");
        book.did("transplant", "beds=W1", "crop=lettuce");
        Release release = only(nitrogen("2025-07-10", always(18)), SourceKind.MULCH);
        assertThat(release.following().orElseThrow().verdict()).contains(Verdict.ROBS);
        assertThat(release.freed().orElseThrow().high()).isNegative();
    }

    @Test
    void manureGoesBySharesAndHasNoDay() {
        book.on("2025-04-01").did("spread", "beds=W1", "manure=cattle", "quantity=50kg");
        Release release = only(nitrogen("2025-07-10", always(18)), SourceKind.MANURE);
        Estimate available = release.otherWay().orElseThrow().kilograms();
        assertThat(available.best()).isCloseTo(0.10 * best(release.nitrogen()), within(1e-9));
        assertThat(available.low()).isLessThanOrEqualTo(0.05 * best(release.nitrogen()) + 1e-9);
        assertThat(available.high()).isGreaterThanOrEqualTo(0.15 * best(release.nitrogen()) - 1e-9);
        assertThat(release.freed()).isEmpty();
    }

    private boolean flagged(String tilled, String... sown) {
        book.on("2025-07-01").did("found", "beds=W1", "crop=broccoli");
        book.on(tilled).did("harvest", "beds=W1", "crop=broccoli", "quantity=15kg", "lot=2025/BRO-1", "last=yes");
        book.did("till", "beds=W1");
        for (String day : sown) {
            book.on(day).did("sow-cover", "beds=W1", "crop=rye", "quantity=0.1kg");
        }
        return only(nitrogen("2025-12-31", always(10)), SourceKind.CROP_SHOOTS).highNitrogenInAutumn();
    }

    @Test
    void broccoliTilledInAutumnAndLeftBareIsFlagged() {
        assertThat(flagged("2025-10-10")).isTrue();
    }

    @Test
    void broccoliTilledInAutumnUnderRyeIsNotFlagged() {
        assertThat(flagged("2025-10-10", "2025-10-14")).isFalse();
    }

    @Test
    void broccoliTilledInAugustIsNotFlagged() {
        assertThat(flagged("2025-08-10")).isFalse();
    }

    @Test
    void strawTilledInInAutumnIsNotFlaggedSinceItLocksNitrogenUp() {
        book.on("2025-09-20").did("mulch", "beds=W1", "kind=straw", "quantity=80kg");
        book.on("2025-10-10").did("till", "beds=W1");
        Release straw = only(nitrogen("2025-12-31", always(10)), SourceKind.MULCH);
        assertThat(best(straw.nitrogen())).isGreaterThan(0.2);
        assertThat(best(straw.inTheEnd())).isNegative();
        assertThat(straw.highNitrogenInAutumn()).isFalse();
    }

    @Test
    void theBedsTogetherAreTheWhole() {
        lettuce("W1");
        lettuce("W2");
        NitrogenTotals totals = nitrogen("2025-09-01", always(15)).totals();
        double byBed = totals.byBed(bed -> true).stream()
                .mapToDouble(each -> best(each.freed().known()))
                .sum();
        double byFlip = totals.byFlip(bed -> true).stream()
                .mapToDouble(each -> best(each.freed().known()))
                .sum();
        double all = best(totals.all(bed -> true).freed().known());
        assertThat(byBed).isCloseTo(all, within(1e-9));
        assertThat(byFlip).isCloseTo(all, within(1e-9));
        assertThat(best(totals.bySeason(bed -> true).get(0).freed().known())).isCloseTo(all, within(1e-9));
    }
}
