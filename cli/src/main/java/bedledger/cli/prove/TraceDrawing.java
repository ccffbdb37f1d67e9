package bedledger.cli.prove;

import bedledger.cli.read.TextTable;
import bedledger.projections.trace.Link;
import bedledger.projections.trace.Node;
import bedledger.projections.trace.Trace;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A trace drawn from left to right, as SVG: each thing stands right of all it came from. */
final class TraceDrawing {
    private static final int BOX = 210;
    private static final int BETWEEN = 120;
    private static final int LINE = 14;
    private static final int LETTERS = 36;
    private static final int MOST_LINES = 4;
    private static final int ROW = MOST_LINES * LINE + 30;
    private static final int MARGIN = 20;

    private static final int APART = 14;

    private final Trace trace;
    private final TraceLayout layout;
    private final Map<String, Node> nodes = new HashMap<>();

    TraceDrawing(Trace trace) {
        this.trace = trace;
        this.layout = new TraceLayout(trace);
        trace.nodes().forEach(node -> nodes.put(node.id(), node));
    }

    String svg() {
        int wide = 2 * MARGIN + layout.columns() * (BOX + BETWEEN) - BETWEEN;
        int high = 2 * MARGIN + layout.rowsNeeded() * ROW;
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
        layout.ways().forEach((link, stops) -> svg.append(line(link, stops)));
        layout.ways().keySet().stream()
                .filter(link -> !link.words().isEmpty())
                .forEach(link -> svg.append(amount(link)));
        trace.nodes().forEach(node -> svg.append(box(node)));
        return svg.append("</svg>\n").toString();
    }

    private int left(String id) {
        return MARGIN + layout.column(id) * (BOX + BETWEEN);
    }

    private int middle(String id) {
        return MARGIN + layout.row(id) * ROW + ROW / 2;
    }

    private String line(Link link, List<String> stops) {
        StringBuilder path = new StringBuilder();
        int x = left(link.from()) + BOX;
        int y = height(link, link.from(), false);
        path.append("M").append(x).append(' ').append(y);
        for (int at = 1; at < stops.size(); at++) {
            boolean end = at == stops.size() - 1;
            int toX = left(stops.get(at));
            int toY = end ? height(link, link.to(), true) : middle(stops.get(at));
            int bend = (x + toX) / 2;
            path.append(String.format(Locale.ROOT, " C%d %d %d %d %d %d", bend, y, bend, toY, toX, toY));
            x = end ? toX : toX + BOX;
            y = toY;
            path.append(end ? "" : " H" + x);
        }
        return "<path d=\"" + path + "\" fill=\"none\" stroke=\"#555\"/>\n";
    }

    /** How much went along a link, where it arrives. */
    private String amount(Link link) {
        return String.format(
                Locale.ROOT,
                "<text x=\"%d\" y=\"%d\" text-anchor=\"end\" fill=\"#333\" stroke=\"#fff\" stroke-width=\"3\""
                        + " paint-order=\"stroke\">%s</text>%n",
                left(link.to()) - 4,
                height(link, link.to(), true) - 3,
                escaped(link.words()));
    }

    /** Where a link meets a box: links at one side stand apart, as far as the box is high. */
    private int height(Link link, String id, boolean incoming) {
        Node node = nodes.get(id);
        if (node == null) {
            return middle(id);
        }
        double offset = layout.place(link, node, incoming) * APART;
        double most = (boxHeight(node) - 6) / 2.0;
        return middle(id) + (int) Math.max(-most, Math.min(most, offset));
    }

    private int boxHeight(Node node) {
        int in = 0;
        int out = 0;
        for (Link link : trace.links()) {
            in += link.to().equals(node.id()) ? 1 : 0;
            out += link.from().equals(node.id()) ? 1 : 0;
        }
        int wanted = Math.max(words(node).size() * LINE + 10, Math.max(in, out) * APART);
        return Math.min(wanted, ROW - 10);
    }

    private static List<String> words(Node node) {
        List<String> lines = TextTable.wrapped(node.said(), LETTERS);
        if (lines.size() <= MOST_LINES) {
            return lines;
        }
        List<String> cut = new ArrayList<>(lines.subList(0, MOST_LINES));
        cut.set(MOST_LINES - 1, cut.get(MOST_LINES - 1) + " …");
        return cut;
    }

    private String box(Node node) {
        boolean start = node.equals(trace.back().node());
        List<String> lines = words(node);
        int high = boxHeight(node);
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
