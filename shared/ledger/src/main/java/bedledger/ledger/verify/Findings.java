package bedledger.ledger.verify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects disagreements, and keeps those that concern the earliest entries when there are too many. */
final class Findings {

    /** By the entry at which it is certain that something is wrong, what is known to the entry before a range around it. */
    private static final Comparator<Disagreement> BY_ENTRY = Comparator.comparing(Disagreement::concernsNoEntry)
            .thenComparingLong(Disagreement::last)
            .thenComparing(Comparator.comparingLong(Disagreement::first).reversed());

    private final List<Disagreement> kept = new ArrayList<>();
    private long notKept;

    void add(Disagreement disagreement) {
        kept.add(disagreement);
        if (kept.size() > 2 * Verdict.MOST_LISTED) {
            trim();
        }
    }

    private void trim() {
        kept.sort(BY_ENTRY);
        while (kept.size() > Verdict.MOST_LISTED) {
            kept.remove(kept.size() - 1);
            notKept++;
        }
    }

    List<Disagreement> inOrder() {
        trim();
        return List.copyOf(kept);
    }

    long notListed() {
        return notKept;
    }
}
