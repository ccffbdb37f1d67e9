package bedledger.cli.report;

import bedledger.language.Entry;
import bedledger.language.Place;
import bedledger.language.Selling;
import bedledger.language.SoldAs;
import bedledger.projections.trace.Branch;
import bedledger.projections.trace.Graph;
import bedledger.projections.trace.Link;
import bedledger.projections.trace.Node;
import bedledger.projections.trace.Trace;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The newest sales, those as organic before others, each traced back to lots, beds, seed, inputs and land. */
final class TracePart {
    /** So many an inspector is likely to try; every other sale, lot or seed lot can be asked for. */
    private static final int SALES = 3;

    private final Asked asked;
    private final Graph graph;
    private final Map<String, Place> places = new HashMap<>();

    TracePart(Asked asked, Graph graph) {
        this.asked = asked;
        this.graph = graph;
        asked.links().shown().forEach(place -> places.put(place.key(), place));
    }

    /** A sale, and what it came from. */
    record Sale(String anchor, String name, Phrase said, List<Leaf> branches) {
        boolean hasBranches() {
            return !branches.isEmpty();
        }
    }

    /** One step back, and those behind it. */
    record Leaf(Phrase said, List<Leaf> branches) {
        Leaf {
            branches = List.copyOf(branches);
        }

        boolean hasBranches() {
            return !branches.isEmpty();
        }
    }

    boolean isAny() {
        return graph.nodes().stream().anyMatch(TracePart::isSale);
    }

    private static boolean isSale(Node node) {
        return node.kind() == Node.Kind.SALE && !node.entries().isEmpty();
    }

    List<Sale> newest() {
        List<Node> sales = graph.nodes().stream()
                .filter(TracePart::isSale)
                .sorted(Comparator.comparing(this::isOrganic)
                        .thenComparing(this::day)
                        .thenComparing(TracePart::last)
                        .reversed())
                .limit(SALES)
                .toList();
        List<Sale> traced = new ArrayList<>();
        for (Node sale : sales) {
            Trace trace = Trace.of(graph, sale);
            traced.add(new Sale(
                    "trace-" + last(sale),
                    sale.name(),
                    asked.links()
                            .linked(upper(sale.words()) + ". ")
                            .plus(asked.links().entries(sale.entries())),
                    leaves(trace.back().branches())));
        }
        return traced;
    }

    /** What is sold as organic is asked about first. */
    private boolean isOrganic(Node sale) {
        return entry(sale).fact() instanceof Selling.Sold sold && sold.as() == SoldAs.ORGANIC;
    }

    private LocalDate day(Node sale) {
        return entry(sale).head().doneOn();
    }

    private Entry entry(Node sale) {
        return asked.farm().written().get((int) last(sale) - 1);
    }

    private static long last(Node sale) {
        return sale.entries().get(sale.entries().size() - 1);
    }

    private List<Leaf> leaves(List<Branch> branches) {
        return branches.stream()
                .map(branch -> new Leaf(said(branch), leaves(branch.branches())))
                .toList();
    }

    private Phrase said(Branch branch) {
        Node node = branch.node();
        Place place = places.get(node.id());
        Phrase said = place == null ? Phrase.of(node.name()) : Phrase.link(node.name(), Links.anchor(place));
        String how = branch.by().map(Link::words).orElse("");
        said = how.isEmpty() ? said : said.plus(", ").plus(asked.links().linked(how));
        if (branch.again()) {
            return said.plus(" (see above)");
        }
        said = node.words().isEmpty()
                ? said
                : said.plus(": ").plus(asked.links().linked(node.words()));
        List<Long> entries = new ArrayList<>(node.entries());
        branch.by().ifPresent(link -> entries.addAll(link.entries()));
        List<Long> behind = entries.stream().distinct().sorted().toList();
        return behind.isEmpty() ? said : said.plus(" ").plus(asked.links().entries(behind));
    }

    private static String upper(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }
}
