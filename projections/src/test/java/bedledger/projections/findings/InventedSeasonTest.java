package bedledger.projections.findings;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Lineage;
import bedledger.language.LotId;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A season on an invented farm, Marlpit Farm, with something wrong of almost every kind; every finding worked out by hand. */
class InventedSeasonTest {
    private static final LocalDate YEAR_END = LocalDate.parse("2026-12-31");
    private final PaperRecord season = season();

    private static PaperRecord season() {
        PaperRecord record = PaperRecord.empty();
        land(record);
        stock(record);
        piles(record);
        eastOneAndTwo(record);
        eastThreeAndFour(record);
        eastFiveAndSix(record);
        elsewhere(record);
        return record;
    }

    private static void land(PaperRecord record) {
        record.write(
                "2026-02-10 register-field East --gross 0.04ha",
                "2026-02-10 register-field Quarry --gross 0.02ha",
                "2026-02-10 register-field Meadow --gross 0.01ha",
                "2026-02-10 lay-out E1 E2 E3 E4 E5 E6 --field East --length 60ft --width 30in",
                "2026-02-10 lay-out Q1 Q2 --field Quarry --length 40ft --width 30in",
                "2026-02-10 lay-out M1 --field Meadow --length 40ft --width 30in",
                "2026-02-10 declare-land East --none-since 2010-01-01 --evidence \"own records\"",
                "2026-02-10 declare-land Quarry --last-applied 2023-09-01 --evidence \"county letter\"");
    }

    private static void stock(PaperRecord record) {
        record.write(
                "2026-03-01 receive-seed KA-1 --crop kale --quantity 20g --organic no --treatment listed-treatment"
                        + " --suppliers-asked 2",
                "2026-03-01 receive-seed PB-1 --crop \"pole bean\" --quantity 2lb --treatment untreated --suppliers-asked 3",
                "2026-03-01 receive-seed LE-1 --crop lettuce --quantity 5g --organic yes --certificate C-9",
                "2026-03-01 receive-seed BR-1 --crop broccoli --quantity 5g --organic yes --certificate C-9",
                "2026-03-01 receive-seed SP-1 --crop spinach --quantity 1lb --organic no --treatment other-treatment",
                "2026-03-01 receive-seed GA-1 --crop garlic --quantity 20lb --organic no --treatment untreated --form"
                        + " planting-stock --suppliers-asked 0",
                "2026-04-28 receive-seed TO-1 --crop tomato --quantity 40plants --organic no --form seedlings",
                "2026-05-15 list-material \"Bt wettable powder\" --approval \"certifier's list, spring\"");
    }

    private static void piles(PaperRecord record) {
        record.write(
                "2026-03-01 build-pile P1 --method static-aerated --ingredients \"cow manure\" --ingredients straw"
                        + " --carbon-to-nitrogen 30",
                "2026-03-04 read-pile P1 140F 125F 141F 142F",
                "2026-03-01 build-pile P2 --ingredients leaves --ingredients \"wood chips\"",
                "2026-03-02 build-pile P3 --method windrow --ingredients \"kitchen mix\" --carbon-to-nitrogen 20");
    }

    private static void eastOneAndTwo(PaperRecord record) {
        record.write(
                "2026-04-20 spread E1 --pile P1 --per-bed 200lb",
                "2026-04-22 incorporate E1",
                "2026-04-25 transplant E1 --crop lettuce --origin own --seed-lot LE-1",
                "2026-06-20 harvest E1 --crop lettuce --quantity 60heads --lot 2026/LET-0620 --last yes",
                "2026-06-25 transplant E1 --crop lettuce --origin own --seed-lot LE-1",
                "2026-08-21 harvest E1 --crop lettuce --quantity 55heads --lot 2026/LET-0821 --last yes",
                "2026-09-01 tarp E1 --pvc yes",
                "2026-09-05 harrow E1",
                "2026-04-01 spread E2 --manure cow --per-bed 150lb",
                "2026-04-03 till E2 --implement spader",
                "2026-04-20 sow E2 --crop \"pole bean\" --seed-lot PB-1",
                "2026-07-01 harvest E2 --crop \"pole bean\" --quantity 9lb --lot 2026/BEA-0701",
                "2026-07-02 harvest E2 --crop \"pole bean\" --quantity 8lb --lot 2026/BEA-0702",
                "2026-10-01 untarp E2");
    }

    private static void eastThreeAndFour(PaperRecord record) {
        record.write(
                "2026-04-01 spread E3 --manure cow --per-bed 150lb",
                "2026-04-28 transplant E3 E4 --crop kale --origin own --seed-lot KA-1",
                "2026-06-10 spray E3 E4 --product \"Bt wettable powder\" --tried-first \"row cover\" --pre-harvest-days 0",
                "2026-08-30 harvest E3 E4 --crop kale --quantity 40lb --lot 2026/KAL-0830",
                "2026-08-31 sell 2026/KAL-0830=25lb --as organic --invoice 77",
                "2026-09-10 flail E3 E4",
                "2026-09-12 sow-cover E4 --crop \"rye and vetch\" --seed-lot RV-9",
                "2026-09-15 transplant E3 --crop broccoli --origin own --seed-lot BR-1",
                "2026-11-01 end-cover E4 --how tilled",
                "2026-11-02 transplant E4 --crop broccoli --origin own --seed-lot BR-1");
    }

    private static void eastFiveAndSix(PaperRecord record) {
        record.write(
                "2026-03-28 spread E5 --manure horse --per-bed 150lb",
                "2026-04-02 incorporate E5",
                "2026-05-05 mulch E5 --kind landscape-fabric",
                "2026-05-06 transplant E5 --crop tomato --origin bought --seed-lot TO-1 --variance V-7",
                "2026-06-20 spray E5 --product \"Kaolin clay\" --tried-first none",
                "2026-07-15 harvest E5 --crop tomato --quantity 12lb --lot 2026/TOM-0715",
                "2026-07-31 harvest E5 --crop tomato --quantity 30lb --lot 2026/TOM-0731",
                "2026-10-10 finish E5 --crop tomato",
                "2026-10-20 unmulch E5",
                "2026-04-05 spread E6 --pile P3 --per-bed 200lb",
                "2026-04-06 incorporate E6",
                "2026-05-01 mulch E6 --kind biodegradable-film",
                "2026-05-02 sow E6 --crop carrot",
                "2026-05-20 split-bed E6 --into E6a --into E6b --lengths 40ft --lengths 20ft",
                "2026-08-03 harvest E6a --crop carrot --quantity 20lb --lot 2026/CAR-0803",
                "2026-08-04 harvest E6b --crop carrot --quantity 11lb --lot 2026/CAR-0804",
                "2026-08-05 sell 2026/CAR-0803=10kg --as organic --invoice 76");
    }

    private static void elsewhere(PaperRecord record) {
        record.write(
                "2026-04-10 sow Q1 --crop spinach --seed-lot SP-1",
                "2026-06-01 harvest Q1 --crop spinach --quantity 15lb --lot 2026/SPI-0601 --last yes",
                "2026-06-02 sell 2026/SPI-0601=15lb --as not-organic --invoice 75",
                "2026-09-02 sow Q1 --crop spinach --seed-lot SP-1",
                "2026-10-15 harvest Q1 --crop spinach --quantity 14lb --lot 2026/SPI-1015",
                "2026-10-15 transplant Q2 --crop garlic --origin bought --seed-lot GA-1",
                "2026-05-10 sow M1 --crop lettuce --seed-lot LE-1");
        Entry wrong = record.enter("2026-07-01 harvest Q2 --crop lettuce --quantity 20heads --lot 2026/LET-0701");
        record.book()
                .correct(
                        wrong,
                        "it was the meadow",
                        "harvest",
                        "beds=M1",
                        "crop=lettuce",
                        "quantity=20heads",
                        "lot=2026/LET-0701");
    }

    @Test
    void everyFindingIsAsWorkedOutByHand() {
        assertThat(season.findings("2026-12-31").all().stream()
                        .map(finding -> finding.rule() + " | " + finding.outcome() + " | " + finding.subject()))
                .containsExactly(
                        "land-three-years | met | East, harvests of 2026",
                        "land-three-years | incomplete | Meadow, harvests of 2026",
                        "land-three-years | not met | Quarry spinach, lot 2026/SPI-0601",
                        "land-three-years | met | Quarry, harvests of 2026",
                        "land-boundaries | incomplete | field East",
                        "land-boundaries | incomplete | field Meadow",
                        "land-boundaries | incomplete | field Quarry",
                        "split-operation | ask | the farm",
                        "seed-organic | met | seed lot BR-1, broccoli",
                        "seed-organic | not met | seed lot GA-1, garlic",
                        "seed-organic | met | seed lot KA-1, kale",
                        "seed-organic | met | seed lot LE-1, lettuce",
                        "seed-organic | incomplete | seed lot PB-1, pole bean",
                        "seed-organic | not met | seed lot SP-1, spinach",
                        "seed-recorded | incomplete | E6 carrot",
                        "seed-recorded | incomplete | seed lot RV-9",
                        "seedlings-organic | ask | seedlings TO-1, tomato",
                        "manure-interval | ask | E1 lettuce, lot 2026/LET-0620",
                        "manure-interval | met | E1 lettuce, lot 2026/LET-0821",
                        "manure-interval | not met | E2 pole bean, lot 2026/BEA-0701",
                        "manure-interval | met | E2 pole bean, lot 2026/BEA-0702",
                        "manure-interval | not met | E3 kale, lot 2026/KAL-0830",
                        "manure-interval | ask | E5 tomato, lot 2026/TOM-0715",
                        "manure-interval | met | E5 tomato, lot 2026/TOM-0731",
                        "manure-interval | not met | E6a carrot, lot 2026/CAR-0803",
                        "manure-interval | met | E6b carrot, lot 2026/CAR-0804",
                        "manure-contact-fda | met | untreated manure of 2026",
                        "compost-process | ask | pile P1",
                        "compost-process | met | pile P2",
                        "compost-process | not met | pile P3",
                        "compost-fda | not met | pile P1",
                        "compost-fda | incomplete | pile P3",
                        "compost-reviewed | incomplete | log of pile P1",
                        "material-listed | met | Bt wettable powder",
                        "material-listed | incomplete | Kaolin clay",
                        "input-source | incomplete | Bt wettable powder",
                        "input-source | incomplete | Kaolin clay",
                        "input-source | incomplete | cow manure in 2026",
                        "input-source | incomplete | horse manure in 2026",
                        "application-recorded | incomplete | Bt wettable powder in 2026",
                        "application-recorded | incomplete | Kaolin clay in 2026",
                        "application-recorded | met | compost of pile P1 in 2026",
                        "application-recorded | met | compost of pile P3 in 2026",
                        "application-recorded | met | cow manure in 2026",
                        "application-recorded | met | horse manure in 2026",
                        "spray-need | met | E3, E4 Bt wettable powder",
                        "spray-need | not met | E5 Kaolin clay",
                        "spray-interval | met | E3, E4 Bt wettable powder",
                        "spray-interval | incomplete | E5 Kaolin clay",
                        "rotation-family | ask | E1 lettuce after lettuce",
                        "rotation-family | ask | E3 broccoli after kale",
                        "rotation-family | ask | Q1 spinach after spinach",
                        "mulch-removed | met | E5 landscape-fabric",
                        "mulch-listed | ask | E1 PVC tarp",
                        "mulch-listed | ask | E6 biodegradable film",
                        "tarp-harrowed | ask | E1 harrow",
                        "clean-out | incomplete | clean-out of 2026",
                        "lot-oversold | ask | lot 2026/CAR-0803",
                        "sale-recorded | incomplete | sales of 2026",
                        "doer-recorded | met | work of 2026",
                        "does-not-fit | incomplete | entry 34");
    }

    @Test
    void everySumIsAsWorkedOutByHand() {
        assertThat(season.findings("2026-12-31").all().stream()
                        .filter(finding -> !finding.rule().startsWith("compost"))
                        .map(Finding::arithmetic)
                        .filter(sum -> !sum.isEmpty()))
                .containsExactly(
                        "2010-01-01 + 3 years = 2013-01-01",
                        "2023-09-01 + 3 years = 2026-09-01; 2026-06-01 is 92 days before it",
                        "2023-09-01 + 3 years = 2026-09-01",
                        "2026-06-20 − 2026-04-22 = 59 days, 120 asked",
                        "2026-08-21 − 2026-04-22 = 121 days, 120 asked",
                        "2026-07-01 − 2026-04-03 = 89 days, 90 asked",
                        "2026-07-02 − 2026-04-03 = 90 days, 90 asked",
                        "2026-07-15 − 2026-04-02 = 104 days, 120 asked",
                        "2026-07-31 − 2026-04-02 = 120 days, 120 asked",
                        "2026-08-03 − 2026-04-06 = 119 days, 120 asked",
                        "2026-08-04 − 2026-04-06 = 120 days, 120 asked",
                        "2026-08-30 − 2026-06-10 = 81 days, 0 asked",
                        "crop ended 2026-10-10, removed 2026-10-20: 10 days after",
                        "20 lb harvested − 10 kg sold = −2.046 lb");
    }

    @Test
    void lotsAndSalesStandBesideWhatConcernsThem() {
        Findings findings = season.findings("2026-12-31");

        assertThat(findings.of("seed-organic").get(5).lots())
                .containsExactly(LotId.parse("2026/SPI-0601"), LotId.parse("2026/SPI-1015"));
        assertThat(findings.of("manure-interval").get(4).sentence())
                .contains("no incorporation is recorded")
                .endsWith("2026/KAL-0830 was sold as organic on invoice 77.");
        assertThat(findings.of("land-three-years").get(2).sentence())
                .endsWith("2026/SPI-0601 was sold as not organic on invoice 75.");
        assertThat(findings.of("seed-recorded").get(0).lots())
                .containsExactly(LotId.parse("2026/CAR-0803"), LotId.parse("2026/CAR-0804"));
    }

    @Test
    void aLotIsAsGoodAsTheWorstThatConcernsIt() {
        Findings findings = season.findings("2026-12-31");
        Lineage lineage = Lineage.of(season.farm(), LocalDate.parse("2026-12-31"));

        assertThat(Eligibility.of(LotId.parse("2026/LET-0821"), lineage, findings)
                        .worst())
                .isEqualTo(Outcome.MET);
        assertThat(Eligibility.of(LotId.parse("2026/TOM-0731"), lineage, findings)
                        .worst())
                .isEqualTo(Outcome.INCOMPLETE);
        Eligibility carrots = Eligibility.of(LotId.parse("2026/CAR-0803"), lineage, findings);
        assertThat(carrots.worst()).isEqualTo(Outcome.NOT_MET);
        assertThat(carrots.reasons().stream().map(Finding::rule))
                .containsExactly(
                        "manure-interval", "seed-recorded", "mulch-listed", "lot-oversold", "land-three-years");
    }

    /** What is written later, or out of order, is judged in the order of the work. */
    @ParameterizedTest(name = "entries shuffled with seed {0}")
    @ValueSource(longs = {1, 2, 3, 42, 2026, 20_261_231})
    void theOrderInWhichEntriesAreHandedInDoesNotMatter(long seed) {
        List<Entry> shuffled = new ArrayList<>(season.book().entries());
        Collections.shuffle(shuffled, new Random(seed));

        Findings findings =
                Findings.of(Farm.of(shuffled), RuleBook.us(), Settings.defaults(), new KnownCrops(), YEAR_END);

        assertThat(findings).isEqualTo(season.findings("2026-12-31"));
    }

    /** On 1 July neither the second pick of beans nor the spinach of autumn is there yet. */
    @Test
    void whatWasDoneAfterTheDayAskedAboutIsNotThere() {
        assertThat(season.findings("2026-07-01").of("manure-interval").stream()
                        .flatMap(finding -> finding.lots().stream()))
                .containsExactly(LotId.parse("2026/LET-0620"), LotId.parse("2026/BEA-0701"));
        assertThat(season.findings("2026-07-01").of("does-not-fit")).isEmpty();
    }
}
