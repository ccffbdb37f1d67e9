package bedledger.projections.tables;

/**
 * The nitrogen that a whole crop needs so as not to be held back, by its dry mass: AHDB RB209 (2021), Section 6, p. 41.
 *
 * <p>A cross-check only: %N of dry = a × (1 + b × exp(-decay × W)), W in t dry per ha.
 */
public record CriticalNitrogen(String crop, double a, double b, double decay, Citation citation) {
    /** % of dry. */
    public double percent(double dryTonnesPerHectare) {
        return a * (1 + b * Math.exp(-decay * dryTonnesPerHectare));
    }
}
