package bedledger.projections.audit;

import java.util.List;

/** A thing that can be picked, and all that speaks for it. */
public record Candidate(Thing thing, List<Reason> reasons) {
    public Candidate {
        reasons = List.copyOf(reasons);
    }

    /** The sum of the weights. */
    public double weight() {
        return reasons.stream().mapToDouble(Reason::weight).sum();
    }
}
