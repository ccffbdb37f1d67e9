package bedledger.language;

/** The state in which a harvest was weighed. */
public enum Weighed {
    WASHED,
    DIRTY,
    TOPPED
}
