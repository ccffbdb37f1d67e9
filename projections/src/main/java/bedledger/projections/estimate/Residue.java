package bedledger.projections.estimate;

import java.util.List;
import java.util.Optional;

/**
 * What a crop leaves, shoots and roots apart, as far as the tables reach.
 *
 * <p>Masses in kg; carbon, nitrogen and their ratio are of the shoots alone. Empty where a coefficient is missing;
 * {@code missing} names it. Missing is not nothing.
 */
public record Residue(
        Optional<Estimate> shoots,
        Optional<Estimate> shootsFresh,
        Optional<Estimate> roots,
        Optional<Estimate> carbon,
        Optional<Estimate> nitrogen,
        Optional<Estimate> carbonToNitrogen,
        List<String> missing) {
    public Residue {
        missing = List.copyOf(missing);
    }

    /** Whether every part could be worked out. */
    public boolean isComplete() {
        return missing.isEmpty();
    }
}
