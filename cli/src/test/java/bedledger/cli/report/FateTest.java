package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What became of entries that were struck, that no longer fit, or that a document belongs to. */
class FateTest {
    @TempDir
    Path folder;

    private Page page() throws IOException {
        Desktop desk = new Desktop(folder);
        desk.run("new", "farm", "--farm", "Ash Corner", "--practice", "--written", "2025-02-10T18:00");
        desk.typed("""
                        register-field North --gross 0.05ha --on 2025-02-10 --written 2025-03-31
                        lay-out N1 --field North --length 20m --width 0.75m --on 2025-02-10
                        found N1 --nothing --on 2025-02-10
                        transplant N1 --crop leek --origin own --plants 200 --on 2025-02-11
                        harvest N1 --crop leek --quantity 5kg --lot LEE-1 --on 2025-03-20
                        weed N1 --tool hoe --on 2025-03-21
                        finish N1 --crop leek --why frost --on 2025-03-15
                        """, "did", "-", "--book", "farm");
        desk.run("strike", "7", "--why", "that was N2", "--book", "farm");
        Files.writeString(folder.resolve("slip.txt"), "five kilos of leeks");
        desk.run("attach", "6", "slip.txt", "--book", "farm");
        return desk.report("farm", "--on", "2026-01-02");
    }

    @Test
    void strikesMisfitsAndDocumentsStandBesideTheirEntries() throws IOException {
        Page page = page();
        assertThat(Page.text(page.rows("timeline-N1", "weed").get(0))).contains("Struck by #9", "that was N2");
        assertThat(Page.text(page.rows("table-corrections", "#9").get(0)))
                .contains("#7", "hoe", "struck: it no longer counts", "that was N2");
        assertThat(Page.text(page.rows("timeline-N1", "harvest").get(0))).contains("Does not fit N1");
        assertThat(Page.text(page.rows("timeline-N1", "harvest").get(0))).contains("slip.txt", "…", "#10");
        assertThat(Page.text(page.rows("table-others", "slip.txt").get(0))).contains("document attached", "#10");
        assertThat(page.rows("timeline-N1", "finish", "frost")).hasSize(1);
    }
}
