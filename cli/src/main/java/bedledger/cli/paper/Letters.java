package bedledger.cli.paper;

import bedledger.cli.chart.Faces;
import java.text.Normalizer;
import java.util.Map;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/** Writes by its number what the font in the file has no letter for; the library would put one mark for all of them. */
record Letters(Document page) {
    /** Ticks for the eye, with the words always beside them. */
    private static final Map<Integer, String> TICKS = Map.of(0x2713, "+", 0x2717, "×");

    void onlyWhatTheFontHas() {
        in(page.getDocumentElement());
    }

    private static void in(Node node) {
        if (node instanceof Text text) {
            text.setData(written(text.getData()));
            return;
        }
        if (node instanceof Element element
                && (element.getTagName().equals("style") || element.getTagName().equals("bookmarks"))) {
            return;
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            in(child);
        }
    }

    static String written(String text) {
        if (text.codePoints().allMatch(Letters::isThere)) {
            return text;
        }
        StringBuilder written = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(point -> written.append(letter(point)));
        return written.toString();
    }

    private static String letter(int point) {
        if (isThere(point)) {
            return Character.toString(point);
        }
        return TICKS.getOrDefault(point, Character.isSpaceChar(point) ? " " : "[U+%04X]".formatted(point));
    }

    private static boolean isThere(int point) {
        return point < 0x7F || Faces.has(point);
    }
}
