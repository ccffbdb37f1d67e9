package bedledger.projections.trends;

/** What covered a bed at the end of a day; where several things did, the first of these counts. */
public enum Ground {
    CROP("crop"),
    COVER_CROP("cover crop"),
    MULCH("mulch"),
    TARP("tarp"),
    /** Nothing, as far as the book says; residue that was left lying is not reckoned as cover. */
    BARE("bare");

    private final String words;

    Ground(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public boolean isLiving() {
        return this == CROP || this == COVER_CROP;
    }
}
