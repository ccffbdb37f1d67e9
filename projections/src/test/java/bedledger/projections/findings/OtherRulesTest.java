package bedledger.projections.findings;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.Lineage;
import bedledger.language.LotId;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OtherRulesTest {

    @Test
    void theLastOfSeveralProhibitedSubstancesCounts() {
        PaperRecord record = PaperRecord.of(
                "2026-02-20 declare-land North --last-applied 2020-05-01",
                "2026-02-20 declare-land North --last-applied 2024-05-01",
                "2026-02-20 declare-land North --none-since 2015-01-01",
                "2026-04-10 sow N1 --crop spinach",
                "2026-06-01 harvest N1 --crop spinach --quantity 9kg --lot 2026/S-1");

        assertThat(record.theFindingOf("land-three-years").arithmetic()).contains("2024-05-01 + 3 years = 2027-05-01");
    }

    @ParameterizedTest(name = "none since {0}: {1}")
    @CsvSource({"2023-06-01, MET", "2023-06-02, INCOMPLETE"})
    void landIsShownCleanOnlySinceTheDayDeclared(String since, Outcome outcome) {
        PaperRecord record = PaperRecord.of(
                "2026-02-20 declare-land North --none-since " + since,
                "2026-04-10 sow N1 --crop spinach",
                "2026-06-01 harvest N1 --crop spinach --quantity 9kg --lot 2026/S-1");

        assertThat(record.theFindingOf("land-three-years").outcome()).isEqualTo(outcome);
    }

    /** 2024-02-29 has no same date in 2027; the three years are over on 2027-03-01. */
    @Test
    void aLeapDayEndsOnTheDayAfterTheLastOfFebruary() {
        PaperRecord record = PaperRecord.of("2026-02-20 declare-land North --last-applied 2024-02-29");

        assertThat(record.earliest("N1", "spinach", "2026-04-01").day()).contains(LocalDate.parse("2027-03-01"));
    }

    @Test
    void aFarmWhollyInTransitionIsNotSplit() {
        PaperRecord record = PaperRecord.of(
                "2026-02-20 register-field South --gross 0.02ha",
                "2026-02-20 declare-land North --last-applied 2024-05-01",
                "2026-02-20 declare-land South --last-applied 2024-05-01");

        assertThat(record.findingsOf("split-operation")).isEmpty();
    }

    @Test
    void plantsAndCropsWithoutASeedLotAreIncompleteButBoughtPlantsAreJudgedElsewhere() {
        PaperRecord record = PaperRecord.of(
                "2026-03-01 found N4 --crop leek",
                "2026-04-18 transplant N1 --crop broccoli --origin own",
                "2026-04-18 transplant N2 --crop tomato --origin bought --organic yes",
                "2026-04-18 sow-cover N3 --crop \"rye and vetch\"",
                "2026-04-20 harvest N4 --crop leek --quantity 9kg --lot 2026/L-1");

        assertThat(record.findingsOf("seed-recorded"))
                .extracting(Finding::subject)
                .containsExactly("N1 broccoli", "N3 rye and vetch", "N4 leek");
        assertThat(record.outcome("seed-recorded", "2026/L-1")).isEqualTo(Outcome.INCOMPLETE);
    }

    @Test
    void lotsBelongToTheSeedTheyGrewFromAndToNoEarlierCrop() {
        PaperRecord record = PaperRecord.of(
                "2026-03-01 receive-seed L-1 --crop lettuce --quantity 9g --organic yes",
                "2026-03-01 receive-seed L-2 --crop lettuce --quantity 9g --organic no --treatment untreated",
                "2026-03-01 receive-seed L-3 --crop lettuce --quantity 9g --organic yes",
                "2026-04-01 sow N1 --crop lettuce --seed-lot L-1",
                "2026-05-20 harvest N1 --crop lettuce --quantity 9kg --lot 2026/A --last yes",
                "2026-06-01 sow N1 --crop lettuce --seed-lot L-2",
                "2026-06-15 sow N1 --crop lettuce --seed-lot L-3",
                "2026-07-20 harvest N1 --crop lettuce --quantity 9kg --lot 2026/B");

        assertThat(record.findingsOf("seed-organic"))
                .extracting(Finding::lots)
                .containsExactly(
                        List.of(LotId.parse("2026/A")), List.of(LotId.parse("2026/B")), List.of(LotId.parse("2026/B")));
    }

    @ParameterizedTest(name = "between broccoli and kale: {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-07-10 sow N1 --crop lettuce                  | 0",
                "2026-07-10 sow-cover N1 --crop \"rye and vetch\"  | 0",
                "2026-07-10 tarp N1                                | 1",
                "2026-08-01 transplant N1 --crop lettuce           | 1"
            })
    void anotherCropOrCoverBetweenBreaksTheSequence(String between, int findings) {
        PaperRecord record = PaperRecord.of(
                "2026-04-18 transplant N1 --crop broccoli",
                "2026-07-01 flail N1",
                between,
                "2026-08-01 transplant N1 --crop kale");

        assertThat(record.findingsOf("rotation-family")).hasSize(findings);
    }

    @Test
    void fillingGapsIsNoNewCropAndNeitherIsStaking() {
        PaperRecord record = PaperRecord.of(
                "2026-04-18 transplant N1 --crop broccoli",
                "2026-05-01 stake N1 --crop broccoli --clear-of-soil yes",
                "2026-05-02 transplant N1 --crop broccoli");

        assertThat(record.findingsOf("rotation-family")).isEmpty();
    }

    @Test
    void aCropWhoseFamilyIsNotKnownCannotBeJudgedUntilItIsAdded() {
        PaperRecord record = PaperRecord.of(
                "2026-04-18 transplant N1 --crop broccoli",
                "2026-07-01 flail N1",
                "2026-08-01 transplant N1 --crop tatsoi");

        assertThat(record.theFindingOf("rotation-family").outcome()).isEqualTo(Outcome.INCOMPLETE);
        record.write("2026-09-01 add-crop tatsoi --family Brassicaceae");
        assertThat(record.theFindingOf("rotation-family").outcome()).isEqualTo(Outcome.ASK);
    }

    @Test
    void plasticUnderTheNextYearsCropStayedOverItsSeason() {
        PaperRecord record = PaperRecord.of(
                "2025-05-02 mulch N1 --kind polyethylene",
                "2025-05-03 transplant N1 --crop tomato",
                "2025-10-05 finish N1 --crop tomato",
                "2026-05-03 transplant N1 --crop tomato");

        assertThat(record.theFindingOf("mulch-removed").outcome()).isEqualTo(Outcome.INCOMPLETE);
    }

    @Test
    void plasticUnderAStandingCropIsNoFinding() {
        PaperRecord record = PaperRecord.of(
                "2026-05-02 mulch N1 --kind polyethylene",
                "2026-05-03 transplant N1 --crop lettuce",
                "2026-06-25 finish N1 --crop lettuce",
                "2026-07-01 transplant N1 --crop tomato");

        assertThat(record.findings("2026-08-01").of("mulch-removed")).isEmpty();
    }

    @Test
    void plasticOnASplitBedIsToldOfTheParts() {
        PaperRecord record = PaperRecord.of(
                "2026-05-02 mulch N1 --kind polyethylene",
                "2026-05-03 transplant N1 --crop tomato",
                "2026-06-01 split-bed N1 --into N1a --into N1b --lengths 12m --lengths 8m",
                "2026-10-05 finish N1a N1b --crop tomato",
                "2026-10-09 unmulch N1a");

        assertThat(record.findingsOf("mulch-removed"))
                .extracting(finding -> finding.subject() + " " + finding.outcome())
                .containsExactly("N1a polyethylene met", "N1b polyethylene incomplete");
    }

    @Test
    void aListingAfterTheUseIsSaidAndStaysOpen() {
        PaperRecord record = PaperRecord.of(
                "2026-05-01 spread N1 --material \"Feather meal\" --per-bed 2kg",
                "2026-05-02 sow N1 --crop carrot",
                "2026-06-01 list-material \"Feather meal\" --approval letter",
                "2026-07-01 spread N2 --material \"Feather meal\" --per-bed 2kg",
                "2026-08-01 harvest N1 --crop carrot --quantity 9kg --lot 2026/C-1");

        assertThat(record.findingsOf("material-listed"))
                .extracting(Finding::outcome)
                .containsExactly(Outcome.INCOMPLETE, Outcome.MET);
        assertThat(record.findingsOf("material-listed").get(0).sentence()).contains("a listing follows on 2026-06-01");
        assertThat(record.outcome("material-listed", "2026/C-1")).isEqualTo(Outcome.INCOMPLETE);
    }

    @Test
    void aListingWithoutApprovalIsIncomplete() {
        PaperRecord record = PaperRecord.of(
                "2026-03-01 list-material \"Feather meal\" --maker \"Plain Mills\"",
                "2026-05-01 spread N1 --material \"Feather meal\" --per-bed 2kg");

        assertThat(record.theFindingOf("material-listed").sentence()).contains("no approval is recorded");
    }

    @Test
    void sprayingSetsADayForTheNextPick() {
        PaperRecord record = PaperRecord.of(
                "2026-05-01 transplant N1 --crop broccoli", "2026-06-01 spray N1 --product Soap --pre-harvest-days 7");

        assertThat(record.earliest("N1", "broccoli", "2026-06-02").day()).contains(LocalDate.parse("2026-06-08"));
        assertThat(record.findingsOf("spray-interval")).isEmpty();
    }

    @ParameterizedTest(name = "soil work under a tarp: {0}")
    @CsvSource({"till N1", "incorporate N1", "harrow N1"})
    void soilWorkUnderATarpIsAQuestion(String work) {
        PaperRecord record = PaperRecord.of("2026-07-08 tarp N1", "2026-07-11 " + work);

        assertThat(record.theFindingOf("tarp-harrowed").outcome()).isEqualTo(Outcome.ASK);
    }

    private static PaperRecord lot(String... acts) {
        return PaperRecord.of(
                        "2026-05-01 sow N1 --crop carrot",
                        "2026-08-01 harvest N1 --crop carrot --quantity 30kg --lot 2026/C-1")
                .write(acts);
    }

    @Test
    void whatComesBackCanGoOutAgain() {
        PaperRecord record = lot(
                "2026-08-02 sell 2026/C-1=30kg --as organic",
                "2026-08-03 take-back 2026/C-1=5kg",
                "2026-08-04 donate 2026/C-1=5kg");

        assertThat(record.findingsOf("lot-oversold")).isEmpty();
    }

    @Test
    void everythingThatWentOutIsCounted() {
        PaperRecord record = lot(
                "2026-08-02 sell 2026/C-1=20.5kg --as organic",
                "2026-08-03 donate 2026/C-1=5.5kg",
                "2026-08-04 lose 2026/C-1=6.0kg --cause rotted");

        assertThat(record.theFindingOf("lot-oversold").arithmetic())
                .isEqualTo("30 kg harvested − 20.5 kg sold − 5.5 kg donated − 6.0 kg lost = −2.0 kg");
    }

    @Test
    void bunchesAreNotWeighedAgainstKilograms() {
        assertThat(lot("2026-08-02 sell 2026/C-1=500bunches --as organic").findingsOf("lot-oversold"))
                .isEmpty();
    }

    @Test
    void anAnswerToWhatIsNotInForceIsTold() {
        PaperRecord record = new PaperRecord();
        var first = record.enter("2026-07-08 tarp N1");
        record.book().strike(first, "it was N2");
        record.book().strike(first, "twice");

        assertThat(record.theFindingOf("does-not-fit").sentence()).contains("changes nothing");
    }

    @Test
    void nothingIsKnownOfALotFoundInStore() {
        PaperRecord record = PaperRecord.of("2026-02-01 found-lot 2025/ON-1 --crop onion --quantity 85kg");

        Lineage lineage = Lineage.of(record.farm(), LocalDate.parse("2026-12-31"));
        assertThat(Eligibility.of(LotId.parse("2025/ON-1"), lineage, record.findings("2026-12-31"))
                        .worst())
                .isEqualTo(Outcome.INCOMPLETE);
    }
}
