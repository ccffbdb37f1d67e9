package bedledger.projections.outside.law;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.projections.findings.Contact;
import bedledger.projections.findings.Finding;
import bedledger.projections.findings.ManureCount;
import bedledger.projections.findings.Outcome;
import bedledger.projections.findings.PaperRecord;
import bedledger.projections.findings.RuleBook;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * 7 CFR 205.203(c)(1)(ii) and (iii): incorporated not less than 120 days before harvest where the edible portion has direct contact with
 * the soil surface or soil particles, 90 days where it has not. Text read in the LawStack copy of 205.203 (checked there against the eCFR
 * of 20 June 2026). The cases are derived from it; days are the difference of the two dates, which is a reading.
 */
class RawManureTest {
    private static final String RULE = "manure-interval";

    private static PaperRecord crop(String spread, String incorporated, String planted, String crop, String... picks) {
        PaperRecord record = PaperRecord.of(spread + " spread N1 --manure horse --per-bed 60kg");
        if (!incorporated.isEmpty()) {
            record.write(incorporated + " incorporate N1 --implement \"tine harrow\"");
        }
        record.write(planted + " sow N1 --crop \"" + crop + "\"");
        for (String pick : picks) {
            record.write(pick + " harvest N1 --crop \"" + crop + "\" --quantity 5kg --lot " + pick.substring(0, 4)
                    + "/P-" + pick);
        }
        return record;
    }

    private static Outcome on(PaperRecord record, String pick) {
        return record.outcome(RULE, pick.substring(0, 4) + "/P-" + pick);
    }

    /** X01: soil contact, 119 and 120 days. */
    @ParameterizedTest(name = "carrots picked {0}: {1}")
    @CsvSource({"2026-08-07, NOT_MET", "2026-08-08, MET"})
    void asks120DaysOfWhatTouchesTheSoil(String pick, Outcome outcome) {
        assertThat(on(crop("2026-04-10", "2026-04-10", "2026-04-20", "carrot", pick), pick))
                .isEqualTo(outcome);
    }

    /** X02: a trellised crop, 89 and 90 days. */
    @ParameterizedTest(name = "trellised tomatoes picked {0}: {1}")
    @CsvSource({"2026-06-25, NOT_MET", "2026-06-26, MET"})
    void asks90DaysOfWhatIsKeptClearOfTheSoil(String pick, Outcome outcome) {
        PaperRecord record = crop("2026-03-28", "2026-03-28", "2026-04-20", "tomato")
                .write(
                        "2026-05-02 stake N1 --crop tomato --clear-of-soil yes",
                        pick + " harvest N1 --crop tomato --quantity 5kg --lot 2026/P-" + pick);

        assertThat(on(record, pick)).isEqualTo(outcome);
    }

    /** X03: the clock starts when it is worked in; counted from spreading it would be 120. */
    @Test
    void countsFromIncorporationAndNotFromSpreading() {
        PaperRecord record = crop("2026-04-02", "2026-04-06", "2026-04-20", "lettuce", "2026-07-31");

        Finding finding = record.theFindingOf(RULE);

        assertThat(finding.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(finding.arithmetic()).isEqualTo("2026-07-31 − 2026-04-06 = 116 days, 120 asked");
    }

    /** X04: never incorporated fits neither paragraph, however long. */
    @Test
    void neverIncorporatedIsNotMetHoweverLong() {
        Finding finding =
                crop("2026-05-01", "", "2026-05-10", "carrot", "2026-12-01").theFindingOf(RULE);

        assertThat(finding.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(finding.sentence()).contains("no incorporation is recorded");
    }

    /** X06: where contact is not known the longer interval is used; the text leaves it open, so between the two it is a question. */
    @ParameterizedTest(name = "contact unknown, picked {0}: {1}")
    @CsvSource({"2026-08-29, NOT_MET", "2026-08-30, ASK", "2026-09-28, ASK", "2026-09-29, MET"})
    void usesTheLongerIntervalWhereContactIsNotKnown(String pick, Outcome outcome) {
        PaperRecord record = crop("2026-06-01", "2026-06-01", "2026-06-05", "oca", pick);

        assertThat(on(record, pick)).isEqualTo(outcome);
        assertThat(record.earliest("N1", "oca", "2026-06-10").day()).contains(LocalDate.parse("2026-09-29"));
    }

    /** X01, X07 (over a leap day) and X09 (planned backwards). */
    @Test
    void countsForwardsAndBackwards() {
        ManureCount count = ManureCount.of(RuleBook.us().figures());

        assertThat(count.earliestPick(LocalDate.parse("2026-04-10"), Contact.TOUCHES_SOIL))
                .isEqualTo("2026-08-08");
        assertThat(count.earliestPick(LocalDate.parse("2027-11-15"), Contact.TOUCHES_SOIL))
                .isEqualTo("2028-03-14");
        assertThat(count.lastWorkingIn(LocalDate.parse("2026-09-15"), Contact.TOUCHES_SOIL))
                .isEqualTo("2026-05-18");
        assertThat(count.lastWorkingIn(LocalDate.parse("2026-09-15"), Contact.CLEAR))
                .isEqualTo("2026-06-17");
    }

    /** X01: the warning at writing and what is due. */
    @Test
    void givesTheFirstDayBeforeAnythingIsPicked() {
        PaperRecord record = crop("2026-04-10", "2026-04-10", "2026-04-20", "carrot");

        assertThat(record.findingsOf(RULE)).isEmpty();
        assertThat(record.earliest("N1", "carrot", "2026-04-10").day()).contains(LocalDate.parse("2026-08-08"));
        assertThat(record.earliest("N1", "carrot", "2026-04-10").why()).contains("2026-04-10 + 120 days");
    }

    /** X10: each pick on its own, 117 and 124 days. */
    @Test
    void judgesPickByPick() {
        PaperRecord record = crop("2026-04-10", "2026-04-10", "2026-04-20", "carrot", "2026-08-05", "2026-08-12");

        assertThat(on(record, "2026-08-05")).isEqualTo(Outcome.NOT_MET);
        assertThat(on(record, "2026-08-12")).isEqualTo(Outcome.MET);
    }

    /** X12: compost with a complete log asks for no waiting (205.203(c)(2); OMRI, "Compost standards"). */
    @Test
    void compostWithACompleteProcessNeedsNoWaiting() {
        PaperRecord record = PaperRecord.of(
                "2026-03-01 build-pile P1 --method static-aerated --ingredients \"cow manure\" --carbon-to-nitrogen 30",
                "2026-03-03 read-pile P1 133F 138F 141F",
                "2026-05-01 spread N1 --pile P1 --per-bed 100kg",
                "2026-05-02 sow N1 --crop carrot",
                "2026-06-30 harvest N1 --crop carrot --quantity 5kg --lot 2026/P1");

        assertThat(record.findingsOf(RULE)).isEmpty();
        assertThat(record.earliest("N1", "carrot", "2026-05-02").free()).isTrue();
    }
}
