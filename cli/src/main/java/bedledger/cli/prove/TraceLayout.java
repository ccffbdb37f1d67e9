package bedledger.cli.prove;

import bedledger.projections.trace.Link;
import bedledger.projections.trace.Node;
import bedledger.projections.trace.Trace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Where each thing of a trace stands: in a column right of all it came from, and within its column at the mean height of what leads to it.
 * A link over several columns keeps a row of its own in those between, so that no box lies on it.
 */
final class TraceLayout {
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    private final Map<String, Integer> rows = new HashMap<>();
    private final Map<Link, List<String>> ways = new LinkedHashMap<>();

    TraceLayout(Trace trace) {
        trace.nodes().forEach(node -> columns.put(node.id(), 0));
        columns(trace);
        trace.links().forEach(link -> ways.put(link, way(link)));
        rows();
    }

    /** The longest way from any source; no more rounds than nodes, should links make a ring. */
    private void columns(Trace trace) {
        boolean moved = true;
        for (int round = 0; moved && round < columns.size(); round++) {
            moved = false;
            for (Link link : trace.links()) {
                if (column(link.to()) <= column(link.from())) {
                    columns.put(link.to(), column(link.from()) + 1);
                    moved = true;
                }
            }
        }
    }

    /** The stops of a link: both ends, and one in each column between. */
    private List<String> way(Link link) {
        List<String> stops = new ArrayList<>(List.of(link.from()));
        for (int between = column(link.from()) + 1; between < column(link.to()); between++) {
            String stop = "way " + ways.size() + " at " + between;
            columns.put(stop, between);
            stops.add(stop);
        }
        stops.add(link.to());
        return stops;
    }

    private void rows() {
        Map<Integer, List<String>> byColumn = new TreeMap<>();
        columns.forEach((id, column) ->
                byColumn.computeIfAbsent(column, c -> new ArrayList<>()).add(id));
        byColumn.values().forEach(column -> {
            Map<String, Double> wanted = new HashMap<>();
            column.forEach(id -> wanted.put(id, height(id)));
            column.sort(Comparator.comparing(id -> wanted.getOrDefault(id, 0.0)));
            for (int row = 0; row < column.size(); row++) {
                rows.put(column.get(row), row);
            }
        });
    }

    private double height(String id) {
        return ways.values().stream()
                .filter(stops -> stops.indexOf(id) > 0)
                .mapToInt(stops -> row(stops.get(stops.indexOf(id) - 1)))
                .average()
                .orElse(0);
    }

    int column(String id) {
        return columns.getOrDefault(id, 0);
    }

    int row(String id) {
        return rows.getOrDefault(id, 0);
    }

    int columns() {
        return 1 + columns.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    }

    int rowsNeeded() {
        return 1 + rows.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    }

    /** The stops of each link, both ends included. */
    Map<Link, List<String>> ways() {
        return ways;
    }

    /** Which of the links at one side of a thing this is, counted from the middle: −0.5 and 0.5 for two. */
    double place(Link link, Node node, boolean incoming) {
        List<Link> there = ways.keySet().stream()
                .filter(other -> (incoming ? other.to() : other.from()).equals(node.id()))
                .sorted(Comparator.comparing(other -> beside(other, incoming)))
                .toList();
        return there.indexOf(link) - (there.size() - 1) / 2.0;
    }

    private int beside(Link link, boolean incoming) {
        List<String> stops = ways.getOrDefault(link, List.of(link.from(), link.to()));
        return row(stops.get(incoming ? stops.size() - 2 : 1));
    }
}
