package bedledger.language;

/** What the invoice claims. */
public enum SoldAs {
    ORGANIC,
    IN_TRANSITION,
    NOT_ORGANIC
}
