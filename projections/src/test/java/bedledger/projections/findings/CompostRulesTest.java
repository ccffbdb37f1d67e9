package bedledger.projections.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import org.junit.jupiter.api.Test;

class CompostRulesTest {
    private static final String NOP = "compost-process";

    private static PaperRecord built(String method) {
        return PaperRecord.of(
                "2026-03-01 build-pile P1 " + method + " --ingredients \"cow manure\" --carbon-to-nitrogen 30");
    }

    private static String days(int number, String reading) {
        return String.join(" ", Collections.nCopies(number, reading));
    }

    private static PaperRecord windrow(String readings, String... turns) {
        PaperRecord record = built("--method windrow").write("2026-03-03 read-pile P1 " + readings);
        for (String turn : turns) {
            record.write("2026-03-" + turn + " turn-pile P1");
        }
        return record.write("2026-06-01 finish-pile P1 --volume 1m3");
    }

    private static Outcome nop(PaperRecord record) {
        return record.theFindingOf(NOP).outcome();
    }

    @Test
    void whatTheFeedstocksComeToIsNamedAndNeverStandsForARatioThatWasNotWrittenDown() {
        PaperRecord record = PaperRecord.of(
                        "2026-03-01 build-pile P1 --method static-aerated --feedstocks \"cow manure 100kg\"")
                .write("2026-03-03 read-pile P1 140F 140F 140F");

        Finding finding = record.theFindingOf(NOP);
        assertThat(finding.outcome()).isEqualTo(Outcome.INCOMPLETE);
        assertThat(finding.sentence()).contains("C:N 29.6 (20.4 to 40.1)", "is not recorded");
    }

    @Test
    void aRatioWrittenDownIsJudgedWhateverTheFeedstocksComeTo() {
        PaperRecord record = PaperRecord.of("2026-03-01 build-pile P1 --method static-aerated"
                        + " --feedstocks \"cow manure 100kg\" --carbon-to-nitrogen 18")
                .write("2026-03-03 read-pile P1 140F 140F 140F");

        assertThat(nop(record)).isEqualTo(Outcome.NOT_MET);
    }

    @Test
    void aMixMadeOnTheFarmHasNoSupplierToAsk() {
        String listed =
                "2024-03-01 list-material \"Own mix\" --composition \"peat, compost, feather meal\" --approval letter";
        String trays = "2026-03-20 sow-trays T-1 --crop kale --potting-mix \"Own mix\"";
        String made = "2024-03-02 make-mix \"Own mix\" --materials Peat";
        String pile = "2023-03-02 build-pile P1 --method windrow";

        assertThat(PaperRecord.of(listed, trays)
                        .theFindingOf("compost-supplier-fda")
                        .settles())
                .startsWith("Ask the supplier");
        assertThat(PaperRecord.of(listed, made, trays)
                        .theFindingOf("compost-supplier-fda")
                        .sentence())
                .contains("from which pile or supplier is not recorded");
        assertThat(PaperRecord.of(pile, listed, made + " --pile P1", trays).findingsOf("compost-supplier-fda"))
                .isEmpty();
    }

    @Test
    void turnsAfterTheHotDaysDoNotCount() {
        PaperRecord record = windrow(days(15, "140F"), "04", "07", "10", "13", "25");

        assertThat(nop(record)).isEqualTo(Outcome.NOT_MET);
    }

    @Test
    void twoTurnsOfOneDayAreOne() {
        PaperRecord record = windrow(days(15, "140F"), "04", "07", "10", "13", "13");

        assertThat(nop(record)).isEqualTo(Outcome.NOT_MET);
    }

    @Test
    void turnsThatAreNotWithinAnyFifteenDaysAreAQuestion() {
        PaperRecord record = windrow(days(28, "140F"), "03", "10", "17", "24", "30");

        assertThat(nop(record)).isEqualTo(Outcome.ASK);
    }

    @Test
    void noTurnAtAllIsASilenceNotANone() {
        assertThat(nop(windrow(days(15, "140F")))).isEqualTo(Outcome.INCOMPLETE);
    }

    @Test
    void aDayTooHotIsNamedAndAskedEvenWhereTheOthersSuffice() {
        PaperRecord record = windrow("175F " + days(15, "140F"), "04", "07", "10", "13", "16");

        assertThat(nop(record)).isEqualTo(Outcome.ASK);
        assertThat(record.theFindingOf(NOP).sentence()).contains("above 170 °F on 2026-03-03");
    }

    @Test
    void theNoteOnTheFifthTurnGoesOnceAReadingFollowsIt() {
        assertThat(windrow(days(15, "140F"), "04", "07", "10", "13", "17")
                        .theFindingOf(NOP)
                        .sentence())
                .contains("No reading follows turn 5 on 2026-03-17");
        assertThat(windrow(days(15, "140F"), "04", "07", "10", "13", "16")
                        .theFindingOf(NOP)
                        .sentence())
                .doesNotContain("No reading follows");
    }

    @Test
    void windrowDaysThatDoNotFollowEachOtherAreSaidAndASettingAsksThatTheyDo() {
        PaperRecord record = windrow(days(8, "140F") + " 125F " + days(7, "140F"), "04", "07", "10", "13", "16");

        assertThat(nop(record)).isEqualTo(Outcome.MET);
        assertThat(record.theFindingOf(NOP).sentence()).contains("do not all follow each other");
        assertThat(nop(record.reading(Reading.WINDROW_DAYS_CONSECUTIVE, true))).isEqualTo(Outcome.NOT_MET);
    }

    @Test
    void aSettingTakesAnyThreeDays() {
        PaperRecord record = built("--method in-vessel").write("2026-03-03 read-pile P1 132F 128F 135F 136F");

        assertThat(nop(record)).isEqualTo(Outcome.ASK);
        assertThat(nop(record.reading(Reading.THREE_COMPOST_DAYS_CONSECUTIVE, false)))
                .isEqualTo(Outcome.MET);
    }

    @Test
    void aPileUnderWayIsNotJudgedAsIfItWereOver() {
        PaperRecord record = built("--method windrow").write("2026-03-03 read-pile P1 " + days(6, "140F"));

        assertThat(record.findings("2026-03-09").of(NOP).get(0).outcome()).isEqualTo(Outcome.INCOMPLETE);
        record.write("2026-03-10 turn-pile P1", "2026-03-11 spread N1 --pile P1 --per-bed 10kg");
        assertThat(record.findings("2026-03-11").of(NOP).get(0).outcome()).isEqualTo(Outcome.NOT_MET);
    }

    @Test
    void aDayReadTwiceKeepsTheLowerReading() {
        PaperRecord record = built("--method static-aerated")
                .write("2026-03-03 read-pile P1 140F 140F 140F", "2026-03-04 read-pile P1 50C");

        assertThat(nop(record)).isEqualTo(Outcome.NOT_MET);
    }

    @Test
    void silenceOnMethodRatioOrReadingsIsIncomplete() {
        assertThat(nop(built("").write("2026-03-03 read-pile P1 140F"))).isEqualTo(Outcome.INCOMPLETE);
        assertThat(nop(built("--method windrow"))).isEqualTo(Outcome.INCOMPLETE);
        assertThat(nop(PaperRecord.of(
                        "2026-03-01 build-pile P1 --method in-vessel --ingredients \"cow manure\"",
                        "2026-03-03 read-pile P1 140F 140F 140F")))
                .isEqualTo(Outcome.INCOMPLETE);
    }

    @Test
    void anotherProcessIsForTheCertifierOnceItShowsThreeHotDays() {
        PaperRecord record = built("--method turned-otherwise").write("2026-03-03 read-pile P1 140F 120F 140F 140F");

        assertThat(nop(record)).isEqualTo(Outcome.ASK);
        assertThat(nop(built("--method unmanaged"))).isEqualTo(Outcome.NOT_MET);
    }

    @Test
    void manureNamedAmongTheIngredientsOutweighsATickAgainstIt() {
        PaperRecord record =
                PaperRecord.of("2026-03-01 build-pile P1 --ingredients \"horse manure\" --animal-material no");

        assertThat(nop(record)).isEqualTo(Outcome.INCOMPLETE);
    }
}
