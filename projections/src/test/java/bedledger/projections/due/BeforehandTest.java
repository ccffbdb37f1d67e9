package bedledger.projections.due;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.projections.findings.KnownCrops;
import bedledger.projections.findings.MayI;
import bedledger.projections.findings.PaperRecord;
import bedledger.projections.findings.RuleBook;
import bedledger.projections.findings.Settings;
import java.util.List;
import org.junit.jupiter.api.Test;

class BeforehandTest {
    /** What is said of the last line. */
    private static List<String> says(String... lines) {
        List<Entry> all = PaperRecord.of(lines).farm().written();
        Entry act = all.get(all.size() - 1);
        Farm before = Farm.of(all.subList(0, all.size() - 1));
        return Beforehand.says(
                new MayI(
                        before,
                        RuleBook.us(),
                        Settings.defaults(),
                        new KnownCrops(),
                        act.head().doneOn()),
                act);
    }

    private static final String SPREAD = "2026-04-08 spread N1 --manure horse --per-bed 60kg";
    private static final String WORKED_IN = "2026-04-10 incorporate N1";

    @Test
    void sowingIntoAnOpenIntervalTellsTheFirstDay() {
        assertThat(says(SPREAD, WORKED_IN, "2026-05-01 sow N1 --crop carrot"))
                .singleElement()
                .asString()
                .startsWith("Carrot in N1 cannot be cut as organic before 2026-08-08. ")
                .contains("(2026-04-10 + 120 days)", "#3 #4", "205.203(c)(1)");
    }

    @Test
    void sowingACoverCropOrIntoAFreeBedSaysNothing() {
        assertThat(says(SPREAD, WORKED_IN, "2026-05-01 sow-cover N1 --crop \"rye and vetch\""))
                .isEmpty();
        assertThat(says(SPREAD, WORKED_IN, "2026-05-01 sow N2 --crop carrot")).isEmpty();
    }

    @Test
    void plantingTheSameFamilyAgainIsAsked() {
        assertThat(says(
                        "2026-04-01 transplant N1 --crop kale --origin own",
                        "2026-06-20 finish N1 --crop kale",
                        "2026-06-25 transplant N1 --crop broccoli --origin own"))
                .singleElement()
                .asString()
                .startsWith("Ask: Broccoli in N1 would follow kale");
    }

    /** Staked and clear, 90 days from 2026-04-10; the last pick ends the crop, and with it the staking, yet the record before it counts. */
    @Test
    void theLastPickIsHeldAgainstTheRecordBeforeIt() {
        String[] staked = {SPREAD, WORKED_IN, "2026-05-01 transplant N1 --crop tomato --origin own", ""};
        String pick = " harvest N1 --crop tomato --quantity 5kg --lot 2026/TO-1 --last yes";
        staked[3] = "2026-05-02 stake N1 --crop tomato --clear-of-soil yes";
        assertThat(says(staked[0], staked[1], staked[2], staked[3], "2026-07-09" + pick))
                .isEmpty();
        assertThat(says(staked[0], staked[1], staked[2], staked[3], "2026-07-08" + pick))
                .singleElement()
                .asString()
                .startsWith("Tomato in N1 cannot be cut as organic before 2026-07-09.");
    }

    @Test
    void pickingInsideALabelsDaysOrHoursIsSaid() {
        String kale = "2026-05-01 transplant N1 --crop kale --origin own";
        String spray = "2026-06-01 spray N1 --product \"Kaolin clay\" --pre-harvest-days 3 --re-entry 4h --at 08:00";
        assertThat(says(kale, spray, "2026-06-01 harvest N1 --crop kale --quantity 2kg --lot 2026/KA-1 --at 09:00"))
                .extracting(says -> says.substring(0, 24))
                .containsExactly("Kale in N1 cannot be cut", "Nobody goes into N1 befo");
        assertThat(says(kale, spray, "2026-06-01 harvest N1 --crop kale --quantity 2kg --lot 2026/KA-1"))
                .hasSize(1);
        assertThat(says(kale, spray, "2026-06-04 harvest N1 --crop kale --quantity 2kg --lot 2026/KA-1"))
                .isEmpty();
    }

    private static final String[] CARROTS = {
        "2026-02-20 declare-land North --none-since 2015-01-01 --evidence letter",
        SPREAD,
        WORKED_IN,
        "2026-05-01 sow N1 --crop carrot",
        "2026-07-20 harvest N1 --crop carrot --quantity 20kg --lot 2026/CA-1"
    };

    @Test
    void aLotPickedTooEarlyIsNotMetBeforeItsInvoiceIsOut() {
        List<String> says = says(
                CARROTS[0],
                CARROTS[1],
                CARROTS[2],
                CARROTS[3],
                CARROTS[4],
                "2026-07-21 sell 2026/CA-1=20kg --as organic --invoice 9");
        assertThat(says.get(0)).isEqualTo("Lot 2026/CA-1 as organic: not met.");
        assertThat(says.get(1)).contains("101 days after incorporation").doesNotContain("invoice 9");
    }

    @Test
    void whatIsNotSoldAsOrganicIsNotAsked() {
        assertThat(says(
                        CARROTS[0],
                        CARROTS[1],
                        CARROTS[2],
                        CARROTS[3],
                        CARROTS[4],
                        "2026-07-21 sell 2026/CA-1=20kg --as not-organic"))
                .isEmpty();
    }

    @Test
    void aLotOfWhichNothingIsKnownIsIncomplete() {
        assertThat(says(
                        "2026-01-02 found-lot 2025/ON-1 --crop onion --quantity 10kg",
                        "2026-02-01 sell 2025/ON-1=5kg --as organic"))
                .first()
                .asString()
                .startsWith("Lot 2025/ON-1 as organic: incomplete");
    }
}
