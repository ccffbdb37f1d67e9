package bedledger.projections.nitrogen;

import bedledger.projections.tables.Parameters;

/**
 * How warmth and water hurry decay, as in the STICS v8 residue module (Nicolardot et al. 2001; Brisson et al. 2009).
 *
 * <p>A day at 15 °C and field capacity counts as one normalised day.
 */
public final class Responses {
    private final double reference;
    private final double most;
    private final double residueSpan;
    private final double residueSlope;
    private final double humusSpan;
    private final double humusSlope;
    private final double dryEnd;
    private final double wetEnd;

    public Responses(Parameters table) {
        reference = table.value("warmth", "reference");
        most = table.value("warmth", "most");
        residueSpan = table.value("warmth", "residue span");
        residueSlope = table.value("warmth", "residue slope");
        humusSpan = table.value("warmth", "humus span");
        humusSlope = table.value("warmth", "humus slope");
        dryEnd = table.value("water", "dry end");
        wetEnd = table.value("water", "wet end");
    }

    /** Of residue, by the mean temperature in °C; 0 in frost, and no more than at 35 °C, for the curve has no upper optimum. */
    public double residueWarmth(double celsius) {
        return warmth(celsius, residueSpan, residueSlope);
    }

    /** Of humus, by the mean temperature in °C. */
    public double humusWarmth(double celsius) {
        return warmth(celsius, humusSpan, humusSlope);
    }

    private double warmth(double celsius, double span, double slope) {
        if (celsius <= 0) {
            return 0;
        }
        double counted = Math.min(celsius, most);
        return span / (1 + (span - 1) * Math.exp(-slope * (counted - reference)));
    }

    /** By water content and field capacity, both in the same unit. */
    public double water(double content, double fieldCapacity) {
        double factor = (content - dryEnd * fieldCapacity) / ((wetEnd - dryEnd) * fieldCapacity);
        return Math.max(0, Math.min(1, factor));
    }
}
