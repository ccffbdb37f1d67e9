package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipFile;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.core.VeraPDFException;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The audit report on paper, held against PDF/A-3 level A (ISO 19005-3) and PDF/UA-1 (ISO 14289-1) by veraPDF, and looked at page by page. */
class AuditPaperTest {
    private static final Path PAPER = Desktop.withTheDemo().paper("farm", "--on", "2025-12-31");
    /** Points; the style sheet's side margins are 15 mm = 42.5 pt. */
    private static final float SIDE = 42;

    @TempDir
    Path folder;

    @Test
    void conformsToWhatItDeclares() throws IOException, VeraPDFException {
        byte[] pdf = Files.readAllBytes(PAPER);
        assertThat(Conformance.failures(pdf, PDFAFlavour.PDFA_3_A)).isEmpty();
        assertThat(Conformance.failures(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    }

    @Test
    void conformsAlsoWhereNamesAreLongAndLettersAreNotInTheFont() throws IOException, VeraPDFException {
        byte[] pdf = Files.readAllBytes(unruly());
        assertThat(Conformance.failures(pdf, PDFAFlavour.PDFA_3_A)).isEmpty();
        assertThat(Conformance.failures(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    }

    @Test
    void everyFontIsInTheFile() throws IOException {
        try (PDDocument document = Loader.loadPDF(PAPER.toFile())) {
            for (PDPage page : document.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                    assertThat(font.getName()).contains("Liberation");
                }
            }
        }
    }

    @Test
    void theSameBookAndMomentGiveTheSameBytes() throws IOException {
        Path again = Desktop.withTheDemo().paper("farm", "--on", "2025-12-31");
        assertThat(again).isNotEqualTo(PAPER).hasSameBinaryContentAs(PAPER);
        try (PDDocument document = Loader.loadPDF(PAPER.toFile())) {
            assertThat(document.getDocumentInformation().getCreationDate().toInstant())
                    .isEqualTo("2026-01-02T15:00:00Z");
        }
    }

    @Test
    void theOneInAPacketConformsTooAndHoldsNothingThatAnotherZlibWouldWriteOtherwise()
            throws IOException, VeraPDFException {
        Desktop.withTheDemo()
                .run(
                        "packet",
                        "--book",
                        "farm",
                        "--out",
                        folder.resolve("p.zip").toString());
        byte[] pdf;
        try (ZipFile zip = new ZipFile(folder.resolve("p.zip").toFile());
                InputStream in = zip.getInputStream(zip.getEntry("report.pdf"))) {
            pdf = in.readAllBytes();
        }
        assertThat(Conformance.failures(pdf, PDFAFlavour.PDFA_3_A)).isEmpty();
        assertThat(Conformance.failures(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
        assertThat(new String(pdf, StandardCharsets.ISO_8859_1)).doesNotContain("FlateDecode", "ObjStm");
        assertThat(pages(Files.write(folder.resolve("p.pdf"), pdf)).get(0)).contains("Audit report of");
    }

    @Test
    void everyPageHasItsNumberAndSaysThatItIsPractice() throws IOException {
        List<String> pages = pages(PAPER);
        assertThat(pages).hasSizeGreaterThan(10);
        for (int page = 1; page <= pages.size(); page++) {
            assertThat(pages.get(page - 1))
                    .contains(page + " / " + pages.size(), "PRACTICE book – not the record of a farm", "checkpoint 94");
        }
    }

    @Test
    void theHeadOfALongTableStandsOnEveryPageOfIt() throws IOException {
        List<String> register = pages(PAPER).stream()
                .filter(page -> page.lines()
                                .filter(line -> line.matches("#[0-9]+ 20.*"))
                                .count()
                        > 5)
                .toList();
        assertThat(register)
                .hasSizeGreaterThan(1)
                .allSatisfy(page -> assertThat(page).contains("leaf hash"));
    }

    @Test
    void nothingIsCutOffAtTheEdgeOfThePage() throws IOException {
        assertThat(beyondTheMargins(PAPER)).isEmpty();
        assertThat(beyondTheMargins(unruly())).isEmpty();
    }

    @Test
    void lettersThatTheFontDoesNotHaveAreWrittenByTheirNumber() throws IOException {
        assertThat(String.join("", pages(unruly()))).contains("[U+1F955]").doesNotContain("#?");
    }

    /** A book of long names without a space, in the tables that have most columns. */
    private Path unruly() {
        Desktop desk = new Desktop(folder);
        String endless = "Saatgut-und-Pflanzenhandelsgesellschaft/".repeat(4);
        desk.run("new", "farm", "--farm", "Ash Corner", "--practice", "--written", "2025-02-10T18:00");
        desk.typed("""
                        register-field North --gross 0.05ha --on 2025-02-10 --written 2025-02-10
                        lay-out N1 --field North --length 20m --width 0.75m --on 2025-02-10
                        found N1 --nothing --on 2025-02-10 --note "a \uD83E\uDD55 %1$s"
                        receive-seed LONG-1 --crop carrot --quantity 100g --supplier %1$s --organic no --treatment untreated --receipt %1$s --suppliers-asked 3 --search %1$s --on 2025-02-10
                        sow N1 --crop carrot --seed-lot LONG-1 --quantity 10g --on 2025-04-10 --written 2025-04-10
                        harvest N1 --crop carrot --quantity 40kg --lot CARROT-OF-THE-LONGEST-NAME --on 2025-08-10 --written 2025-08-10
                        sell CARROT-OF-THE-LONGEST-NAME=10kg --as organic --buyer %1$s --invoice %1$s --on 2025-08-11 --written 2025-08-11
                        """.formatted(endless), "did", "-", "--book", "farm");
        return desk.paper("farm", "--on", "2025-12-31");
    }

    private static List<String> pages(Path pdf) throws IOException {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document));
            }
        }
        return pages;
    }

    private static List<String> beyondTheMargins(Path pdf) throws IOException {
        List<String> beyond = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> letters) {
                    for (TextPosition letter : letters) {
                        if (letter.getX() < SIDE || letter.getEndX() > letter.getPageWidth() - SIDE) {
                            beyond.add("page " + getCurrentPageNo() + ": " + text);
                        }
                    }
                }
            };
            stripper.getText(document);
        }
        return beyond;
    }
}
