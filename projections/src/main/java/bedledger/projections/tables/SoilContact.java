package bedledger.projections.tables;

/** Whether the edible part touches the soil as the crop is usually grown; common practice, no source. */
public enum SoilContact {
    YES("yes"),
    NO("no"),
    /** On staking, trellis, mulch, or how it is cut: ask. */
    DEPENDS("depends"),
    /** A cover crop. */
    NOT_EATEN("not eaten");

    private final String words;

    SoilContact(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    static SoilContact parse(String text) {
        for (SoilContact each : values()) {
            if (each.words.equals(text)) {
                return each;
            }
        }
        throw new IllegalArgumentException("soil contact '" + text + "' is none of yes, no, depends, not eaten");
    }
}
