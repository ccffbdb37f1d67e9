package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedledger.cli.Failure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFileTest {
    @TempDir
    Path folder;

    @Test
    void makesTheFolderAndTheFile() throws IOException {
        Path file = ReportFile.write(folder.resolve("reports/audit.html"), out -> out.write("one"));
        assertThat(file).isEqualTo(folder.resolve("reports/audit.html")).hasContent("one");
    }

    @Test
    void numbersTheNameRatherThanWriteOverAFile() {
        Path wanted = folder.resolve("audit.2025.html");
        ReportFile.write(wanted, out -> out.write("one"));
        assertThat(ReportFile.write(wanted, out -> out.write("two")))
                .isEqualTo(folder.resolve("audit.2025-2.html"))
                .hasContent("two");
        assertThat(ReportFile.write(wanted, out -> out.write("three"))).isEqualTo(folder.resolve("audit.2025-3.html"));
        assertThat(wanted).hasContent("one");
    }

    @Test
    void pageAndPaperHaveOneNumber() throws IOException {
        Path wanted = folder.resolve("audit.html");
        Files.writeString(folder.resolve("audit.pdf"), "somebody's own");
        ReportFile.Written written =
                ReportFile.write(wanted, out -> out.write("page"), out -> out.write(new byte[] {1}));
        assertThat(written.page()).isEqualTo(folder.resolve("audit-2.html")).hasContent("page");
        assertThat(written.paper()).isEqualTo(folder.resolve("audit-2.pdf")).hasBinaryContent(new byte[] {1});
        assertThat(folder.resolve("audit.pdf")).hasContent("somebody's own");
        assertThat(wanted).doesNotExist();
    }

    @Test
    void leavesNoHalfReportBehind() {
        assertThatThrownBy(() -> ReportFile.write(folder.resolve("audit.html"), out -> {
                    out.write("half");
                    throw new IOException("the disk is full");
                }))
                .isInstanceOf(Failure.class)
                .hasMessageContaining("the disk is full")
                .hasMessageContaining("--out");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void saysWhereAFolderIsInTheWay() throws IOException {
        Files.createFile(folder.resolve("reports"));
        assertThatThrownBy(() -> ReportFile.write(folder.resolve("reports/audit.html"), out -> out.write("one")))
                .isInstanceOf(Failure.class)
                .hasMessageContaining("could not be written");
    }

    @Test
    void theCommandPrintsThePathItWrote() {
        String path = Desktop.withTheDemo()
                .run("report", "--on", "2025-03-01", "--out", "mine.html", "--html-only", "--book", "farm")
                .strip();
        assertThat(Path.of(path)).hasFileName("mine.html").exists();
        String second = Desktop.withTheDemo()
                .run("report", "--on", "2025-03-01", "--out", "mine.html", "--html-only", "--book", "farm")
                .strip();
        assertThat(Path.of(second)).hasFileName("mine-2.html").exists();
    }

    @Test
    void printsWhatItCountsAsJson() {
        assertThat(Desktop.withTheDemo().run("report", "--on", "2025-12-31", "--html-only", "--book", "farm", "--json"))
                .contains("\"practice\" : true", "\"entries\" : 94", "\"file\" : ", "\"notMet\" : ");
    }
}
