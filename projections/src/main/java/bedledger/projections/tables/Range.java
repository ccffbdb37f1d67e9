package bedledger.projections.tables;

/** The two ends found across sources; a single number is no range and is refused. */
public record Range(double low, double high) {
    public Range {
        if (!Double.isFinite(low) || !Double.isFinite(high) || low >= high) {
            throw new IllegalArgumentException(
                    "range " + low + " to " + high + ": the low end must lie below the high end");
        }
    }

    /** Whether the value lies within, both ends included. */
    public boolean holds(double value) {
        return low <= value && value <= high;
    }
}
