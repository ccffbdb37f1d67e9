package bedledger.projections.soil;

/**
 * One sampled layer.
 *
 * @param from top, cm
 * @param to bottom, cm
 * @param bulkDensity of the soil between the stones, g/cm³
 * @param carbon % of the fine earth
 * @param stones share of the volume
 */
public record Layer(double from, double to, double bulkDensity, double carbon, double stones) {
    // 1 g/cm³ over 1 cm of a hectare is 100 t.
    private static final double TONNES_PER_CENTIMETRE = 100;

    public Layer {
        if (!(to > from) || from < 0 || !(bulkDensity > 0) || !(carbon >= 0) || !(stones >= 0 && stones < 1)) {
            throw new IllegalArgumentException("a layer from " + from + " to " + to + " cm of " + bulkDensity
                    + " g/cm³, " + carbon + " % C, " + stones + " stones cannot be");
        }
    }

    /** Fine earth, t/ha. */
    public double mass() {
        return bulkDensity * (to - from) * TONNES_PER_CENTIMETRE * (1 - stones);
    }

    /** Organic carbon, t/ha: with % × g/cm³ × cm the factor is exactly 1. */
    public double stock() {
        return carbon * bulkDensity * (to - from) * (1 - stones);
    }
}
