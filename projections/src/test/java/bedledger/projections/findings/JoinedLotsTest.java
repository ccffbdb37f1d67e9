package bedledger.projections.findings;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.Lineage;
import bedledger.language.LotId;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** A lot that was joined is no better than its worst part; seed that went by way of trays is followed. */
class JoinedLotsTest {
    private static final LocalDate END = LocalDate.parse("2026-12-31");

    private static Outcome eligible(PaperRecord record, String lot) {
        return Eligibility.of(LotId.parse(lot), Lineage.of(record.farm(), END), record.findings(END.toString()))
                .worst();
    }

    /** Beets from N1 within 120 days of raw manure, beets from N2 without any. */
    private static PaperRecord beets() {
        return PaperRecord.of(
                "2020-01-01 declare-land North --none-since 2010-01-01 --evidence affidavit",
                "2026-02-01 receive-seed BE-1 --crop beet --quantity 100g --organic yes --certificate C-1",
                "2026-05-01 spread N1 --manure horse --quantity 60kg",
                "2026-05-02 incorporate N1 --depth 10cm",
                "2026-05-10 sow N1 --crop beet --seed-lot BE-1",
                "2026-05-10 sow N2 --crop beet --seed-lot BE-1",
                "2026-08-01 harvest N1 --crop beet --quantity 40kg --lot 2026/B-1",
                "2026-08-01 harvest N2 --crop beet --quantity 50kg --lot 2026/B-2",
                "2026-08-02 join-lots 2026/B-1=10kg 2026/B-2=50kg --into 2026/B-MIX",
                "2026-08-03 split-lot 2026/B-MIX --into 2026/B-SMALL=12kg",
                "2026-08-04 sell 2026/B-SMALL=12kg --as organic --invoice 7");
    }

    @Test
    void whatIsWrongWithAPartIsWrongWithTheWhole() {
        PaperRecord record = beets();

        assertThat(eligible(record, "2026/B-2")).isEqualTo(Outcome.MET);
        assertThat(eligible(record, "2026/B-1")).isEqualTo(Outcome.NOT_MET);
        assertThat(eligible(record, "2026/B-MIX")).isEqualTo(Outcome.NOT_MET);
        assertThat(eligible(record, "2026/B-SMALL")).isEqualTo(Outcome.NOT_MET);
        assertThat(record.findingsOf("manure-interval").toString())
                .contains("2026/B-SMALL was sold as organic on invoice 7");
    }

    @Test
    void ofAPartThatNobodyKnowsTheWholeIsIncomplete() {
        PaperRecord record = beets().write(
                        "2026-08-05 found-lot 2025/OLD --crop beet --quantity 9kg",
                        "2026-08-05 join-lots 2026/B-2=1kg 2025/OLD=9kg --into 2026/B-STORE");

        assertThat(eligible(record, "2026/B-STORE")).isEqualTo(Outcome.INCOMPLETE);
    }

    @Test
    void anOversoldPartIsCountedAcrossTheJoin() {
        PaperRecord record = beets().write("2026-08-06 sell 2026/B-MIX=50kg --as organic");

        assertThat(record.theFindingOf("lot-oversold").arithmetic())
                .isEqualTo("10 kg joined + 50 kg joined − 12 kg put into another lot − 50 kg sold = −2 kg");
    }

    @Test
    void followsSeedThroughTraysToTheLots() {
        PaperRecord record = PaperRecord.of(
                "2026-02-01 receive-seed LE-2 --crop lettuce --quantity 5g --organic no --treatment untreated",
                "2026-03-01 list-material \"Own mix\" --use fertility",
                "2026-03-01 sow-trays T-1 --crop lettuce --seed-lot LE-2 --potting-mix \"Own mix\"",
                "2026-04-10 transplant N1 --crop lettuce --origin own --trays T-1",
                "2026-06-10 harvest N1 --crop lettuce --quantity 40kg --lot 2026/LET");

        Finding seed = record.theFindingOf("seed-organic");
        assertThat(seed.outcome()).isEqualTo(Outcome.INCOMPLETE);
        assertThat(seed.lots()).containsExactly(LotId.parse("2026/LET"));
        assertThat(record.findingsOf("seed-recorded")).isEmpty();
        Finding mix = record.theFindingOf("material-listed");
        assertThat(mix.sentence()).startsWith("Own mix, used from 2026-03-01: listed, but no approval");
        assertThat(mix.lots()).containsExactly(LotId.parse("2026/LET"));
    }

    @Test
    void traysWithoutASeedLotLeaveItOpen() {
        PaperRecord record = PaperRecord.of(
                "2026-03-01 sow-trays T-1 --crop lettuce",
                "2026-04-10 transplant N1 --crop lettuce --origin own --trays T-1");

        assertThat(record.theFindingOf("seed-recorded").sentence()).contains("no seed lot is recorded");
    }
}
