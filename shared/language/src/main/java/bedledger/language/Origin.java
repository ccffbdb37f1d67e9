package bedledger.language;

/** Where transplants come from. */
public enum Origin {
    OWN,
    BOUGHT
}
