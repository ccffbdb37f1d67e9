package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A report over a log that was changed says so before anything else. */
class SealTest {
    @TempDir
    Path folder;

    @Test
    void saysThatAChangedJournalDoesNotAgreeAndWhere() throws IOException {
        Desktop desk = new Desktop(folder);
        copy("bedledger.book");
        copy("checkpoints.txt");
        Path journal = copy("journal.jsonl");
        Files.writeString(journal, Files.readString(journal).replace("damp, cut in two goes", "dry, cut in two goes"));
        Page page = desk.report("farm", "--on", "2025-12-31");
        assertThat(Page.text(page.all("main").get(0)))
                .contains("Journal and checkpoints do not agree.", "nothing in this report is borne out")
                .doesNotContain("they agree");
    }

    @Test
    void saysHowFarTheSignaturesReach() throws IOException {
        Desktop desk = new Desktop(folder);
        copy("bedledger.book");
        copy("journal.jsonl");
        assertThat(Page.text(
                        desk.report("farm", "--on", "2025-12-31").all("main").get(0)))
                .contains("No checkpoint was signed yet: no entry of this report is sealed.");
    }

    private Path copy(String name) throws IOException {
        Path copy = folder.resolve("farm").resolve(name);
        Files.createDirectories(copy.getParent());
        return Files.copy(Desktop.withTheDemo().folder().resolve("farm").resolve(name), copy);
    }
}
