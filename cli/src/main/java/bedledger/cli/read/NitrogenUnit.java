package bedledger.cli.read;

import bedledger.projections.estimate.Estimate;
import java.util.Optional;

/** The unit of nitrogen on a page: grams or ounces where there is little of it. */
record NitrogenUnit(String name, double kilograms) {
    private static final double KILOGRAMS_IN_A_POUND = 0.45359237;
    private static final double OUNCES_IN_A_POUND = 16;
    /** Below it grams read better than kilograms. */
    private static final double LITTLE_KILOGRAMS = 5;

    static NitrogenUnit of(boolean pounds, Optional<Estimate> all) {
        boolean little = all.map(Estimate::best).orElse(0.0) < LITTLE_KILOGRAMS;
        double parts = little ? pounds ? OUNCES_IN_A_POUND : 1000 : 1;
        return new NitrogenUnit(
                pounds ? (little ? "oz" : "lb") : (little ? "g" : "kg"), (pounds ? KILOGRAMS_IN_A_POUND : 1) / parts);
    }
}
