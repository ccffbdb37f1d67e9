package bedledger.projections.estimate;

/** The dry share of a sample, weighed before and after drying (oven or microwave, until the weight holds). */
public record DryShare(double value) {
    public DryShare {
        if (!(value > 0 && value <= 1)) {
            throw new IllegalArgumentException("A dry share was refused: entered " + value
                    + ". It is kg dry per kg fresh, above 0 and at most 1.");
        }
    }

    /** From two weighings in one unit. */
    public static DryShare weighed(double fresh, double dry) {
        return new DryShare(dry / fresh);
    }
}
