package bedledger.cli.paper;

import bedledger.cli.chart.Drawing;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A page of the screen made fit for paper: another style sheet, drawings for SVG, bookmarks, nothing that only a screen needs. */
final class PaperPage {
    private static final List<String> SCREEN_ONLY = List.of("skip", "strip", "up");
    private static final int ROWS_KEPT_TOGETHER = 14;
    private final Document page;

    PaperPage(String xhtml, String css, List<Drawing> drawings) {
        this.page = parse(xhtml);
        all("style").forEach(style -> style.setTextContent(css));
        remove(element -> SCREEN_ONLY.contains(element.getAttribute("class")));
        remove(element -> element.getTagName().equals("meta") && element.hasAttribute("http-equiv"));
        // A region is named by a table's caption on the screen; on paper nothing scrolls.
        all("*").forEach(element -> element.removeAttribute("tabindex"));
        drawings.forEach(this::draw);
        all("a").forEach(link ->
                link.setAttribute("title", "Leads to: " + link.getTextContent().strip()));
        all("table").stream().filter(PaperPage::isShort).forEach(table -> table.setAttribute("class", "short"));
        bookmarks();
        new Letters(page).onlyWhatTheFontHas();
    }

    /** Whether it is better begun on a new page than broken. */
    private static boolean isShort(Element table) {
        return table.getElementsByTagName("tr").getLength() <= ROWS_KEPT_TOGETHER;
    }

    Document document() {
        return page;
    }

    private static Document parse(String xhtml) {
        try {
            DocumentBuilderFactory parsers = DocumentBuilderFactory.newDefaultInstance();
            parsers.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            parsers.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            return parsers.newDocumentBuilder().parse(new InputSource(new StringReader(xhtml)));
        } catch (ParserConfigurationException | SAXException | IOException malformed) {
            throw new IllegalStateException("the page is not well-formed", malformed);
        }
    }

    private List<Element> all(String name) {
        NodeList found = page.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int at = 0; at < found.getLength(); at++) {
            elements.add((Element) found.item(at));
        }
        return elements;
    }

    private void remove(Predicate<Element> which) {
        all("*").stream()
                .filter(which)
                .forEach(element -> element.getParentNode().removeChild(element));
    }

    private void draw(Drawing drawing) {
        all("svg").stream()
                .filter(svg -> svg.getAttribute("id").equals(drawing.id()))
                .forEach(svg -> svg.getParentNode().replaceChild(object(drawing), svg));
    }

    private Element object(Drawing drawing) {
        Element object = page.createElement("object");
        object.setAttribute("type", Drawings.KIND);
        object.setAttribute("data", drawing.id());
        object.setAttribute("alt", drawing.title() + ". " + drawing.description());
        object.setAttribute("style", "width: " + drawing.width() + "px; height: " + drawing.height() + "px");
        return object;
    }

    private void bookmarks() {
        Element bookmarks = page.createElement("bookmarks");
        all("h2").stream().filter(heading -> heading.hasAttribute("id")).forEach(heading -> {
            Element bookmark = page.createElement("bookmark");
            bookmark.setAttribute("name", heading.getTextContent());
            bookmark.setAttribute("href", "#" + heading.getAttribute("id"));
            bookmarks.appendChild(bookmark);
        });
        all("head").get(0).appendChild(bookmarks);
    }
}
