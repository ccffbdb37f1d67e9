package bedledger.projections.breakdown;

import bedledger.projections.estimate.Estimate;
import bedledger.projections.weather.Coverage;
import java.time.LocalDate;
import java.util.Optional;

/**
 * When a bed is ready for a use, by the model.
 *
 * @param cover the share of the bed that may be covered
 * @param earliest at the low end of the range
 * @param likely empty if it is not reached within the days looked ahead
 * @param latest at the high end; empty if it is not reached within the days looked ahead
 * @param held whether it is the wait after worked-in green matter that decides, not the cover
 * @param days from the day the residue was left on the bed, with the causes of doubt
 * @param coverage what weather the days up to the likely date rest on
 */
public record ReadyDate(
        Use use,
        double cover,
        LocalDate earliest,
        Optional<LocalDate> likely,
        Optional<LocalDate> latest,
        boolean held,
        Estimate days,
        Coverage coverage) {
    /** Such as "2025-08-20 (2025-08-02 to 2025-10-11)". */
    public String words() {
        String open = "not within " + Constants.count("horizon") / 365 + " years";
        return likely.map(LocalDate::toString).orElse(open) + " (" + earliest + " to "
                + latest.map(LocalDate::toString).orElse(open) + ")";
    }
}
