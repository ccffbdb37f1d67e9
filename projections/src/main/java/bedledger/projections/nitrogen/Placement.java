package bedledger.projections.nitrogen;

/** Where a residue decays. */
public enum Placement {
    ON_TOP("on top"),
    WORKED_IN("worked in");

    private final String words;

    Placement(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
