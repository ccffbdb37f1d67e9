package bedledger.projections.returned;

/** How a figure was come by. */
public enum Evidence {
    /** Frames cut before or at flailing. */
    QUADRATS("quadrats"),
    /** The weighed harvest through the harvest index. */
    FROM_YIELD("from yield"),
    /** A guess from a typical yield of the bed's area. */
    TYPICAL("typical"),
    /** A quantity as written down, through its composition. */
    RECORDED_QUANTITY("recorded quantity"),
    /** Nothing to estimate from. */
    NONE("no evidence");

    private final String words;

    Evidence(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Whether the mass itself was measured or written down, not inferred from a harvest. */
    public boolean isMeasured() {
        return this == QUADRATS || this == RECORDED_QUANTITY;
    }
}
