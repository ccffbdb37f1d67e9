package bedledger.projections.breakdown;

/** What a bed is to be ready for. */
public enum Use {
    FINE_SEED("fine seed"),
    LARGE_SEED("large seed"),
    TRANSPLANTS("transplants");

    private final String words;

    Use(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The share of the bed that residue may cover at most, 0 to 1 (judgement). */
    public double cover() {
        return Constants.get("cover for " + words).value();
    }
}
