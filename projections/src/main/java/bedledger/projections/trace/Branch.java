package bedledger.projections.trace;

import java.util.List;
import java.util.Optional;

/**
 * A node of a trace laid out as a tree.
 *
 * @param by the link that leads to it; empty at the root
 * @param again whether it stands further up, with all that is said of it and follows from it
 */
public record Branch(Node node, Optional<Link> by, boolean again, List<Branch> branches) {
    public Branch {
        branches = List.copyOf(branches);
    }
}
