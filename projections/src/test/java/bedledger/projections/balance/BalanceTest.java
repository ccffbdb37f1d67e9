package bedledger.projections.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.LotAccount;
import bedledger.language.MaterialName;
import bedledger.language.SeasonBook;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Opening, came in, went out, expected, counted: sums anybody can do by hand. */
class BalanceTest {
    private static final LocalDate END = LocalDate.parse("2025-12-31");
    private final SeasonBook book = new SeasonBook();

    @BeforeEach
    void parsnips() {
        book.on("2025-02-01").did("register-field", "field=North", "gross=0.05ha");
        book.did("lay-out", "beds=N1 N2", "field=North", "length=20m", "width=0.75m");
        book.did("found-lot", "lot=2024/OLD", "crop=parsnip", "quantity=40kg");
        book.did("count", "crop=parsnip", "quantity=40kg");
        book.on("2025-04-01").did("sow", "beds=N1 N2", "crop=parsnip", "seed-lot=PA-1", "per-bed=20g");
        book.on("2025-09-01").did("harvest", "beds=N1", "crop=parsnip", "quantity=300kg", "lot=2025/P-1");
        book.on("2025-09-08").did("harvest", "beds=N2", "crop=parsnip", "quantity=220kg", "lot=2025/P-2");
        book.on("2025-09-12").did("sell", "lots=2025/P-1=290kg 2025/P-2=180kg", "as=organic");
        book.on("2025-09-13").did("lose", "lots=2025/P-2=35kg", "cause=culled", "to=compost");
    }

    private CropBalance parsnip(@Nullable String from, @Nullable String to) {
        return CropBalance.of(
                book.farm(),
                new CropName("parsnip"),
                from == null ? null : LocalDate.parse(from),
                to == null ? null : LocalDate.parse(to),
                END);
    }

    private static String lines(Balance balance) {
        return balance.lines().stream()
                .map(line -> (line.sign() > 0 ? "+" : "-") + line.sum().toPlainString() + " " + line.words())
                .toList()
                .toString();
    }

    @Test
    void setsWhatWasCountedAgainstWhatShouldBeThere() {
        book.on("2025-09-30").did("count", "crop=parsnip", "quantity=52kg");

        Balance balance = parsnip(null, null).balance();

        assertThat(balance.from()).isEqualTo("2025-02-01");
        assertThat(balance.to()).isEqualTo("2025-09-30");
        assertThat(lines(balance)).isEqualTo("[+520 harvested, -470 sold, -35 lost, culled, to compost]");
        assertThat(balance.expected().orElseThrow()).isEqualByComparingTo("55");
        assertThat(balance.difference().orElseThrow()).isEqualByComparingTo("-3");
        // 3 of 40 + 520
        assertThat(balance.percent().orElseThrow()).isEqualByComparingTo("0.54");
        assertThat(balance.isComplete()).isTrue();
    }

    @Test
    void withoutACountOnTheLastDayItIsIncomplete() {
        book.on("2025-09-30").did("count", "crop=parsnip", "quantity=52kg");

        Balance balance = parsnip("2025-02-01", "2025-12-31").balance();

        assertThat(balance.expected().orElseThrow()).isEqualByComparingTo("55");
        assertThat(balance.difference()).isEmpty();
        assertThat(balance.missing())
                .containsExactly("No count of parsnip on 2025-12-31; the nearest is of 2025-09-30.");
    }

    @Test
    void withoutAnOpeningCountNothingIsExpected() {
        book.on("2025-09-30").did("count", "crop=parsnip", "quantity=52kg");

        Balance balance = parsnip("2025-03-01", "2025-09-30").balance();

        assertThat(balance.expected()).isEmpty();
        assertThat(balance.missing())
                .containsExactly("No count of parsnip on 2025-03-01; the nearest is of 2025-02-01.");
    }

    @Test
    void whatWasNeverCountedRunsFromTheFirstDayItIsNamed() {
        book.on("2025-06-01").did("found-lot", "lot=2024/KALE", "crop=kale", "quantity=9kg");

        Balance kale = CropBalance.of(book.farm(), new CropName("kale"), null, null, END)
                .balance();
        assertThat(kale.from()).isEqualTo("2025-06-01");
        assertThat(kale.to()).isEqualTo(END);
        assertThat(lines(kale)).isEqualTo("[+9 found in store]");
        assertThat(kale.missing()).hasSize(2);
    }

    @Test
    void whatWasDoneAfterTheCountThatDayBelongsToTheNextPeriod() {
        book.on("2025-09-30").did("sell", "lots=2025/P-2=2kg", "as=organic");
        book.did("count", "crop=parsnip", "quantity=52kg");
        book.did("sell", "lots=2025/P-2=1kg", "as=organic");
        book.on("2025-10-05").did("count", "crop=parsnip", "quantity=51kg");

        assertThat(lines(parsnip("2025-02-01", "2025-09-30").balance())).contains("-472 sold");
        assertThat(lines(parsnip("2025-09-30", "2025-10-05").balance())).isEqualTo("[-1 sold]");
    }

    @Test
    void countsAtSeveralPlacesAddUpAndTheSameIsCountedAgain() {
        book.on("2025-09-30").did("count", "crop=parsnip", "quantity=30kg", "where=cellar");
        book.did("count", "crop=parsnip", "quantity=20kg", "where=shed");
        book.did("count", "crop=parsnip", "quantity=32kg", "where=cellar");

        assertThat(parsnip(null, null).balance().closing().orElseThrow().number())
                .isEqualByComparingTo("52");
    }

    @Test
    void pointsOutALotSoldBeyondWhatItHeld() {
        book.on("2025-09-14").did("sell", "lots=2025/P-1=12kg", "as=organic");
        book.on("2025-09-30").did("count", "crop=parsnip", "quantity=43kg");

        assertThat(parsnip(null, null).oversold().stream().map(LotAccount::lot).map(Object::toString))
                .containsExactly("2025/P-1");
        assertThat(parsnip(null, null).balance().difference().orElseThrow()).isEqualByComparingTo("0");
    }

    @Test
    void joiningAndSplittingMovesNothingUnlessItIsMeasuredAgain() {
        book.on("2025-09-20").did("split-lot", "lot=2025/P-1", "into=2025/P-1a=6kg");
        book.did("join-lots", "lots=2025/P-1=4kg 2025/P-2=5kg", "into=2025/P-S");
        book.on("2025-09-30").did("count", "crop=parsnip", "quantity=52kg");
        assertThat(lines(parsnip(null, null).balance()))
                .isEqualTo("[+520 harvested, -470 sold, -35 lost, culled, to compost]");

        book.on("2025-10-01").did("join-lots", "lots=2025/P-1a=6kg 2025/P-S=9kg", "into=2025/P-T", "quantity=14kg");
        book.on("2025-10-05").did("count", "crop=parsnip", "quantity=51kg");
        assertThat(lines(parsnip("2025-09-30", "2025-10-05").balance())).isEqualTo("[-1 measured again when joined]");
    }

    @Test
    void whatGoesIntoALotOfSeveralCropsLeavesTheCrop() {
        book.on("2025-09-14").did("found-lot", "lot=2025/BEET", "crop=beet", "quantity=10kg");
        book.did("join-lots", "lots=2025/P-2=5kg 2025/BEET=5kg", "into=2025/BOX");
        book.on("2025-09-15").did("sell", "lots=2025/BOX=10kg", "as=organic");
        book.on("2025-09-30").did("count", "crop=parsnip", "quantity=50kg");

        assertThat(lines(parsnip(null, null).balance())).contains("-5 put into lots of several crops");
    }

    @Test
    void whatIsWrittenInAnotherUnitIsToldAndNotGuessed() {
        book.on("2025-09-14").did("sell", "lots=2025/P-2=3crates", "as=organic");
        book.on("2025-09-30").did("count", "crop=parsnip", "quantity=40kg");

        Balance balance = parsnip(null, null).balance();
        assertThat(balance.isComplete()).isFalse();
        assertThat(balance.missing().get(0)).contains("3 crates sold is not counted");
    }

    @Test
    void poundsAndKilogramsGoTogether() {
        book.on("2025-09-30").did("count", "crop=parsnip", "quantity=114.64lb");

        Balance balance = parsnip("2025-02-01", "2025-09-30").balance();
        // 40 kg + 520 kg − 470 kg − 35 kg = 55 kg = 121.254 lb
        assertThat(balance.unit().symbol()).isEqualTo("lb");
        assertThat(balance.expected().orElseThrow().doubleValue()).isCloseTo(121.254, within(0.005));
    }

    @Test
    void balancesAMaterialAndTellsUsesWithoutAnAmount() {
        MaterialName meal = new MaterialName("Feather meal");
        book.on("2025-02-02").did("list-material", "material=Feather meal");
        book.did("count-material", "material=Feather meal", "quantity=10kg");
        book.on("2025-03-01").did("receive-material", "material=Feather meal", "quantity=50kg");
        book.on("2025-04-01").did("spread", "beds=N1 N2", "material=Feather meal", "per-bed=4kg");
        book.on("2025-12-01").did("count-material", "material=Feather meal", "quantity=51kg");

        Balance balance = MaterialBalance.of(book.farm(), meal, null, null, END);
        assertThat(lines(balance)).isEqualTo("[+50 received, -8 spread]");
        assertThat(balance.difference().orElseThrow()).isEqualByComparingTo("-1");

        book.on("2025-06-01").did("lose-material", "material=Feather meal", "quantity=1kg", "cause=spilt");
        Balance spilt = MaterialBalance.of(book.farm(), meal, null, null, END);
        assertThat(lines(spilt)).isEqualTo("[+50 received, -8 spread, -1 lost]");
        assertThat(spilt.difference().orElseThrow()).isEqualByComparingTo("0");

        Entry vague = book.on("2025-04-02").did("spread", "beds=N1", "material=Feather meal");
        assertThat(MaterialBalance.of(book.farm(), meal, null, null, END).missing())
                .containsExactly("#" + vague.number() + ": how much was spread is not recorded.");
    }

    @Test
    void holdsHarvestAgainstWhatFieldsUsuallyGive() {
        Plausible plausible =
                Plausible.of(book.farm(), Tables.bundled(), new CropName("carrot"), LocalDate.parse("2025-02-01"), END);
        assertThat(plausible.starts()).isEmpty();
        assertThat(plausible.typical()).isEmpty();

        book.on("2025-04-02").did("found", "beds=N1", "crop=carrot");
        Plausible found =
                Plausible.of(book.farm(), Tables.bundled(), new CropName("carrot"), LocalDate.parse("2025-02-01"), END);
        assertThat(found.squareMetres()).isCloseTo(15, within(1e-9));
        // 26,000 lb an acre (the table's value) on 15 m²: 15 / 4046.8564224 × 26000 × 0.45359237
        assertThat(found.typical().orElseThrow().best()).isCloseTo(43.71, within(0.01));
    }
}
