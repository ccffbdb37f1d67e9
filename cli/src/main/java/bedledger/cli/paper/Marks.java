package bedledger.cli.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;

/**
 * Writes what a mark says beside the mark, and leaves out marks around nothing.
 *
 * <p>The library makes an object of its own for each background, painted or not: two thirds of all objects in a report of tables.
 */
final class Marks {
    /** At the beginning of a line, where the library puts it; glyph numbers in a text do not reach the letters of a mark. */
    private static final Pattern MARK = Pattern.compile("(?m)^/(\\w+) /(Prop[0-9]+) BDC\n(EMC\n)?");

    private final COSDictionary said;

    private Marks(COSDictionary said) {
        this.said = said;
    }

    static void into(PDDocument document) throws IOException {
        for (PDPage page : document.getPages()) {
            COSDictionary resources = page.getResources().getCOSObject();
            COSDictionary said = resources.getCOSDictionary(COSName.PROPERTIES);
            if (said != null) {
                new Marks(said).in(document, page);
                resources.removeItem(COSName.PROPERTIES);
            }
        }
    }

    private void in(PDDocument document, PDPage page) throws IOException {
        String drawn;
        try (InputStream in = page.getContents()) {
            drawn = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
        Matcher marks = MARK.matcher(drawn);
        PDStream contents = new PDStream(document);
        try (OutputStream out = contents.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(marks.replaceAll(mark -> Matcher.quoteReplacement(written(mark)))
                    .getBytes(StandardCharsets.ISO_8859_1));
        }
        page.setContents(contents);
    }

    private String written(MatchResult mark) {
        COSDictionary says = said.getCOSDictionary(COSName.getPDFName(mark.group(2)));
        if (says == null) {
            throw new IllegalStateException("A mark says nothing: " + mark.group(2));
        }
        if (says.containsKey(COSName.MCID)) {
            String empty = mark.group(3) == null ? "" : mark.group(3);
            return "/" + mark.group(1) + " <</MCID " + says.getInt(COSName.MCID) + ">> BDC\n" + empty;
        }
        if (mark.group(3) != null) {
            return "";
        }
        String type = says.getNameAsString(COSName.TYPE);
        return "Background".equals(type) ? "/Artifact BMC\n" : "/Artifact <</Type /" + type + ">> BDC\n";
    }
}
