package bedledger.language;

/** What was entered cannot be read as the value that was asked for; says why, and what to write instead. */
public final class BadValue extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;
    private final String entered;
    private final String why;
    private final String wayOut;

    public BadValue(String entered, String why, String wayOut) {
        super("'" + entered + "': " + why + "; " + wayOut);
        this.entered = entered;
        this.why = why;
        this.wayOut = wayOut;
    }

    public Problem as(String what) {
        return new Problem(what, entered, why, wayOut);
    }
}
