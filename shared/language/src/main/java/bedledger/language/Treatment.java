package bedledger.language;

/** How seed was treated. */
public enum Treatment {
    UNTREATED,
    LISTED_TREATMENT,
    OTHER_TREATMENT
}
