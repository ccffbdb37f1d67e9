package bedledger.projections.findings;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.BedId;
import bedledger.language.LotId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InputRulesTest {
    private static Finding of(String rule, String... lines) {
        return PaperRecord.of(lines).theFindingOf(rule);
    }

    @Test
    void aProhibitedInputNamesTheLotsOfThreeYearsAndBarsTheBed() {
        PaperRecord record = PaperRecord.of(
                "2026-05-01 spread N1 --material \"Tobacco dust\" --per-bed 1kg",
                "2026-06-01 harvest N1 --crop kale --quantity 4kg --lot 2026/KAL-1",
                "2029-05-01 harvest N1 --crop kale --quantity 4kg --lot 2029/KAL-1");

        assertThat(record.theFindingOf("prohibited-input").lots()).containsExactly(LotId.parse("2026/KAL-1"));
        assertThat(record.earliest("N1", "kale", "2026-06-02").day()).contains(java.time.LocalDate.parse("2029-05-01"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "set-wood N1 --what posts, INCOMPLETE",
        "set-wood N1 --what posts --treated-wood no, MET",
        "set-wood N1 --what posts --treated-wood yes, ASK",
        "set-wood N1 --what posts --treated-wood yes --treated-with linseed, ASK",
        "set-wood N1 --what posts --treated-wood yes --treated-with CCA, NOT_MET",
        "set-wood N1 --what \"creosote railway sleepers\", NOT_MET",
        "stake N1 --crop tomato --material \"treated stakes\", ASK",
        "stake N1 --crop tomato --material \"oak stakes\", INCOMPLETE",
        "stake N1 --crop tomato --treated-wood no, MET"
    })
    void woodInTheSoilIsJudgedByWhatItIsTreatedWith(String line, Outcome outcome) {
        assertThat(of("treated-wood", "2026-04-01 found N1 --crop tomato", "2026-04-10 " + line)
                        .outcome())
                .isEqualTo(outcome);
    }

    @Test
    void stringAndNetsAreNoWood() {
        assertThat(PaperRecord.of(
                                "2026-04-01 found N1 --crop tomato",
                                "2026-04-10 stake N1 --crop tomato --material \"jute string\"")
                        .findingsOf("treated-wood"))
                .isEmpty();
    }

    @Test
    void traysPottedUpInAnUnnamedMixAreAGap() {
        PaperRecord record = PaperRecord.of(
                "2026-03-01 sow-trays LE-1 --crop leek --potting-mix \"Own mix\"",
                "2026-03-20 pot-up LE-1 --plants 90 --discarded 6");
        assertThat(record.findingsOf("tray-mix"))
                .extracting(Finding::outcome)
                .containsExactlyInAnyOrder(Outcome.MET, Outcome.INCOMPLETE);
    }

    @Test
    void aMixThatPlantsWerePottedIntoIsAnInputOfTheirLots() {
        PaperRecord record = PaperRecord.of(
                "2026-03-01 sow-trays LE-1 --crop leek",
                "2026-03-20 pot-up LE-1 --potting-mix \"Tobacco dust\"",
                "2026-05-01 transplant N1 --crop leek --origin own --trays LE-1",
                "2026-09-01 harvest N1 --crop leek --quantity 4kg --lot 2026/LEE-1");
        assertThat(record.theFindingOf("prohibited-input").lots()).containsExactly(LotId.parse("2026/LEE-1"));
    }

    @Test
    void stockForPerennialsIsSoldAsOrganicStockOnlyAfterAYear() {
        String received = "2026-03-02 receive-seed AS-1 --crop asparagus --quantity 40pieces --form planting-stock"
                + " --organic no --treatment untreated --suppliers-asked 3";
        assertThat(of("seed-organic", received).sentence()).doesNotContain("205.204(a)(4)");
        Finding perennial = of("seed-organic", received + " --perennial yes");
        assertThat(perennial.outcome()).isEqualTo(Outcome.MET);
        assertThat(perennial.sentence()).contains("from 2027-03-02 (205.204(a)(4))");
    }

    @Test
    void whatIsInAListedMaterialCountsToo() {
        assertThat(of(
                                "prohibited-input",
                                "2026-03-01 list-material \"Grow fast 10-0-0\" --composition \"urea, molasses\"",
                                "2026-05-01 spread N1 --material \"Grow fast 10-0-0\" --per-bed 1kg")
                        .outcome())
                .isEqualTo(Outcome.NOT_MET);
    }

    @Test
    void ashEnteredAsManureIsFound() {
        assertThat(of("prohibited-input", "2026-05-01 spread N1 --manure \"ash of manure\" --per-bed 1kg")
                        .citation())
                .isEqualTo("7 CFR 205.602(a)");
    }

    /** Whole words only. */
    @ParameterizedTest
    @CsvSource({"Feather meal 13-0-0", "Leaden hall compost", "Kelp meal"})
    void harmlessNamesAreNotMistaken(String name) {
        assertThat(PaperRecord.of("2026-05-01 spread N1 --material \"" + name + "\" --per-bed 1kg")
                        .findingsOf("prohibited-input"))
                .isEmpty();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "'', INCOMPLETE",
        "--reason \"tissue test: boron low\", MET",
        "--reason \"leaves look pale\", ASK",
        "--reason none, NOT_MET"
    })
    void aLackOfMicronutrientsIsDocumented(String reason, Outcome outcome) {
        assertThat(of("micronutrient-need", "2026-05-01 spread N1 --material \"Borax 11\" --per-bed 5g " + reason)
                        .outcome())
                .isEqualTo(outcome);
    }

    @Test
    void aSoilSampleFromBeforeIsAQuestionAndOneFromAfterIsNothing() {
        String use = "2026-05-01 spread N1 --material \"Zinc sulfate\" --per-bed 5g";

        assertThat(of("micronutrient-need", "2026-04-01 sample-soil N1 --report \"all values\"", use)
                        .outcome())
                .isEqualTo(Outcome.ASK);
        assertThat(of("micronutrient-need", use, "2026-06-01 sample-soil N1 --report \"all values\"")
                        .outcome())
                .isEqualTo(Outcome.INCOMPLETE);
    }

    @Test
    void aNitrateOfAMicronutrientIsOut() {
        assertThat(of(
                                "micronutrient-need",
                                "2026-05-01 spread N1 --material \"Zinc nitrate\" --per-bed 5g --reason \"leaf test\"")
                        .outcome())
                .isEqualTo(Outcome.NOT_MET);
    }

    @Test
    void whatTheCropNeedsIsAskedForBeforeAShareIsTakenOfIt() {
        Finding finding = of(
                "sodium-nitrate", "2026-05-01 spread N1 --material \"Sodium nitrate\" --per-bed 187g --nitrogen 16%");

        assertThat(finding.outcome()).isEqualTo(Outcome.INCOMPLETE);
        assertThat(finding.sentence()).contains("what nitrogen the crop needs in all is not recorded");
        assertThat(finding.arithmetic()).isEqualTo("19.9 kg N/ha given");
    }

    @ParameterizedTest(name = "{0}: 205.602({1})")
    @CsvSource({"2018-05-01, g", "2026-05-01, h"})
    void sodiumNitrateIsCitedByTheLetterOfItsDay(String day, String letter) {
        PaperRecord record = PaperRecord.empty()
                .write(
                        "2017-01-01 register-field North --gross 0.05ha",
                        "2017-01-01 lay-out N1 --field North --length 20m --width 0.75m",
                        day + " spread N1 --material \"Chilean nitrate\" --per-bed 187g");

        assertThat(record.theFindingOf("sodium-nitrate").citation()).isEqualTo("7 CFR 205.602(" + letter + ")");
    }

    /** Listed since 2019-01-28. */
    @ParameterizedTest(name = "rotenone sprayed on {0}: {1}")
    @CsvSource({"2019-01-27, 0", "2019-01-28, 1"})
    void rotenoneIsOutFromTheDayItWasListed(String day, int findings) {
        PaperRecord record = PaperRecord.empty()
                .write(
                        "2017-01-01 register-field North --gross 0.05ha",
                        "2017-01-01 lay-out N1 --field North --length 20m --width 0.75m",
                        day + " spray N1 --product \"Rotenone dust\"");

        assertThat(record.findingsOf("prohibited-input")).hasSize(findings);
    }

    @Test
    void aMixOwnMadeHasItsMakeUpOnRecord() {
        PaperRecord record = PaperRecord.of(
                "2026-02-01 make-mix \"Own mix\" --materials \"Peat moss\"",
                "2026-03-01 sow-trays LE-1 --crop leek --potting-mix \"Own mix\"");

        assertThat(record.findingsOf("input-source"))
                .filteredOn(finding -> finding.subject().equals("Own mix"))
                .extracting(Finding::outcome)
                .containsExactly(Outcome.MET);
    }

    @Test
    void compostInAMixIsAskedAboutUntilItsProcessIsShown() {
        PaperRecord record = PaperRecord.of(
                "2026-01-01 build-pile P1 --method static-aerated --ingredients \"cow manure\" --carbon-to-nitrogen 30",
                "2026-02-01 make-mix \"Own mix\" --pile P1",
                "2026-03-01 sow-trays LE-1 --crop leek --potting-mix \"Own mix\"");

        assertThat(record.findingsOf("tray-mix"))
                .extracting(Finding::outcome)
                .containsExactly(Outcome.ASK, Outcome.MET);
    }

    @Test
    void aPileIsFoundFromTheBedsItWasSpreadOn() {
        PaperRecord record = PaperRecord.of(
                "2026-01-01 build-pile P1 --method windrow --ingredients \"cow manure\"",
                "2026-05-01 spread N2 N3 --pile P1 --per-bed 10kg");

        assertThat(record.theFindingOf("compost-process").places()).contains(new BedId("N2"), new BedId("N3"));
        assertThat(record.theFindingOf("compost-fda").places()).contains(new BedId("N2"), new BedId("N3"));
    }

    @Test
    void burningIsForDiseaseOnly() {
        String haul = "2026-10-10 haul N1 --crop tomato --weight 20kg --to \"burn pile\"";

        assertThat(of("residue-burnt", haul + " --note \"late blight\"").outcome())
                .isEqualTo(Outcome.ASK);
        assertThat(of("residue-burnt", haul + " --note \"in the way\"").outcome())
                .isEqualTo(Outcome.NOT_MET);
    }

    @ParameterizedTest(name = "sprayed {0}, weeded {1}: {2}")
    @CsvSource({"2026-06-01 --at 08:00, 2026-06-01 --at 11:59, NOT_MET", "2026-06-01, 2026-06-01, INCOMPLETE"})
    void goingInTooEarlyIsToldAndAnUnknownHourAsked(String spray, String weed, Outcome outcome) {
        assertThat(of("re-entry", day(spray, "spray N1 --product \"Kaolin clay\" --re-entry 4h"), day(weed, "weed N1"))
                        .outcome())
                .isEqualTo(outcome);
    }

    @Test
    void fourHoursOnNobodyAsks() {
        assertThat(PaperRecord.of(
                                "2026-06-01 spray N1 --product \"Kaolin clay\" --re-entry 4h --at 08:00",
                                "2026-06-01 weed N1 --at 12:00",
                                "2026-06-02 weed N1")
                        .findingsOf("re-entry"))
                .isEmpty();
    }

    private static String day(String when, String what) {
        return when.substring(0, 10) + " " + what + when.substring(10);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"'', INCOMPLETE", "--certificate C-9, MET"})
    void theGrowersWordAloneDoesNotMakeSeedOrganic(String certificate, Outcome outcome) {
        assertThat(of(
                                "seed-organic",
                                "2026-03-01 receive-seed S-1 --crop kale --quantity 9g --organic yes " + certificate)
                        .outcome())
                .isEqualTo(outcome);
    }

    @Test
    void aDocumentAttachedToTheReceiptIsAQuestion() {
        PaperRecord record = PaperRecord.of("2026-03-01 receive-seed S-1 --crop kale --quantity 9g --organic yes");
        record.book()
                .add(new bedledger.language.BookKeeping.DocumentAttached(
                        3, bedledger.language.DocumentId.parse("a".repeat(64)), "scan-7.pdf"));

        assertThat(record.theFindingOf("seed-organic").outcome()).isEqualTo(Outcome.ASK);
    }

    @Test
    void aSettingAllowsNoSodiumNitrateAtAll() {
        PaperRecord record =
                PaperRecord.of("2026-05-01 spread N1 --material \"Sodium nitrate\" --per-bed 1g --nitrogen 16% --reason"
                        + " \"crop needs 100 kg N/ha\"");

        assertThat(record.theFindingOf("sodium-nitrate").outcome()).isEqualTo(Outcome.MET);
        assertThat(record.reading(Reading.SODIUM_NITRATE_WITHIN_A_FIFTH, false)
                        .theFindingOf("sodium-nitrate")
                        .outcome())
                .isEqualTo(Outcome.NOT_MET);
    }
}
