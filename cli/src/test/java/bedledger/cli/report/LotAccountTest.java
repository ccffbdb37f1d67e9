package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LotAccountTest {
    @TempDir
    Path folder;

    @Test
    void addsWeightsAndKeepsCountsOfOtherUnitsApart() {
        Desktop desk = new Desktop(folder);
        desk.run("new", "farm", "--farm", "Ash Corner", "--practice", "--written", "2025-02-10T18:00");
        desk.typed("""
                        register-field North --gross 0.05ha --on 2025-02-10 --written 2025-02-10
                        lay-out N1 --field North --length 20m --width 0.75m --on 2025-02-10
                        found-lot 2024/LEEK --crop leek --quantity 120bunches --on 2025-02-10
                        found-lot 2024/BEET --crop beet --quantity 40kg --on 2025-02-10
                        sell 2024/LEEK=50bunches 2024/BEET=10lb --as organic --buyer shop --invoice 7 --on 2025-02-10
                        sell 2024/LEEK=2crates --as organic --buyer shop --on 2025-02-10
                        """, "did", "-", "--book", "farm");
        Page page = desk.report("farm", "--on", "2025-12-31");
        assertThat(Page.text(page.byId("lot-2024-LEEK"))).contains("70 bunches, less 2 crates");
        // 10 lb is 4.536 kg: 40 − 4.536
        assertThat(Page.text(page.byId("lot-2024-BEET"))).contains("35.464 kg");
        assertThat(page.rows("table-invoices", "none recorded", "2 crates")).hasSize(1);
    }

    @Test
    void nothingOnRecordIsSaidInWords() {
        Desktop desk = new Desktop(folder);
        desk.run("new", "farm", "--farm", "Ash Corner", "--practice", "--written", "2025-02-10T18:00");
        Page page = desk.report("farm", "--on", "2025-12-31");
        assertThat(Page.text(page.all("main").get(0)))
                .contains("No field is on record.", "No seed is on record.", "No sale is on record.")
                .contains("Nothing was corrected or struck.", "Rules by which nothing in the record is judged");
    }

    @Test
    void aBookIsJudgedByTheRulesItNames() {
        Desktop desk = new Desktop(folder);
        desk.run("new", "farm", "--farm", "Ash Corner", "--rules", "eu", "--practice", "--written", "2025-02-10T18:00");
        Page page = desk.report("farm", "--on", "2025-12-31");
        assertThat(Page.text(page.all("main").get(0)))
                .contains("Annex II Part I, 1.7.1", "livestock-nitrogen")
                .doesNotContain("7 CFR 205.202");
    }
}
