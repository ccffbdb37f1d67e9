package bedledger.language;

/** How a compost pile is made, in the words of 7 CFR 205.203(c)(2) where it has them. */
public enum PileMethod {
    WINDROW,
    STATIC_AERATED,
    IN_VESSEL,
    TURNED_OTHERWISE,
    UNMANAGED
}
