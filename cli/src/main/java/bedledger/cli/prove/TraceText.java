package bedledger.cli.prove;

import bedledger.cli.read.TextTable;
import bedledger.projections.trace.Branch;
import bedledger.projections.trace.Link;
import bedledger.projections.trace.Node;
import bedledger.projections.trace.Trace;
import java.io.PrintStream;
import java.time.LocalDate;
import java.util.List;

/** A trace as two trees, at most 80 columns wide. */
final class TraceText {
    private static final int WIDTH = 80;
    private final PrintStream out;

    TraceText(PrintStream out) {
        this.out = out;
    }

    void print(Trace trace, LocalDate day) {
        Node start = trace.back().node();
        lines("", "", start.said() + GapsCommand.numbers(start.entries()));
        part("What it came from, as the book stands on " + day, trace.back(), "Nothing on record leads further back.");
        part("What became of it", trace.forward(), "Nothing on record leads further on.");
    }

    private void part(String title, Branch root, String none) {
        out.println();
        out.println(title);
        if (root.branches().isEmpty()) {
            out.println("  " + none);
        }
        below(root.branches(), "");
    }

    private void below(List<Branch> branches, String indent) {
        for (int at = 0; at < branches.size(); at++) {
            boolean last = at == branches.size() - 1;
            Branch branch = branches.get(at);
            String onward = indent + (last ? "   " : "│  ");
            lines(indent + (last ? "└─ " : "├─ "), onward + (branch.branches().isEmpty() ? "  " : "│ "), words(branch));
            below(branch.branches(), onward);
        }
    }

    private static String words(Branch branch) {
        Node node = branch.node();
        String how = branch.by().map(Link::words).orElse("");
        String name = how.isEmpty() ? node.name() : node.name() + ", " + how;
        if (branch.again()) {
            return name + " (see above)";
        }
        String numbers =
                GapsCommand.numbers(TraceCommand.entries(node, branch.by().orElse(null)));
        return name + (node.words().isEmpty() ? "" : ": " + node.words()) + numbers;
    }

    private void lines(String first, String further, String text) {
        List<String> lines = TextTable.wrapped(text, WIDTH - first.length() - 2);
        for (int at = 0; at < lines.size(); at++) {
            out.println(((at == 0 ? first : further) + lines.get(at)).stripTrailing());
        }
    }

    static boolean holds(Branch branch, Node node) {
        return branch.node().equals(node) || branch.branches().stream().anyMatch(below -> holds(below, node));
    }
}
