package bedledger.projections.nitrogen;

import bedledger.projections.estimate.Estimate;

/** Whether what went back feeds the crop that follows, or takes nitrogen from it. */
public enum Verdict {
    FEEDS("feeds"),
    ROBS("robs"),
    EITHER("may feed or rob");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** By the whole band: only if both its ends lie on one side of nothing is a side taken. */
    public static Verdict of(Estimate freed) {
        if (freed.low() > 0) {
            return FEEDS;
        }
        return freed.high() < 0 ? ROBS : EITHER;
    }
}
