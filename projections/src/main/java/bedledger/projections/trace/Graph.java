package bedledger.projections.trace;

import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Selling;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every thing that can be traced in a book, and what went from which to which; the same in whatever order entries come in. */
public final class Graph {
    private final Map<String, Node> nodes = new LinkedHashMap<>();
    private final Map<String, List<Link>> from = new LinkedHashMap<>();
    private final Map<String, List<Link>> to = new LinkedHashMap<>();
    private final Map<String, List<Link>> onBeds = new LinkedHashMap<>();

    Graph() {}

    /** By the end of a day. */
    public static Graph of(Farm farm, LocalDate day) {
        Graph graph = new Graph();
        Book book = new Book(farm, day);
        LandLinks.into(graph, book);
        RaisingLinks.into(graph, book);
        LotLinks.into(graph, book);
        InputLinks.into(graph, book);
        OutletLinks.into(graph, book);
        return graph;
    }

    /** The id of the node of a sale: of its invoice, or of the sale itself where no invoice is recorded. */
    public static String sale(Entry entry) {
        return OutletLinks.invoice(entry, (Selling.Sold) entry.fact());
    }

    void add(Node node) {
        nodes.putIfAbsent(node.id(), node);
    }

    /** Adds a link between nodes that are there; the same link twice is one. */
    void link(String source, String target, String words, List<Long> entries) {
        Link link = new Link(source, target, words, entries);
        List<Link> known = from.computeIfAbsent(source, id -> new ArrayList<>());
        if (nodes.containsKey(source) && nodes.containsKey(target) && !known.contains(link)) {
            known.add(link);
            to.computeIfAbsent(target, id -> new ArrayList<>()).add(link);
        }
    }

    /** Says that an input was put on a bed; it leads no further, for only what was picked afterwards has to do with it. */
    void touch(String input, String bed, List<Long> entries) {
        onBeds.computeIfAbsent(bed, id -> new ArrayList<>()).add(new Link(input, bed, "", entries));
    }

    /** What was put on a bed, at any time. */
    public List<Link> onBed(String id) {
        return List.copyOf(onBeds.getOrDefault(id, List.of()));
    }

    public Optional<Node> node(String id) {
        return Optional.ofNullable(nodes.get(id));
    }

    public Collection<Node> nodes() {
        return List.copyOf(nodes.values());
    }

    /** What went out of a node. */
    public List<Link> from(String id) {
        return List.copyOf(from.getOrDefault(id, List.of()));
    }

    /** What came into it. */
    public List<Link> into(String id) {
        return List.copyOf(to.getOrDefault(id, List.of()));
    }
}
