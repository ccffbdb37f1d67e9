package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.cli.paper.Paper;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.core.VeraPDFException;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The agronomist's report on paper, held against PDF/A (ISO 19005-2 and -3, level A) and PDF/UA-1 (ISO 14289-1) by veraPDF. */
class PaperTest {
    private static final int NOT_BLANK = 200;
    private static final float DOTS_PER_INCH = 40;

    @ParameterizedTest(name = "{0}")
    @EnumSource(Paper.Kept.class)
    void conformsToWhatItDeclares(Paper.Kept kept) throws IOException, VeraPDFException {
        byte[] pdf = paper(kept);
        PDFAFlavour declared = kept == Paper.Kept.PDF_A_2A ? PDFAFlavour.PDFA_2_A : PDFAFlavour.PDFA_3_A;
        assertThat(Conformance.failures(pdf, declared)).isEmpty();
        assertThat(Conformance.failures(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    }

    private static byte[] paper(Paper.Kept kept) throws IOException {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        FourSeasons.desk().seasons("heron", "2026-11-25").writePaper(kept, pdf);
        return pdf.toByteArray();
    }

    @Test
    void theValidatorFindsWhatIsMissing() throws IOException, VeraPDFException {
        ByteArrayOutputStream bare = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            document.save(bare);
        }
        assertThat(Conformance.failures(bare.toByteArray(), PDFAFlavour.PDFUA_1))
                .isNotEmpty();
    }

    @Test
    void noPageIsBlank() throws IOException {
        try (PDDocument document = Loader.loadPDF(FourSeasons.paper().toFile())) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                BufferedImage image = renderer.renderImageWithDPI(page, DOTS_PER_INCH);
                long ink = Stream.iterate(0, y -> y + 1)
                        .limit(image.getHeight())
                        .mapToLong(y -> inkIn(image, y))
                        .sum();
                assertThat(ink).as("dark dots of page %d", page + 1).isGreaterThan(NOT_BLANK);
            }
        }
    }

    private static long inkIn(BufferedImage image, int y) {
        return java.util.stream.IntStream.range(0, image.getWidth())
                .filter(x -> (image.getRGB(x, y) & 0xFF) < 0xC0)
                .count();
    }

    @Test
    void wordsOfPageAndChartsCanBeTakenOut() throws IOException {
        try (PDDocument document = Loader.loadPDF(FourSeasons.paper().toFile())) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text)
                    .contains("Seasons and soil of Heron Bottom Farm", "Days under cover", "“Not known” is not nothing")
                    .contains("t/ha", "cover-crop shoots, measured")
                    .contains("PRACTICE book – not the record of a farm")
                    .doesNotContain("#?", "\uFFFD");
            assertThat(document.getDocumentInformation().getTitle()).contains("Heron Bottom Farm");
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
        }
    }

    @Test
    void everyFontIsInTheFile() throws IOException {
        try (PDDocument document = Loader.loadPDF(FourSeasons.paper().toFile())) {
            for (PDPage page : document.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                    assertThat(font.getName()).contains("Liberation");
                }
            }
        }
    }
}
