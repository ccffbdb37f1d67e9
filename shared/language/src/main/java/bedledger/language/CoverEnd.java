package bedledger.language;

/** How a cover crop came to its end. */
public enum CoverEnd {
    MOWN,
    TILLED,
    CRIMPED,
    TARPED,
    WINTER_KILLED,
    GRAZED,
    HAULED_OFF
}
