package bedledger.projections.returned;

import bedledger.projections.estimate.Estimate;
import java.util.List;
import java.util.Optional;

/**
 * The sum of what is known of several pieces, and of how many it is not known.
 *
 * @param known empty if it is known of none
 * @param pieces how many pieces there are
 * @param unknown of how many it is not known: the sum leaves them out, so it is incomplete
 */
public record Sum(Optional<Estimate> known, int pieces, int unknown) {
    /** The sum of parts, each empty where it is not known. */
    public static Sum of(List<Optional<Estimate>> parts) {
        Optional<Estimate> known =
                together(parts.stream().flatMap(Optional::stream).toList());
        int unknown = (int) parts.stream().filter(Optional::isEmpty).count();
        return new Sum(known, parts.size(), unknown);
    }

    /** Half by half, so that a thousand pieces do not drag a growing list of entries a thousand times. */
    static Optional<Estimate> together(List<Estimate> parts) {
        if (parts.size() < 2) {
            return parts.stream().findFirst();
        }
        int half = parts.size() / 2;
        return together(parts.subList(0, half))
                .flatMap(one -> together(parts.subList(half, parts.size())).map(one::plus));
    }

    public boolean isComplete() {
        return unknown == 0;
    }

    public String words() {
        if (pieces == 0) {
            return "nothing";
        }
        String figure = known.map(Estimate::inWords).orElse("not known");
        return unknown == 0 ? figure : figure + "; incomplete: unknown for " + unknown + " of " + pieces;
    }
}
