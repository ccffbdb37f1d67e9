package bedledger.projections.outside.law;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.projections.findings.Finding;
import bedledger.projections.findings.Outcome;
import bedledger.projections.findings.PaperRecord;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * 7 CFR 205.203(c)(2)(i) to (iii) as read in the LawStack copy (checked there against the eCFR of 20 June 2026), and 21 CFR 112.54(b) as
 * given by MSU Extension, "Compost use and FSMA compliance" (paragraph numbers from memory). The cases are derived from the two.
 */
class CompostTest {
    private static final String NOP = "compost-process";
    private static final String FDA = "compost-fda";

    private static PaperRecord pile(String method, String carbonToNitrogen, String readings, String... turns) {
        PaperRecord record = PaperRecord.of(
                "2026-03-01 build-pile P1 --method " + method
                        + " --ingredients \"horse manure\" --ingredients straw --carbon-to-nitrogen "
                        + carbonToNitrogen,
                "2026-03-03 read-pile P1 " + readings);
        for (String turn : turns) {
            record.write(turn + " turn-pile P1");
        }
        return record;
    }

    private static PaperRecord cured(PaperRecord record) {
        return record.write("2026-05-10 cure-pile P1 --days 40");
    }

    /** Fifteen days between 135 and 150 °F from 2026-03-03. */
    private static PaperRecord windrow(String carbonToNitrogen, String... turns) {
        String readings =
                IntStream.range(0, 15).mapToObj(day -> (135 + day) + "F").collect(Collectors.joining(" "));
        return pile("windrow", carbonToNitrogen, readings, turns);
    }

    private static String[] fiveTurns() {
        return new String[] {"2026-03-04", "2026-03-07", "2026-03-10", "2026-03-13", "2026-03-16"};
    }

    private static String[] fourTurns() {
        return new String[] {"2026-03-04", "2026-03-07", "2026-03-10", "2026-03-13"};
    }

    private static Outcome nop(PaperRecord record) {
        return record.theFindingOf(NOP).outcome();
    }

    private static Outcome fda(PaperRecord record) {
        return record.theFindingOf(FDA).outcome();
    }

    @Test
    void x20StaticThreeDaysInARowAndCured() {
        PaperRecord record = cured(pile("static-aerated", "30", "133F 138F 141F"));

        assertThat(nop(record)).isEqualTo(Outcome.MET);
        assertThat(fda(record)).isEqualTo(Outcome.MET);
    }

    @Test
    void x21ThreeDaysThatDoNotFollowEachOtherAreAQuestionForTheOneAndTooFewForTheOther() {
        PaperRecord record = pile("static-aerated", "30", "132F 128F 135F 136F");

        assertThat(nop(record)).isEqualTo(Outcome.ASK);
        assertThat(fda(record)).isEqualTo(Outcome.NOT_MET);
        assertThat(record.theFindingOf(FDA).sentence()).contains("2 days in a row");
    }

    @Test
    void x22WindrowFifteenDaysAndFiveTurns() {
        PaperRecord record = cured(windrow("30", fiveTurns()));

        assertThat(nop(record)).isEqualTo(Outcome.MET);
        assertThat(fda(record)).isEqualTo(Outcome.MET);
    }

    @Test
    void x23FourTurnsAreOneTooFewForBoth() {
        PaperRecord record = cured(windrow("30", fourTurns()));

        assertThat(nop(record)).isEqualTo(Outcome.NOT_MET);
        assertThat(fda(record)).isEqualTo(Outcome.NOT_MET);
        assertThat(record.theFindingOf(NOP).sentence()).contains("4 turns");
    }

    /** And NOP 5021 lets the certifier accept another documented process. */
    @Test
    void x26CarbonToNitrogenOf22IsBelowTheBandOfTheOneAndNothingToTheOther() {
        PaperRecord record = cured(windrow("22", fiveTurns()));

        Finding finding = record.theFindingOf(NOP);

        assertThat(finding.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(finding.settles()).contains("NOP 5021");
        assertThat(fda(record)).isEqualTo(Outcome.MET);
    }

    @ParameterizedTest(name = "X27: C:N exactly {0}")
    @ValueSource(strings = {"25", "40", "25.0"})
    void x27TheEndsOfTheBandAreIn(String carbonToNitrogen) {
        assertThat(nop(windrow(carbonToNitrogen, fiveTurns()))).isEqualTo(Outcome.MET);
        assertThat(windrow(carbonToNitrogen, fiveTurns()).theFindingOf(NOP).sentence())
                .contains("ends included");
    }

    @ParameterizedTest(name = "C:N {0}")
    @ValueSource(strings = {"24.9", "40.1"})
    void justOutsideTheBandIsOut(String carbonToNitrogen) {
        assertThat(nop(windrow(carbonToNitrogen, fiveTurns()))).isEqualTo(Outcome.NOT_MET);
    }

    /** The same limits in °C: 131 °F is 55 °C exactly, 170 °F is 76.67 °C. */
    @ParameterizedTest(name = "X28: {0}")
    @ValueSource(strings = {"131.0F 131F 131.0F", "55C 55.0C 55C", "170F 170F 170F", "76.67C 76.67C 76.67C"})
    void x28TheEndsOfTheHeatAreIn(String readings) {
        PaperRecord record = cured(pile("static-aerated", "30", readings));

        assertThat(nop(record)).isEqualTo(Outcome.MET);
        assertThat(fda(record)).isEqualTo(Outcome.MET);
    }

    @ParameterizedTest(name = "too cool: {0}")
    @ValueSource(strings = {"130.9F 131F 131F", "54.9C 55C 55C"})
    void aTenthOfADegreeBelowIsOut(String readings) {
        PaperRecord record = cured(pile("static-aerated", "30", readings));

        assertThat(nop(record)).isEqualTo(Outcome.NOT_MET);
        assertThat(fda(record)).isEqualTo(Outcome.NOT_MET);
    }

    /** 21 CFR 112.54(b) has no upper limit; 205.203(c)(2) has. */
    @ParameterizedTest(name = "too hot: {0}")
    @ValueSource(strings = {"170.1F 171F 172F", "76.7C 77C 78C"})
    void aboveTheUpperLimitIsAQuestionForTheOneOnly(String readings) {
        PaperRecord record = cured(pile("static-aerated", "30", readings));

        assertThat(nop(record)).isEqualTo(Outcome.ASK);
        assertThat(record.theFindingOf(NOP).sentence()).contains("2026-03-03, 2026-03-04, 2026-03-05");
        assertThat(fda(record)).isEqualTo(Outcome.MET);
    }

    @Test
    void x29AMissingReadingIsNeverFilledIn() {
        PaperRecord record =
                cured(pile("static-aerated", "30", "133F 138F").write("2026-03-06 read-pile P1 141F 125F"));

        assertThat(nop(record)).isEqualTo(Outcome.INCOMPLETE);
        assertThat(fda(record)).isEqualTo(Outcome.INCOMPLETE);
        assertThat(record.theFindingOf(NOP).sentence()).contains("no reading on 2026-03-05");
    }

    @Test
    void x30CuringIsAskedByTheOneAndNotByTheOther() {
        PaperRecord record = windrow("30", fiveTurns());

        assertThat(nop(record)).isEqualTo(Outcome.MET);
        assertThat(fda(record)).isEqualTo(Outcome.INCOMPLETE);
        assertThat(record.theFindingOf(FDA).sentence()).contains("no curing is noted");
    }

    /** 205.203(c)(3): uncomposted plant materials. */
    @Test
    void x31LeavesAndStrawAreNotBound() {
        PaperRecord record = PaperRecord.of(
                "2026-03-01 build-pile P1 --ingredients leaves --ingredients straw",
                "2026-05-01 spread N1 --pile P1 --per-bed 100kg",
                "2026-05-02 sow N1 --crop carrot",
                "2026-07-30 harvest N1 --crop carrot --quantity 5kg --lot 2026/C1");

        assertThat(nop(record)).isEqualTo(Outcome.MET);
        assertThat(record.theFindingOf(NOP).citation()).isEqualTo("7 CFR 205.203(c)(3)");
        assertThat(record.findingsOf(FDA)).isEmpty();
        assertThat(record.findingsOf("manure-interval")).isEmpty();
    }
}
