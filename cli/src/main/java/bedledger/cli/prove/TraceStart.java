package bedledger.cli.prove;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.language.Words;
import bedledger.projections.trace.Graph;
import bedledger.projections.trace.Node;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Finds the thing to be traced by what was typed. */
final class TraceStart {
    private static final Map<Node.Kind, String> KINDS = Map.of(
            Node.Kind.FIELD, "field",
            Node.Kind.BED, "bed",
            Node.Kind.SEED_LOT, "seed-lot",
            Node.Kind.MATERIAL, "material",
            Node.Kind.PILE, "pile",
            Node.Kind.TRAYS, "trays",
            Node.Kind.LOT, "lot",
            Node.Kind.SALE, "invoice");

    static Node find(Graph graph, List<String> typed, String known) {
        String name = typed.get(typed.size() - 1).strip();
        List<Node> found = graph.nodes().stream()
                .filter(node -> KINDS.containsKey(node.kind()))
                .filter(node -> isMeant(node, typed))
                .toList();
        if (found.size() == 1) {
            return found.get(0);
        }
        if (found.isEmpty()) {
            throw new Failure(
                    Exit.REFUSED,
                    "There is nothing called '" + String.join(" ", typed) + "' to trace" + known + "."
                            + near(graph, name));
        }
        throw new Failure(
                Exit.REFUSED,
                "'" + name + "' is the name of several things. Write one of: "
                        + found.stream()
                                .map(node -> "trace " + kind(node) + " " + typed(own(node)))
                                .collect(Collectors.joining(", "))
                        + ".");
    }

    /** However many of the words say its kind, as in "seed lot CA-7", and however many its name, as in "feather meal". */
    private static boolean isMeant(Node node, List<String> typed) {
        for (int words = 0; words < typed.size(); words++) {
            String name = String.join(" ", typed.subList(words, typed.size())).strip();
            if (isKind(node, typed.subList(0, words)) && isCalled(node, name)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isKind(Node node, List<String> words) {
        String said = String.join("-", words).strip().toLowerCase(Locale.ROOT);
        return said.isEmpty() || kind(node).equals(said) || kind(node).startsWith(said + "-");
    }

    static String kind(Node node) {
        return KINDS.getOrDefault(node.kind(), Words.of(node.kind()));
    }

    /** The name behind the colon of its id. */
    private static String own(Node node) {
        return node.id().substring(node.id().indexOf(':') + 1);
    }

    private static boolean isCalled(Node node, String name) {
        String own = own(node);
        boolean withoutYear = node.kind() == Node.Kind.LOT
                && own.substring(own.indexOf('/') + 1).equalsIgnoreCase(name);
        return own.equalsIgnoreCase(name) || withoutYear;
    }

    private static String near(Graph graph, String name) {
        List<String> names = graph.nodes().stream()
                .filter(node -> KINDS.containsKey(node.kind()))
                .map(TraceStart::own)
                .toList();
        return Words.nearest(name, names)
                .map(one -> " Did you mean '" + one + "'?")
                .orElse(" Invoices, lots, seed lots, trays," + " piles, materials, beds and fields can be traced.");
    }

    private static String typed(String name) {
        return name.contains(" ") ? '"' + name + '"' : name;
    }

    private TraceStart() {}
}
