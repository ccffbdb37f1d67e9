package bedledger.projections.estimate;

/** A word about a sample that does not refuse it. */
public record SampleWarning(Kind kind, String text) {
    /** What is unusual about the sample. */
    public enum Kind {
        FEW_QUADRATS,
        UNEVEN,
        DRY_SHARE_OUTSIDE_TABLE,
        DRY_SHARE_FROM_TABLE
    }
}
