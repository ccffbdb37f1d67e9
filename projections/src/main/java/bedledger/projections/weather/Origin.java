package bedledger.projections.weather;

/** Where a day's weather comes from, best first. */
public enum Origin {
    NOTED("noted in the book"),
    CSV_FILE("CSV file"),
    GHCN_DAILY("GHCN-Daily file"),
    NORMALS("monthly normals"),
    SAME_DAYS("mean of the same days in the years known");

    private final String words;

    Origin(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Whether somebody or something measured that very day. */
    public boolean isMeasured() {
        return this == NOTED || this == CSV_FILE || this == GHCN_DAILY;
    }
}
