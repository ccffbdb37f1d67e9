package bedledger.projections.trace;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * One thing traced both ways.
 *
 * @param back what it came from, as a tree
 * @param forward what became of it, as a tree
 */
public record Trace(Branch back, Branch forward) {
    public static Trace of(Graph graph, Node start) {
        Function<Node, List<Link>> into = node -> {
            List<Link> links = new ArrayList<>(graph.into(node.id()));
            if (node.equals(start)) {
                links.addAll(graph.onBed(node.id()));
            }
            return links;
        };
        return new Trace(
                new Walk(graph, into, Link::from).from(start),
                new Walk(graph, node -> graph.from(node.id()), Link::to).from(start));
    }

    /** Every node once, the start first. */
    public Collection<Node> nodes() {
        Map<String, Node> nodes = new LinkedHashMap<>();
        branches().forEach(branch -> nodes.putIfAbsent(branch.node().id(), branch.node()));
        return List.copyOf(nodes.values());
    }

    /** Every link once, those that lead back first. */
    public Collection<Link> links() {
        Set<Link> links = new LinkedHashSet<>();
        branches().forEach(branch -> branch.by().ifPresent(links::add));
        return List.copyOf(links);
    }

    private List<Branch> branches() {
        List<Branch> all = new ArrayList<>();
        gather(back, all);
        gather(forward, all);
        return all;
    }

    private static void gather(Branch branch, List<Branch> all) {
        all.add(branch);
        branch.branches().forEach(below -> gather(below, all));
    }

    private static final class Walk {
        private final Graph graph;
        private final Function<Node, List<Link>> links;
        private final Function<Link, String> end;
        private final Set<String> seen = new LinkedHashSet<>();

        Walk(Graph graph, Function<Node, List<Link>> links, Function<Link, String> end) {
            this.graph = graph;
            this.links = links;
            this.end = end;
        }

        Branch from(Node start) {
            return branch(start, Optional.empty());
        }

        private Branch branch(Node node, Optional<Link> by) {
            if (!seen.add(node.id())) {
                return new Branch(node, by, true, List.of());
            }
            List<Branch> below = new ArrayList<>();
            for (Link link : links.apply(node)) {
                graph.node(end.apply(link)).ifPresent(other -> below.add(branch(other, Optional.of(link))));
            }
            return new Branch(node, by, false, below);
        }
    }
}
