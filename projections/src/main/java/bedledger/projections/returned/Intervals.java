package bedledger.projections.returned;

import bedledger.projections.estimate.Estimate;

/** Whether two intervals have a value in common; an estimate without a band counts as its best value. */
final class Intervals {
    private Intervals() {}

    static boolean overlap(Estimate one, Estimate two) {
        return one.low() <= two.high() && two.low() <= one.high();
    }

    static String words(Estimate one, Estimate two) {
        String said = overlap(one, two)
                ? "the intervals overlap, so nothing is contradicted"
                : "the intervals do not overlap: one of the two is wrong, or the doubt is wider than shown";
        boolean open = !one.hasBand() || !two.hasBand();
        return open ? said + " (no interval is known for one of them)" : said;
    }
}
