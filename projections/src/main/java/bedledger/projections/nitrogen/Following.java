package bedledger.projections.nitrogen;

import bedledger.language.CropName;
import bedledger.projections.estimate.Estimate;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The crop planted next on the bed, and what is set free before and while it stands.
 *
 * @param cover whether it is a cover crop, which catches but is not sold
 * @param until its end, or the day asked about while it stands
 * @param ended whether it had ended
 * @param before kg N from the return to its planting; there for it unless it was lost on the way
 * @param during kg N while it stands
 */
public record Following(
        CropName crop,
        boolean cover,
        LocalDate planted,
        LocalDate until,
        boolean ended,
        Optional<Estimate> before,
        Optional<Estimate> during) {
    /** Empty where it is not known what is set free while it stands. */
    public Optional<Verdict> verdict() {
        return during.map(Verdict::of);
    }
}
