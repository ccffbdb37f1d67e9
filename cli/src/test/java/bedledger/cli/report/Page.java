package bedledger.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** A report, read by the JDK's own XML parser: it throws for anything that is not well-formed. */
record Page(Path file, String text, Document document) {
    static Page read(Path file) {
        try {
            DocumentBuilderFactory parsers = DocumentBuilderFactory.newInstance();
            parsers.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            return new Page(
                    file,
                    Files.readString(file, StandardCharsets.UTF_8),
                    parsers.newDocumentBuilder().parse(file.toFile()));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (SAXException | ParserConfigurationException malformed) {
            throw new AssertionError("the report is not well-formed", malformed);
        }
    }

    Element root() {
        return document.getDocumentElement();
    }

    /** Elements of a name, in the order of the page. */
    List<Element> all(String name) {
        return all(root(), name);
    }

    static List<Element> all(Element within, String name) {
        NodeList found = within.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int at = 0; at < found.getLength(); at++) {
            elements.add((Element) found.item(at));
        }
        return elements;
    }

    Stream<Element> everything() {
        return all("*").stream();
    }

    Element byId(String id) {
        return everything()
                .filter(element -> element.getAttribute("id").equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing has the id " + id));
    }

    /** The rows of a table's body whose text holds all of these words. */
    List<Element> rows(String table, String... words) {
        return all(byId(table), "tr").stream()
                .filter(row -> Stream.of(words).allMatch(text(row)::contains))
                .toList();
    }

    static String text(Element element) {
        return element.getTextContent().replaceAll("\\s+", " ").strip();
    }

    static boolean hasClass(Element element, String name) {
        return List.of(element.getAttribute("class").split(" ")).contains(name);
    }

    static Optional<Element> above(Element element, Predicate<Element> wanted) {
        for (Node node = element.getParentNode(); node instanceof Element parent; node = parent.getParentNode()) {
            if (wanted.test(parent)) {
                return Optional.of(parent);
            }
        }
        return Optional.empty();
    }

    /** Whether it links to at least one entry of the register. */
    static boolean linksToAnEntry(Element element) {
        return all(element, "a").stream()
                .anyMatch(link -> link.getAttribute("href").startsWith("#entry-"));
    }

    String style() {
        return all("style").get(0).getTextContent();
    }
}
