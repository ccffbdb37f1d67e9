package bedledger.projections.soil;

import bedledger.projections.estimate.Estimate;
import java.util.List;
import java.util.Optional;

/**
 * What one published balance makes of the stock if every year is like the mean of those on record.
 *
 * @param equation the paper it is named after
 * @param rate per year: k of AMGv2, r of ICBM (1 at Ultuna), k2 of Hénin and Dupuis
 * @param formed humus formed a year, t C/ha
 * @param after t C/ha at the end of the years asked about
 * @param limit t C/ha in the end
 * @param missing without which nothing can be said, or what had to be assumed
 */
public record SoilBalance(
        String equation,
        Optional<Estimate> rate,
        Optional<Estimate> formed,
        Optional<Estimate> after,
        Optional<Estimate> limit,
        List<String> missing) {
    public SoilBalance {
        missing = List.copyOf(missing);
    }
}
