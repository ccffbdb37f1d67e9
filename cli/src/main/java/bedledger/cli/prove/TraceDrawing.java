package bedledger.cli.prove;

import bedledger.cli.read.TextTable;
import bedledger.projections.trace.Link;
import bedledger.projections.trace.Node;
import bedledger.projections.trace.Trace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** A trace drawn from left to right, as SVG: each thing stands right of all it came from. */
final class TraceDrawing {
    private static final int BOX = 210;
    private static final int BETWEEN = 70;
    private static final int LINE = 14;
    private static final int LETTERS = 36;
    private static final int MOST_LINES = 4;
    private static final int ROW = MOST_LINES * LINE + 30;
    private static final int MARGIN = 20;

    private final Trace trace;
    private final Map<String, Integer> layers = new HashMap<>();
    private final Map<String, Integer> rows = new HashMap<>();

    TraceDrawing(Trace trace) {
        this.trace = trace;
        trace.nodes().forEach(node -> layers.put(node.id(), 0));
        layer();
        order();
    }

    /** The longest way from any source; no more rounds than nodes, should links make a ring. */
    private void layer() {
        boolean moved = true;
        for (int round = 0; moved && round < trace.nodes().size(); round++) {
            moved = false;
            for (Link link : trace.links()) {
                int wanted = layers.getOrDefault(link.from(), 0) + 1;
                if (layers.getOrDefault(link.to(), 0) < wanted) {
                    layers.put(link.to(), wanted);
                    moved = true;
                }
            }
        }
    }

    /** Within a column, each thing at the mean height of what leads to it. */
    private void order() {
        Map<Integer, List<Node>> columns = new TreeMap<>();
        trace.nodes()
                .forEach(node -> columns.computeIfAbsent(layers.getOrDefault(node.id(), 0), l -> new ArrayList<>())
                        .add(node));
        columns.values().forEach(column -> {
            Map<Node, Double> wanted = new HashMap<>();
            column.forEach(node -> wanted.put(node, height(node)));
            column.sort(Comparator.comparing(node -> wanted.getOrDefault(node, 0.0)));
            for (int row = 0; row < column.size(); row++) {
                rows.put(column.get(row).id(), row);
            }
        });
    }

    private double height(Node node) {
        return trace.links().stream()
                .filter(link -> link.to().equals(node.id()))
                .mapToInt(link -> rows.getOrDefault(link.from(), 0))
                .average()
                .orElse(0);
    }

    String svg() {
        int wide = 2 * MARGIN + (max(layers) + 1) * (BOX + BETWEEN) - BETWEEN;
        int high = 2 * MARGIN + (max(rows) + 1) * ROW;
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\" viewBox=\"0 0 %d %d\" role=\"img\""
                        + " font-family=\"sans-serif\" font-size=\"11\">%n<title>Trace of %s</title>%n<desc>Things stand from left"
                        + " to right, each right of what it came from. The same as text: bedledger trace.</desc>%n"
                        + "<rect width=\"100%%\" height=\"100%%\" fill=\"#fff\"/>%n",
                wide,
                high,
                wide,
                high,
                escaped(trace.back().node().name())));
        trace.links().forEach(link -> svg.append(line(link)));
        trace.nodes().forEach(node -> svg.append(box(node)));
        return svg.append("</svg>\n").toString();
    }

    private static int max(Map<String, Integer> numbers) {
        return numbers.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    }

    private int left(String id) {
        return MARGIN + layers.getOrDefault(id, 0) * (BOX + BETWEEN);
    }

    private int middle(String id) {
        return MARGIN + rows.getOrDefault(id, 0) * ROW + ROW / 2;
    }

    private String line(Link link) {
        int x1 = left(link.from()) + BOX;
        int x2 = left(link.to());
        int y1 = middle(link.from());
        int y2 = middle(link.to());
        int bend = (x1 + x2) / 2;
        String path = String.format(
                Locale.ROOT,
                "<path d=\"M%d %d C%d %d %d %d %d %d\" fill=\"none\" stroke=\"#555\"/>%n",
                x1,
                y1,
                bend,
                y1,
                bend,
                y2,
                x2,
                y2);
        return link.words().isEmpty()
                ? path
                : path
                        + String.format(
                                Locale.ROOT,
                                "<text x=\"%d\" y=\"%d\" text-anchor=\"end\" fill=\"#333\">%s</text>%n",
                                x2 - 4,
                                y2 - 5,
                                escaped(link.words()));
    }

    private String box(Node node) {
        boolean start = node.equals(trace.back().node());
        List<String> lines = new ArrayList<>(TextTable.wrapped(node.said(), LETTERS));
        if (lines.size() > MOST_LINES) {
            lines = new ArrayList<>(lines.subList(0, MOST_LINES));
            lines.set(MOST_LINES - 1, lines.get(MOST_LINES - 1) + " …");
        }
        int high = lines.size() * LINE + 10;
        int top = middle(node.id()) - high / 2;
        StringBuilder box = new StringBuilder(String.format(
                Locale.ROOT,
                "<g><title>%s</title><rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" rx=\"3\" fill=\"%s\" stroke=\"#000\""
                        + " stroke-width=\"%s\"/>%n",
                escaped(node.said() + GapsCommand.numbers(node.entries())),
                left(node.id()),
                top,
                BOX,
                high,
                start ? "#ececec" : "#fff",
                start ? "2.5" : "1"));
        for (int at = 0; at < lines.size(); at++) {
            box.append(String.format(
                    Locale.ROOT,
                    "<text x=\"%d\" y=\"%d\">%s</text>%n",
                    left(node.id()) + 6,
                    top + 16 + at * LINE,
                    escaped(lines.get(at))));
        }
        return box.append("</g>\n").toString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replaceAll("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\x7F]", "\uFFFD");
    }
}
