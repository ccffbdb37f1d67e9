package bedledger.projections.phosphorus;

import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Sum;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/**
 * Phosphorus of one bed in one season, kg P.
 *
 * @param broughtIn in compost, manure, listed materials and plant mulches
 * @param sold in produce that left the farm
 * @param missing what is not known on either side
 * @param entries behind it
 */
public record PhosphorusBalance(
        BedId bed,
        String season,
        double squareMetres,
        Sum broughtIn,
        Sum sold,
        List<String> missing,
        SortedSet<Long> entries) {
    public PhosphorusBalance {
        missing = List.copyOf(missing);
    }

    public boolean isComplete() {
        return broughtIn.isComplete() && sold.isComplete();
    }

    /** What came in less what was sold; empty unless both sides are known whole. */
    public Optional<Estimate> surplus() {
        if (!isComplete()) {
            return Optional.empty();
        }
        Estimate nothing = Estimate.exact(0, "kg");
        return Optional.of(broughtIn.known().orElse(nothing).minus(sold.known().orElse(nothing)));
    }
}
