package bedledger.cli.paper;

import bedledger.cli.chart.Drawing;
import bedledger.cli.chart.Faces;
import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;

/**
 * A page of a report on its way to paper.
 *
 * @param xhtml the page as it is on the screen, well-formed
 * @param css its style sheet for paper, CSS 2.1 with margin boxes
 * @param drawings those that stand in the page as SVG, whose ids they bear
 */
public record Paper(String xhtml, String css, List<Drawing> drawings) {
    private static final int BOLD = 700;
    private static final int PLAIN = 400;

    /** What long-keeping standard the file declares. */
    public enum Kept {
        PDF_A_2A(PdfAConformance.PDFA_2_A),
        /** As 2a, and files may be put into it. */
        PDF_A_3A(PdfAConformance.PDFA_3_A);

        private final PdfAConformance conformance;

        Kept(PdfAConformance conformance) {
            this.conformance = conformance;
        }
    }

    public Paper {
        drawings = List.copyOf(drawings);
    }

    /**
     * Writes the PDF, the same bytes for the same page and moment; throws where it cannot be laid out or written.
     *
     * @param made the day it says it was made on
     */
    public void write(Kept kept, String producer, Instant made, OutputStream out) throws IOException {
        XRLog.setLoggingEnabled(false);
        Document page = new PaperPage(xhtml, css, drawings).document();
        Map<String, Drawing> byId = drawings.stream().collect(Collectors.toMap(Drawing::id, Function.identity()));
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.withW3cDocument(page, null);
        builder.withProducer(producer);
        builder.usePdfAConformance(kept.conformance);
        builder.usePdfUaAccessibility(true);
        builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
        builder.useObjectDrawerFactory(new Drawings(byId));
        fonts(builder);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            try (PDDocument laid = renderer.createPDFKeepOpen()) {
                LinkWords.into(laid);
                Made.on(made).into(laid);
                laid.save(out);
            }
        }
    }

    private static void fonts(PdfRendererBuilder builder) {
        font(builder, "Regular", PLAIN, FontStyle.NORMAL);
        font(builder, "Bold", BOLD, FontStyle.NORMAL);
        font(builder, "Italic", PLAIN, FontStyle.ITALIC);
        font(builder, "BoldItalic", BOLD, FontStyle.ITALIC);
    }

    private static void font(PdfRendererBuilder builder, String face, int weight, FontStyle style) {
        FSSupplier<InputStream> open = () -> Faces.open(face);
        builder.useFont(open, Faces.FAMILY, weight, style, true);
    }
}
