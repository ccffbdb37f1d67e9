package bedledger.projections.findings;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.BedId;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ManureIntervalTest {
    private static final String RULE = "manure-interval";
    private static final String SPREAD = "2026-04-01 spread N1 --manure cow --per-bed 60kg";

    private static PaperRecord manured(String... after) {
        return PaperRecord.of(SPREAD).write(after);
    }

    private static PaperRecord carrots(PaperRecord record, String pick) {
        return record.write(
                "2026-05-01 sow N1 --crop carrot", pick + " harvest N1 --crop carrot --quantity 9kg --lot 2026/C-1");
    }

    /** 2026-04-03 + 119 days = 2026-07-31. */
    @ParameterizedTest(name = "{0} counts as incorporation")
    @ValueSource(strings = {"incorporate N1", "till N1", "harrow N1"})
    void anyTillageWorksManureIn(String work) {
        Finding finding = carrots(manured("2026-04-03 " + work), "2026-07-31").theFindingOf(RULE);

        assertThat(finding.arithmetic()).contains("= 119 days");
        assertThat(finding.entries()).contains(4L);
    }

    @ParameterizedTest(name = "{0} does not")
    @ValueSource(strings = {"flail N1", "broadfork N1", "shape N1", "weed N1 --tool hoe"})
    void otherWorkDoesNot(String work) {
        assertThat(carrots(manured("2026-04-03 " + work), "2026-12-01")
                        .theFindingOf(RULE)
                        .sentence())
                .contains("no incorporation is recorded");
    }

    @Test
    void workingTheSoilBeforeSpreadingDoesNotCount() {
        PaperRecord record = PaperRecord.of("2026-03-30 till N1", SPREAD);

        assertThat(carrots(record, "2026-12-01").theFindingOf(RULE).outcome()).isEqualTo(Outcome.NOT_MET);
    }

    @Test
    void theFirstWorkingInCountsAndLaterOnesDoNotStartTheClockAgain() {
        PaperRecord record = manured("2026-04-03 till N1", "2026-04-20 harrow N1");

        assertThat(carrots(record, "2026-08-01").theFindingOf(RULE).arithmetic())
                .contains("2026-04-03 = 120 days");
    }

    /** The harrowing folds back a tarp that nobody laid, so it does not fit and relieves nobody; the manure still counts. */
    @Test
    void whatDoesNotFitRelievesNobody() {
        PaperRecord record = manured("2026-04-03 harrow N1 --tarp-folded-back yes");

        assertThat(carrots(record, "2026-12-01").theFindingOf(RULE).outcome()).isEqualTo(Outcome.NOT_MET);
    }

    @Test
    void laterManureBindsWhereEarlierNoLongerDoes() {
        PaperRecord record = manured(
                "2026-04-03 till N1",
                "2026-06-01 spread N1 --manure horse --per-bed 60kg",
                "2026-06-02 incorporate N1");

        assertThat(carrots(record, "2026-09-01").theFindingOf(RULE).arithmetic())
                .isEqualTo("2026-09-01 − 2026-06-02 = 91 days, 120 asked");
    }

    @Test
    void aLotFromSeveralBedsIsAsGoodAsItsWorstBed() {
        PaperRecord record = PaperRecord.of(
                "2026-04-01 spread N1 N2 --manure cow --per-bed 60kg",
                "2026-04-03 till N1",
                "2026-05-03 till N2",
                "2026-05-10 sow N1 N2 N3 --crop carrot",
                "2026-08-10 harvest N1 N2 N3 --crop carrot --quantity 9kg --lot 2026/C-1");

        assertThat(record.findingsOf(RULE)).extracting(Finding::outcome).containsExactly(Outcome.MET, Outcome.NOT_MET);
        assertThat(record.findingsOf(RULE).get(1).places()).containsExactly(new BedId("N2"));
        assertThat(record.outcome(RULE, "2026/C-1")).isEqualTo(Outcome.NOT_MET);
    }

    @Test
    void bedsWithTheSameStoryAreToldTogether() {
        PaperRecord record = PaperRecord.of(
                "2026-04-01 spread N1 N2 --manure cow --per-bed 60kg",
                "2026-04-03 till N1 N2",
                "2026-05-10 sow N1 N2 --crop carrot",
                "2026-06-10 harvest N1 N2 --crop carrot --quantity 9kg --lot 2026/C-1");

        assertThat(record.theFindingOf(RULE).subject()).isEqualTo("N1, N2 carrot, lot 2026/C-1");
    }

    /** 90 to 119 days after working in: {@code ASK} only where the record leaves contact open. */
    @ParameterizedTest(name = "{0}, clear of the soil {1}: {2}")
    @CsvSource({
        "tomato, yes, MET",
        "tomato, no, NOT_MET",
        "tomato, '', ASK",
        "pole bean, '', MET",
        "pole bean, no, NOT_MET",
        "carrot, '', NOT_MET",
        "carrot, yes, ASK"
    })
    void contactIsTheCropsNatureAndWhatWasRecorded(String crop, String clear, Outcome outcome) {
        PaperRecord record = manured("2026-04-03 till N1", "2026-05-01 sow N1 --crop \"" + crop + "\"");
        if (!clear.isEmpty()) {
            record.write("2026-05-20 stake N1 --crop \"" + crop + "\" --clear-of-soil " + clear);
        }
        record.write("2026-07-10 harvest N1 --crop \"" + crop + "\" --quantity 9kg --lot 2026/L-1");

        assertThat(record.theFindingOf(RULE).outcome()).isEqualTo(outcome);
    }

    @Test
    void stakingAfterThePickDoesNotHelpThePick() {
        PaperRecord record = manured(
                "2026-04-03 till N1",
                "2026-05-01 sow N1 --crop tomato",
                "2026-07-10 harvest N1 --crop tomato --quantity 9kg --lot 2026/L-1",
                "2026-07-12 stake N1 --crop tomato --clear-of-soil yes");

        assertThat(record.theFindingOf(RULE).outcome()).isEqualTo(Outcome.ASK);
    }

    @Test
    void aSettingReadsOpenContactAsClear() {
        PaperRecord record = manured(
                        "2026-04-03 till N1",
                        "2026-05-01 sow N1 --crop tomato",
                        "2026-07-10 harvest N1 --crop tomato --quantity 9kg --lot 2026/L-1")
                .reading(Reading.UNCERTAIN_CONTACT_COUNTS_AS_SOIL, false);

        assertThat(record.theFindingOf(RULE).outcome()).isEqualTo(Outcome.MET);
        assertThat(record.theFindingOf(RULE).arithmetic()).endsWith("98 days, 90 asked");
    }

    private static PaperRecord compost(String readings) {
        return PaperRecord.of(
                "2026-03-01 build-pile P1 --method static-aerated --ingredients \"cow manure\" --carbon-to-nitrogen 30",
                "2026-03-05 read-pile P1 " + readings,
                "2026-05-01 spread N1 --pile P1 --per-bed 60kg",
                "2026-05-02 incorporate N1",
                "2026-05-03 sow N1 --crop carrot",
                "2026-07-10 harvest N1 --crop carrot --quantity 9kg --lot 2026/C-1");
    }

    @Test
    void compostWithoutItsProcessCountsAsRawUnlessASettingSaysOtherwise() {
        assertThat(compost("120F 120F 120F").theFindingOf(RULE).outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(compost("120F 120F 120F").theFindingOf(RULE).sentence())
                .contains("counts as raw manure unless the certifier accepts its process");
        assertThat(compost("120F 120F 120F")
                        .reading(Reading.PILE_WITHOUT_PROCESS_COUNTS_AS_RAW, false)
                        .findingsOf(RULE))
                .isEmpty();
    }

    @Test
    void compostWhoseProcessIsAQuestionIsAQuestionHere() {
        assertThat(compost("132F 128F 135F 136F").theFindingOf(RULE).outcome()).isEqualTo(Outcome.ASK);
    }

    @Test
    void aProcessThatEndedAfterSpreadingDoesNotCountForWhatWasSpread() {
        PaperRecord record = PaperRecord.of(
                "2026-03-01 build-pile P1 --method static-aerated --ingredients \"cow manure\" --carbon-to-nitrogen 30",
                "2026-03-02 spread N1 --pile P1 --per-bed 60kg",
                "2026-03-03 incorporate N1",
                "2026-03-05 read-pile P1 140F 140F 140F",
                "2026-03-09 spread N2 --pile P1 --per-bed 60kg",
                "2026-03-10 incorporate N2",
                "2026-03-20 sow N1 N2 --crop carrot",
                "2026-06-10 harvest N1 N2 --crop carrot --quantity 9kg --lot 2026/C-1");

        assertThat(record.theFindingOf(RULE).places()).containsExactly(new BedId("N1"));
    }

    @Test
    void aPileThatDoesNotSayWhatIsInItIsTakenForAnimal() {
        PaperRecord record = PaperRecord.of(
                "2026-03-01 build-pile P1 --ingredients \"whatever lay about\"",
                "2026-05-01 spread N1 --pile P1 --per-bed 60kg",
                "2026-05-02 incorporate N1");

        assertThat(carrots(record, "2026-07-10").theFindingOf(RULE).sentence())
                .contains("whether it holds anything from animals is not recorded");
    }

    @Test
    void pelletedManureIsAQuestionUntilItsApprovalIsListed() {
        String[] acts = {
            "2026-05-01 spread N1 --material \"Poultry manure pellets\" --per-bed 5kg", "2026-05-02 incorporate N1"
        };

        assertThat(carrots(PaperRecord.of(acts), "2026-07-10")
                        .theFindingOf(RULE)
                        .outcome())
                .isEqualTo(Outcome.ASK);
        PaperRecord listed = PaperRecord.of(
                "2026-03-01 list-material \"Poultry manure pellets\" --approval \"supplier's heat record\"");
        assertThat(carrots(listed.write(acts), "2026-07-10").findingsOf(RULE)).isEmpty();
    }

    @Test
    void manureOnABedIsInheritedByItsParts() {
        PaperRecord record = manured(
                "2026-04-03 till N1",
                "2026-05-01 sow N1 --crop carrot",
                "2026-05-20 split-bed N1 --into N1a --into N1b --lengths 12m --lengths 8m",
                "2026-07-10 harvest N1a --crop carrot --quantity 9kg --lot 2026/C-1");

        assertThat(record.theFindingOf(RULE).places()).containsExactly(new BedId("N1a"));
    }

    @Test
    void theFirstDayIsGivenWithTheShorterOneWhereStakingWouldHelp() {
        EarliestHarvest earliest = manured("2026-04-10 till N1").earliest("N1", "tomato", "2026-05-01");

        assertThat(earliest.day()).contains(LocalDate.parse("2026-08-08"));
        assertThat(earliest.why()).contains("Kept clear of the soil, and recorded so, from 2026-07-09");
    }

    @Test
    void noDayCanBeGivenForManureThatIsNotWorkedIn() {
        EarliestHarvest earliest = manured().earliest("N1", "carrot", "2026-04-20");

        assertThat(earliest.free()).isFalse();
        assertThat(earliest.day()).isEmpty();
        assertThat(earliest.why()).contains("is not incorporated");
    }

    @Test
    void nothingIsWaitedForOnceTheDayHasCome() {
        assertThat(manured("2026-04-10 till N1")
                        .earliest("N1", "carrot", "2026-08-08")
                        .free())
                .isTrue();
    }
}
