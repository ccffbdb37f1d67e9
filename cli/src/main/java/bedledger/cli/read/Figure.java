package bedledger.cli.read;

import bedledger.projections.estimate.Estimate;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Writes figures for people: three significant digits, no exponent. */
public final class Figure {
    public static String short3(double value) {
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(3, RoundingMode.HALF_UP));
        return rounded.scale() < 0 ? rounded.setScale(0).toPlainString() : rounded.toPlainString();
    }

    /** "25.9 (8.79–25.9)", in units of so many kg; with a dagger where some coefficient in it has no known range. */
    static String band(Estimate estimate, double kilograms) {
        String best = short3(estimate.best() / kilograms);
        String dagger = estimate.rangeUnknownFor().isEmpty() ? "" : "†";
        return estimate.hasBand()
                ? best + " (" + short3(estimate.low() / kilograms) + "–" + short3(estimate.high() / kilograms) + ")"
                        + dagger
                : best + dagger;
    }

    private Figure() {}
}
