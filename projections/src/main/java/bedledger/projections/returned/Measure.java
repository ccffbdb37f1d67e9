package bedledger.projections.returned;

/** What is counted of a piece, all in kg. */
public enum Measure {
    FRESH("fresh"),
    DRY("dry"),
    CARBON("carbon"),
    NITROGEN("nitrogen"),
    PHOSPHORUS("phosphorus");

    private final String words;

    Measure(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
