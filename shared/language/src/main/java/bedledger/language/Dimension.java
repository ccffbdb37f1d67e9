package bedledger.language;

/** What a unit measures. */
public enum Dimension {
    MASS("a weight", "38.5kg, 85lb"),
    LENGTH("a length", "30m, 100ft"),
    AREA("an area", "0.25m2, 250ft2, 0.03ha"),
    VOLUME("a volume", "2m3, 5gal, 12L"),
    COUNT("a count", "120heads, 40bunches"),
    TEMPERATURE("a temperature", "58C, 136F"),
    SHARE("a share", "38%"),
    TIME("a span of time", "4h, 7days"),
    DENSITY("a density", "1.28g/cm3");

    private final String words;
    private final String example;

    Dimension(String words, String example) {
        this.words = words;
        this.example = example;
    }

    public String words() {
        return words;
    }

    public String example() {
        return example;
    }
}
