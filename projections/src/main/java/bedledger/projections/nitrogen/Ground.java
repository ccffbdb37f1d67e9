package bedledger.projections.nitrogen;

/** What a bed offers to nitrogen that is set free in it. */
public enum Ground {
    /** A crop or a cover crop stands in it. */
    LIVING("crop or cover"),
    /** Nothing grows; a tarp keeps the rain off. */
    TARPED("under a tarp"),
    /** Nothing grows; a mulch lies on it, which catches nothing. */
    MULCHED("under a mulch, nothing growing"),
    /** Nothing grows on open soil. */
    BARE("bare");

    private final String words;

    Ground(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Whether what is set free can be washed out with nothing there to catch it. */
    public boolean isLeaky() {
        return this == MULCHED || this == BARE;
    }
}
