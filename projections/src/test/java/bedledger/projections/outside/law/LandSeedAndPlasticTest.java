package bedledger.projections.outside.law;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.LotId;
import bedledger.projections.findings.Finding;
import bedledger.projections.findings.Outcome;
import bedledger.projections.findings.PaperRecord;
import bedledger.projections.findings.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cases derived from 7 CFR 205.202(b), 205.204(a), 205.206(c)(6) and 205.601(b)(2); each text as read in the copy named beside it. */
class LandSeedAndPlasticTest {

    private static PaperRecord harvested(String day) {
        return PaperRecord.of(
                "2026-02-20 declare-land North --last-applied 2023-06-15 --evidence letter",
                "2026-04-10 sow N1 --crop spinach",
                day + " harvest N1 --crop spinach --quantity 9kg --lot 2026/SPI-1",
                day + " sell 2026/SPI-1=9kg --as organic --invoice 12");
    }

    /** X50; 205.202(b) in the LexBuild copy: no prohibited substance for 3 years immediately preceding harvest. */
    @ParameterizedTest(name = "harvested {0}, same date counts {1}: {2}")
    @CsvSource({
        "2026-06-14, true, NOT_MET",
        "2026-06-15, true, MET",
        "2026-06-15, false, NOT_MET",
        "2026-06-16, false, MET"
    })
    void threeYearsEndAtHarvest(String day, boolean sameDate, Outcome outcome) {
        Finding finding = harvested(day)
                .reading(Reading.LAND_CLEAN_FROM_SAME_DATE, sameDate)
                .theFindingOf("land-three-years");

        assertThat(finding.outcome()).isEqualTo(outcome);
        assertThat(finding.lots()).containsExactly(LotId.parse("2026/SPI-1"));
    }

    @Test
    void saysOnWhichInvoiceALotFromUncleanLandWasSold() {
        assertThat(harvested("2026-06-14").theFindingOf("land-three-years").sentence())
                .contains("2026/SPI-1 was sold as organic on invoice 12");
    }

    /** X57; 205.206(c)(6) as given on a college page on pest management: plastic comes off at the end of the season. */
    @Test
    void plasticThatNobodyTookOffStaysOpen() {
        Finding finding = PaperRecord.of(
                        "2026-05-02 mulch N1 --kind polyethylene",
                        "2026-05-03 transplant N1 --crop tomato",
                        "2026-10-05 finish N1 --crop tomato")
                .theFindingOf("mulch-removed");

        assertThat(finding.outcome()).isEqualTo(Outcome.INCOMPLETE);
        assertThat(finding.arithmetic()).contains("crop ended 2026-10-05, no removal by 2026-12-31");
    }

    /** X57; paper is no plastic. */
    @Test
    void paperMayStay() {
        PaperRecord record = PaperRecord.of(
                "2026-05-02 mulch N1 --kind paper",
                "2026-05-03 transplant N1 --crop tomato",
                "2026-10-05 finish N1 --crop tomato");

        assertThat(record.findingsOf("mulch-removed")).isEmpty();
        assertThat(record.findingsOf("mulch-listed")).isEmpty();
    }

    /** 205.601(b)(2)(ii) in a copy of 2017: petroleum-based other than PVC; (iii), from memory: biodegradable biobased film. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"pvc, NOT_MET", "biodegradable-film, ASK"})
    void filmsThatAreNotOrNotSurelyOnTheList(String kind, Outcome outcome) {
        assertThat(PaperRecord.of("2026-05-02 mulch N1 --kind " + kind)
                        .theFindingOf("mulch-listed")
                        .outcome())
                .isEqualTo(outcome);
    }

    private static PaperRecord seed(String form, String search) {
        return PaperRecord.of(
                "2026-03-01 receive-seed S-1 --crop lettuce --quantity 9g --organic no --treatment untreated --form "
                        + form + " " + search);
    }

    /** X63; 205.204(a)(1) in the GPO copy. Silence is no search and no lack of one: incomplete. */
    @ParameterizedTest(name = "untreated {0}, {1}: {2}")
    @CsvSource({
        "seed, --suppliers-asked 3, MET",
        "seed, --suppliers-asked 0, NOT_MET",
        "seed, '', INCOMPLETE",
        "planting-stock, --suppliers-asked 3, MET"
    })
    void seedThatIsNotOrganicNeedsASearch(String form, String search, Outcome outcome) {
        assertThat(seed(form, search).theFindingOf("seed-organic").outcome()).isEqualTo(outcome);
    }

    /** X65; cloves are planting stock, not seedlings (205.2, from memory): the exception of (a)(1) holds. */
    @Test
    void garlicClovesFollowTheSeedException() {
        PaperRecord record = PaperRecord.of(
                "2026-09-01 receive-seed GA-1 --crop garlic --quantity 9kg --organic no --treatment untreated --form planting-stock"
                        + " --suppliers-asked 3",
                "2026-10-15 transplant N1 --crop garlic --origin bought --seed-lot GA-1");

        assertThat(record.theFindingOf("seed-organic").outcome()).isEqualTo(Outcome.MET);
        assertThat(record.findingsOf("seedlings-organic")).isEmpty();
        assertThat(record.findingsOf("seed-recorded")).isEmpty();
    }

    /** 205.204(a)(3): seedlings have no such exception; only a temporary variance. That they are certified is shown by a certificate. */
    @ParameterizedTest(name = "seedlings {0}: {1}")
    @CsvSource({
        "--organic yes, INCOMPLETE",
        "--organic no, NOT_MET",
        "--organic no --variance \"V-12\", ASK",
        "--supplier \"Hill Plants\", INCOMPLETE"
    })
    void boughtSeedlingsAreOrganicOrUnderAVariance(String said, Outcome outcome) {
        Finding finding = PaperRecord.of(
                        "2026-05-05 transplant N1 --crop tomato --origin bought " + said,
                        "2026-07-20 harvest N1 --crop tomato --quantity 5kg --lot 2026/TOM-1")
                .theFindingOf("seedlings-organic");

        assertThat(finding.outcome()).isEqualTo(outcome);
        assertThat(finding.lots()).containsExactly(LotId.parse("2026/TOM-1"));
    }
}
