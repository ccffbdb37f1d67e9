package bedledger.cli.report;

import bedledger.language.LotId;
import bedledger.language.Place;
import bedledger.projections.trace.Branch;
import bedledger.projections.trace.Graph;
import bedledger.projections.trace.Link;
import bedledger.projections.trace.Node;
import bedledger.projections.trace.Trace;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What became of a seed lot: the harvest lots grown from it, and where each of them went, a line for each lot. */
final class Forward {
    private final Asked asked;
    private final Graph graph;
    private final Map<String, LotId> lots = new HashMap<>();

    Forward(Asked asked, Graph graph) {
        this.asked = asked;
        this.graph = graph;
        asked.farm().lots().forEach(lot -> lots.put(lot.key(), lot));
    }

    List<Phrase> of(Place place) {
        List<Phrase> lines = new ArrayList<>();
        graph.node(place.key()).ifPresent(node -> gather(Trace.of(graph, node).forward(), lines));
        return lines;
    }

    private void gather(Branch branch, List<Phrase> lines) {
        LotId lot = lots.get(branch.node().id());
        if (lot != null && !branch.again()) {
            lines.add(line(lot, branch.node()));
        }
        branch.branches().forEach(below -> gather(below, lines));
    }

    private Phrase line(LotId lot, Node node) {
        List<Phrase> outlets = graph.from(node.id()).stream().map(this::outlet).toList();
        return asked.links()
                .place(lot)
                .plus(outlets.isEmpty() ? ": no outlet recorded" : ": ")
                .plus(Phrase.joined(outlets, "; "));
    }

    private Phrase outlet(Link link) {
        Node to = graph.node(link.to()).orElseThrow();
        String where = to.kind() == Node.Kind.STORE ? to.said() : to.name();
        Phrase said = Phrase.of(link.words().isEmpty() ? where : link.words() + ", " + where);
        return link.entries().isEmpty()
                ? said
                : said.plus(" ").plus(asked.links().entries(link.entries()));
    }
}
