package bedledger.cli.paper;

import bedledger.cli.chart.Drawing;
import bedledger.cli.chart.Faces;
import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
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
    private static final int TABLES = 12;
    private static final int TABLE = 16;
    private static final int SUBSTITUTIONS = 0x47535542; // GSUB
    private static final int NOBODY_S = 0x47535558; // GSUX
    private static final String COLOURS = "srgb.icc";

    /** How the file is written. */
    public enum Packing {
        /** Deflated: small, but its bytes may differ with the zlib of the Java that made it. */
        DEFLATED,
        /** Five times as large, and the same bytes wherever it is made. */
        NONE
    }

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

    /** As {@link #write(Kept, Packing, String, Instant, OutputStream)}, deflated. */
    public void write(Kept kept, String producer, Instant made, OutputStream out) throws IOException {
        write(kept, Packing.DEFLATED, producer, made, out);
    }

    /**
     * Writes the PDF, the same bytes for the same page and moment; throws where it cannot be laid out or written.
     *
     * @param made the day it says it was made on
     */
    public void write(Kept kept, Packing packing, String producer, Instant made, OutputStream out) throws IOException {
        XRLog.setLoggingEnabled(false);
        Document page = new PaperPage(xhtml, css, drawings).document();
        Map<String, Drawing> byId = drawings.stream().collect(Collectors.toMap(Drawing::id, Function.identity()));
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.withW3cDocument(page, null);
        builder.withProducer(producer);
        builder.usePdfAConformance(kept.conformance);
        builder.usePdfUaAccessibility(true);
        builder.useColorProfile(colours());
        builder.useObjectDrawerFactory(new Drawings(byId));
        fonts(builder);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            try (PDDocument laid = renderer.createPDFKeepOpen()) {
                LinkWords.into(laid);
                Marks.into(laid);
                colours(laid);
                Made.on(made).into(laid);
                if (packing == Packing.NONE) {
                    PlainFile.write(laid, out);
                } else {
                    laid.save(out);
                }
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
        FSSupplier<InputStream> open = () -> new ByteArrayInputStream(withoutJoinedLetters(face));
        builder.useFont(open, Faces.FAMILY, weight, style, true);
    }

    /**
     * The face with its table of substitutions under a name that nobody looks for (OpenType, font file: table directory).
     *
     * <p>The library would join letters as it draws them, with a pattern made anew for every word, after it had measured them apart.
     */
    private static byte[] withoutJoinedLetters(String face) {
        try (InputStream in = Faces.open(face)) {
            byte[] font = in.readAllBytes();
            ByteBuffer directory = ByteBuffer.wrap(font);
            int tables = directory.getShort(Integer.BYTES);
            for (int at = TABLES; at < TABLES + tables * TABLE; at += TABLE) {
                if (directory.getInt(at) == SUBSTITUTIONS) {
                    directory.putInt(at, NOBODY_S);
                }
            }
            return font;
        } catch (IOException failed) {
            throw new UncheckedIOException(face, failed);
        }
    }

    /** Puts the profile in as it is; the Java in use may have changed its head on the way through. */
    private static void colours(PDDocument document) throws IOException {
        for (PDOutputIntent intent : document.getDocumentCatalog().getOutputIntents()) {
            try (OutputStream out = intent.getDestOutputIntent().createOutputStream(COSName.FLATE_DECODE)) {
                out.write(colours());
            }
        }
    }

    private static byte[] colours() {
        try (InputStream in = Objects.requireNonNull(Paper.class.getResourceAsStream(COLOURS), COLOURS)) {
            return in.readAllBytes();
        } catch (IOException failed) {
            throw new UncheckedIOException(COLOURS, failed);
        }
    }
}
