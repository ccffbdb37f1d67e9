package bedledger.projections.hours;

import bedledger.language.BedId;
import bedledger.language.Entry;
import java.util.List;
import java.util.Optional;

/**
 * One act as a step of work.
 *
 * @param operation the word it is entered by
 * @param minutes people × minutes; empty unless both are on record
 * @param parts one for each bed, none for work on no bed
 */
public record WorkStep(Entry entry, String operation, Optional<Double> minutes, List<Part> parts) {
    /**
     * A bed's part of a step.
     *
     * @param share of the whole by area
     * @param crop what it was done for: the crop named, else what stood there, else "after" what had stood there
     * @param flip the flip it belongs to, or that it belongs to none
     */
    public record Part(BedId bed, double share, String crop, String flip) {}

    public WorkStep {
        parts = List.copyOf(parts);
    }
}
