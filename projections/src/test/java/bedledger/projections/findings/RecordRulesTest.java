package bedledger.projections.findings;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.BedId;
import bedledger.language.LotId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordRulesTest {
    private static final String KALE = "2026-06-01 harvest N1 --crop kale --quantity 4kg --lot 2026/KAL-1";

    private static Outcome of(String rule, String... lines) {
        return PaperRecord.of(lines).theFindingOf(rule).outcome();
    }

    @Test
    void oneFindingAYearNamesEveryHarvestWithoutADoer() {
        PaperRecord record = PaperRecord.of(KALE + " --done-by nobody")
                .write(
                        "2026-06-08 harvest N1 --crop kale --quantity 4kg --lot 2026/KAL-2",
                        "2026-06-15 harvest N1 --crop kale --quantity 4kg --lot 2026/KAL-3 --done-by nobody");

        Finding finding = record.theFindingOf("doer-recorded");

        assertThat(finding.sentence()).contains("2 of 3 entries of 2026").contains("2 harvest");
        assertThat(finding.entries()).containsExactly(3L, 5L);
    }

    @Test
    void anApplicationWithoutAnAmountIsNamedByDayAndEntry() {
        Finding finding = PaperRecord.of(
                        "2026-05-01 spread N1 --manure horse --source \"own mare\"",
                        "2026-05-02 spread N2 --manure horse --source \"own mare\" --per-bed 60kg")
                .theFindingOf("application-recorded");

        assertThat(finding.outcome()).isEqualTo(Outcome.INCOMPLETE);
        assertThat(finding.sentence()).contains("1 of 2 uses").contains("2026-05-01 (#3) how much");
        assertThat(finding.places()).containsExactly(new BedId("N1"));
    }

    @Test
    void aRateOnTheLabelWillDoForASpray() {
        assertThat(of(
                        "application-recorded",
                        "2026-06-01 spray N1 --product \"Kaolin clay\" --rate \"30 g per litre\""))
                .isEqualTo(Outcome.MET);
    }

    @Test
    void whatIsSoldAsNotOrganicNeedsNoTrace() {
        assertThat(PaperRecord.of(KALE, "2026-06-02 sell 2026/KAL-1=4kg --as not-organic")
                        .findingsOf("sale-recorded"))
                .isEmpty();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "--side east, INCOMPLETE",
        "--side east --use hay, INCOMPLETE",
        "--side east --use hay --buffer none, NOT_MET",
        "--side east --buffer none, INCOMPLETE",
        "--side east --use hay --buffer ditch, INCOMPLETE",
        "--side \"all round\" --use hay --buffer ditch, MET",
        "--side \"north east south and west\" --use woods, MET",
        "--side \"all sides\" --use \"organic wheat\", MET"
    })
    void aStatedNoneIsJudgedAndSilenceIsNot(String said, Outcome outcome) {
        assertThat(of("land-boundaries", "2026-02-01 declare-neighbour North " + said))
                .isEqualTo(outcome);
    }

    @Test
    void theLastWordOnASideCounts() {
        Finding finding = PaperRecord.of(
                        "2026-02-01 declare-neighbour North --side east --use hay --buffer none",
                        "2026-02-01 declare-neighbour North --side \"all other sides\" --use woods",
                        "2026-04-01 declare-neighbour North --side East --use hay --buffer hedge")
                .theFindingOf("land-boundaries");

        assertThat(finding.outcome()).isEqualTo(Outcome.MET);
        assertThat(finding.places()).contains(new BedId("N1"), new BedId("N4"));
    }

    @ParameterizedTest(name = "{0}, told {1}: {2}")
    @CsvSource({
        "spray drift from the road side, no, NOT_MET",
        "spray drift from the road side, '', INCOMPLETE",
        "a flood, no, ASK",
        "a flood, yes, MET"
    })
    void driftIsToldAtOnce(String what, String told, Outcome outcome) {
        String said = told.isEmpty() ? "" : " --certifier-told " + told;

        assertThat(of("incident-told", "2026-06-01 report-incident N1 --what \"" + what + "\"" + said))
                .isEqualTo(outcome);
    }

    @Test
    void whatWasPickedAfterDriftIsNamedForThreeYears() {
        Finding finding = PaperRecord.of(
                        "2026-05-20 report-incident N1 --what \"herbicide drift\" --certifier-told no",
                        KALE,
                        "2029-05-20 harvest N1 --crop kale --quantity 4kg --lot 2029/KAL-9")
                .theFindingOf("incident-told");

        assertThat(finding.lots()).containsExactly(LotId.parse("2026/KAL-1"));
    }

    @Test
    void aBrokenGlassOnLotsIsForTheCertifierToWantOrNot() {
        assertThat(of(
                        "incident-told",
                        KALE,
                        "2026-06-01 report-mishap 2026/KAL-1 --what \"broken glass\" --certifier-told no"))
                .isEqualTo(Outcome.ASK);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "'', INCOMPLETE",
        "--held-before \"organic beets\", MET",
        "--held-before apples, INCOMPLETE",
        "--held-before fungicide, NOT_MET"
    })
    void usedContainersAreJudgedByWhatTheyHeld(String held, Outcome outcome) {
        assertThat(of(
                        "container-clean",
                        KALE,
                        "2026-06-01 pack 2026/KAL-1 --packs 2boxes --size 2kg --containers used " + held))
                .isEqualTo(outcome);
    }

    @Test
    void cleaningContainersSettlesWhatTheyHeld() {
        String pack = "2026-06-03 pack 2026/KAL-1 --packs 2boxes --size 2kg --containers used --held-before ";
        String clean = "2026-06-02 clean --what \"harvest crates\" --how scrubbed";

        assertThat(of("container-clean", KALE, clean + " --after apples", pack + "apples"))
                .isEqualTo(Outcome.MET);
        assertThat(of("container-clean", KALE, clean, pack + "fungicide")).isEqualTo(Outcome.ASK);
    }

    @ParameterizedTest(name = "held {0}, cleaned {1}")
    @CsvSource({
        "apples, ''",
        "apples, --after \"own beets\"",
        "'\"unknown, from the market\"', --after \"own beets\"",
        "unknown, --after unknown"
    })
    void aCleaningAfterSomethingElseShowsNothing(String held, String after) {
        assertThat(of(
                        "container-clean",
                        KALE,
                        "2026-06-02 clean --what crates --how scrubbed " + after,
                        "2026-06-03 pack 2026/KAL-1 --packs 2boxes --size 2kg --containers used --held-before " + held))
                .isEqualTo(Outcome.INCOMPLETE);
    }

    /** 10 kg picked, put together and split again, 2 kg short: 20 % of what was picked, not of what went to and fro. */
    @Test
    void lotsJoinedAndSplitAreNotCountedTwiceInTheShare() {
        Finding finding = PaperRecord.of(
                        "2026-06-01 harvest N1 --crop kale --quantity 6kg --lot 2026/K-0",
                        "2026-06-01 harvest N1 --crop kale --quantity 4kg --lot 2026/K-1",
                        "2026-06-02 join-lots 2026/K-0=6kg 2026/K-1=4kg --into 2026/K-2",
                        "2026-06-03 split-lot 2026/K-2 --into 2026/K-3=6kg",
                        "2026-06-04 count kale --quantity 8kg")
                .theFindingOf("store-balance");

        assertThat(finding.sentence()).contains("2 kg less than the book expects (20 % of");
    }

    @Test
    void theFirstCountSaysThatNoneStandsBeforeIt() {
        assertThat(PaperRecord.of(KALE, "2026-06-02 count kale --quantity 3.5kg")
                        .theFindingOf("store-balance")
                        .sentence())
                .endsWith("No count stands before it: what may have been in store then is not in it.");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "2025-05-12 report-incident N1 --what \"spray drift\" --certifier-told no, ASK",
        "2025-05-12 report-incident N1 --what \"spray drift\" --certifier-told yes, ASK",
        "2025-05-12 report-incident N2 --what \"spray drift\" --certifier-told no, MET",
        "2026-07-12 report-incident N1 --what \"spray drift\" --certifier-told no, MET",
        "2023-06-01 report-incident N1 --what \"spray drift\" --certifier-told no, MET",
        "2025-05-12 report-incident N1 --what \"deer tracks\" --certifier-told no, MET"
    })
    void landIsInQuestionForThreeYearsAfterDrift(String incident, Outcome outcome) {
        assertThat(of("land-three-years", "2020-01-02 declare-land North --none-since 2012-01-01", incident, KALE))
                .isEqualTo(outcome);
    }

    @ParameterizedTest(name = "sold as {0}: {1}")
    @CsvSource({"organic, Ask the certifier what becomes of the lot", "not-organic, No sale of it as organic"})
    void aLotFromLandInTransitionIsToldByHowItWasSold(String as, String settles) {
        assertThat(PaperRecord.of(
                                "2020-01-02 declare-land North --last-applied 2025-05-01",
                                KALE,
                                "2026-06-02 sell 2026/KAL-1=2kg --as " + as)
                        .theFindingOf("land-three-years")
                        .settles())
                .startsWith(settles);
    }

    /** The enforcement rule is kept from 2024-03-19 on; before, tags were not asked for so. */
    @ParameterizedTest(name = "stored on {0}: {1} findings")
    @CsvSource({"2024-03-18, 0", "2024-03-19, 1"})
    void tagsAreAskedForFromTheDayOfTheEnforcementRule(String day, int findings) {
        PaperRecord record = PaperRecord.of(
                "2024-03-01 harvest N1 --crop kale --quantity 4kg --lot 2024/KAL-1",
                day + " store 2024/KAL-1 --where cellar");

        assertThat(record.findingsOf("containers-labelled")).hasSize(findings);
    }

    @Test
    void salesAreCitedByTheEditionOfTheirDay() {
        PaperRecord record = PaperRecord.of(
                "2024-03-01 harvest N1 --crop kale --quantity 9kg --lot 2024/KAL-1",
                "2024-03-18 sell 2024/KAL-1=2kg --as organic");

        assertThat(record.theFindingOf("sale-recorded").citation()).isEqualTo("7 CFR 205.103(b)(2)");
        record.write("2024-03-19 sell 2024/KAL-1=2kg --as organic");
        assertThat(record.theFindingOf("sale-recorded").citation()).isEqualTo("7 CFR 205.103(b)(2), (3)");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"4 ppm, MET", "4.1 ppm, ASK", "4 mg/L, MET", "700 mV, INCOMPLETE"})
    void chlorineIsReadInPartsPerMillion(String strength, Outcome outcome) {
        assertThat(of(
                        "wash-chlorine",
                        KALE,
                        "2026-06-01 wash 2026/KAL-1 --sanitizer \"Bleach 6%\" --strength \"" + strength + "\""))
                .isEqualTo(outcome);
    }

    @Test
    void otherSanitizersAreNotHeldAgainstTheLimitForChlorine() {
        assertThat(PaperRecord.of(
                                KALE,
                                "2026-06-01 wash 2026/KAL-1 --sanitizer \"Peracetic acid 5%\" --strength \"60 ppm\"")
                        .findingsOf("wash-chlorine"))
                .isEmpty();
    }

    @Test
    void anAnswerIsWaitedForUntilItsDayAndThenMissing() {
        PaperRecord record = PaperRecord.of(
                "2026-01-10 note-inspection --inspector \"R. Field\" --conditions \"C1 by 2026-03-01: file the seed searches\"");

        assertThat(record.findings("2026-03-01")
                        .of("inspection-conditions")
                        .get(0)
                        .outcome())
                .isEqualTo(Outcome.INCOMPLETE);
        assertThat(record.findings("2026-03-02")
                        .of("inspection-conditions")
                        .get(0)
                        .outcome())
                .isEqualTo(Outcome.NOT_MET);
        record.write("2026-03-05 answer-condition C1 --inspection 3 --how filed");
        Finding late = record.theFindingOf("inspection-conditions");
        assertThat(late.outcome()).isEqualTo(Outcome.ASK);
        assertThat(late.sentence()).contains("after that day");
    }

    @Test
    void aDetectedResidueNamesTheLotsOfTheBedsSampled() {
        Finding finding = PaperRecord.of(
                        "2026-05-25 take-sample S-1 --beds N1",
                        KALE,
                        "2026-06-20 sample-result S-1 --result \"0.02 mg/kg\" --detected yes")
                .theFindingOf("sample-result");

        assertThat(finding.outcome()).isEqualTo(Outcome.ASK);
        assertThat(finding.lots()).containsExactly(LotId.parse("2026/KAL-1"));
    }

    @Test
    void theSecondCountStartsFromTheFirst() {
        List<Finding> findings = PaperRecord.of(
                        KALE,
                        "2026-06-02 count kale --quantity 3.5kg",
                        "2026-06-08 harvest N1 --crop kale --quantity 4kg --lot 2026/KAL-2",
                        "2026-06-09 count kale --quantity 7.5kg")
                .findingsOf("store-balance");

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.ASK, Outcome.MET);
        assertThat(findings.get(1).arithmetic())
                .isEqualTo("3.5 counted before + 4 harvested = 7.5 kg expected; 7.5 counted");
    }

    @Test
    void twoStoresAreNotHeldAgainstTheWholeCrop() {
        assertThat(PaperRecord.of(
                                KALE,
                                "2026-06-02 count kale --quantity 2kg --where cellar",
                                "2026-06-02 count kale --quantity 2kg --where shed")
                        .findingsOf("store-balance"))
                .isEmpty();
    }
}
