package bedledger.projections.findings;

/** Whether the edible part of a crop touches the soil as the crop is usually grown. */
public enum Contact {
    TOUCHES_SOIL,
    CLEAR,
    /** On staking, mulch, or how it is cut. */
    DEPENDS,
    UNKNOWN;

    boolean uncertain() {
        return this == DEPENDS || this == UNKNOWN;
    }
}
