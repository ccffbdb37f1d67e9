package bedledger.cli.chart;

import java.awt.Dimension;
import java.awt.geom.Rectangle2D;
import java.io.StringWriter;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Writes a drawing as an SVG element to stand in a page: words stay words, and it names and describes itself. */
public final class Svg {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";

    public static String of(Drawing drawing) {
        Document document = document();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(2);
        context.setIDGenerator(ids(drawing.id()));
        SVGGraphics2D graphics = new SVGGraphics2D(context, false);
        graphics.setSVGCanvasSize(new Dimension(drawing.width(), drawing.height()));
        drawing.draw(graphics, new Rectangle2D.Double(0, 0, drawing.width(), drawing.height()));
        Element root = graphics.getRoot();
        graphics.dispose();
        label(root, drawing);
        return text(root);
    }

    private static Document document() {
        try {
            DocumentBuilderFactory parsers = DocumentBuilderFactory.newDefaultNSInstance();
            return parsers.newDocumentBuilder().getDOMImplementation().createDocument(NAMESPACE, "svg", null);
        } catch (ParserConfigurationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Several drawings stand on one page, and an id is unique on it. */
    private static SVGIDGenerator ids(String prefix) {
        return new SVGIDGenerator() {
            private int made;

            @Override
            public String generateID(String kind) {
                made++;
                return prefix + "-" + made;
            }
        };
    }

    private static void label(Element root, Drawing drawing) {
        Document document = root.getOwnerDocument();
        Element title = document.createElementNS(NAMESPACE, "title");
        title.setAttribute("id", drawing.id() + "-title");
        title.setTextContent(drawing.title());
        Element description = document.createElementNS(NAMESPACE, "desc");
        description.setAttribute("id", drawing.id() + "-desc");
        description.setTextContent(drawing.description());
        emptyDefinitions(root);
        Node first = root.getFirstChild();
        root.insertBefore(description, first);
        root.insertBefore(title, description);
        root.setAttribute("id", drawing.id());
        root.setAttribute("role", "img");
        root.setAttribute("aria-labelledby", drawing.id() + "-title");
        root.setAttribute("aria-describedby", drawing.id() + "-desc");
        root.setAttribute("viewBox", "0 0 " + drawing.width() + " " + drawing.height());
    }

    /** The library puts an empty element of one fixed id into every drawing. */
    private static void emptyDefinitions(Element root) {
        NodeList definitions = root.getElementsByTagNameNS(NAMESPACE, "defs");
        for (int at = definitions.getLength() - 1; at >= 0; at--) {
            Node one = definitions.item(at);
            if (!one.hasChildNodes()) {
                one.getParentNode().removeChild(one);
            }
        }
    }

    private static String text(Element root) {
        try {
            TransformerFactory factory = TransformerFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            Transformer writer = factory.newTransformer();
            writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            StringWriter text = new StringWriter();
            writer.transform(new DOMSource(root), new StreamResult(text));
            return text.toString();
        } catch (TransformerException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private Svg() {}
}
