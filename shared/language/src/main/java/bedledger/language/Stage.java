package bedledger.language;

/** How far a cover crop had come; its nitrogen depends on it. */
public enum Stage {
    BEFORE_FLOWERING,
    FLOWERING,
    SEED
}
