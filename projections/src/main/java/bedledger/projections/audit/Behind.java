package bedledger.projections.audit;

import bedledger.language.LotId;
import bedledger.projections.trace.Branch;
import bedledger.projections.trace.Graph;
import bedledger.projections.trace.Link;
import bedledger.projections.trace.Node;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What lies behind a thing in the graph of all traces. */
record Behind(Graph graph) {
    /** What came right into a node, of one kind. */
    List<Node> into(String id, Node.Kind kind) {
        return graph.into(id).stream()
                .map(Link::from)
                .flatMap(from -> graph.node(from).stream())
                .filter(node -> node.kind() == kind)
                .distinct()
                .toList();
    }

    /** The seed lots from which a harvested lot was sown, by way of trays too. */
    List<Node> seedLots(LotId harvested) {
        return into(harvested.key(), Node.Kind.PLANTING).stream()
                .flatMap(planting -> seedLots(planting).stream())
                .distinct()
                .toList();
    }

    private List<Node> seedLots(Node planting) {
        return Stream.concat(
                        into(planting.id(), Node.Kind.SEED_LOT).stream(),
                        into(planting.id(), Node.Kind.TRAYS).stream()
                                .flatMap(trays -> into(trays.id(), Node.Kind.SEED_LOT).stream()))
                .toList();
    }

    /** Every node of a tree once, its root first. */
    static List<Node> nodes(Branch root) {
        Map<String, Node> nodes = new LinkedHashMap<>();
        List<Branch> open = new ArrayList<>(List.of(root));
        while (!open.isEmpty()) {
            Branch branch = open.remove(0);
            nodes.putIfAbsent(branch.node().id(), branch.node());
            open.addAll(branch.branches());
        }
        return List.copyOf(nodes.values());
    }
}
