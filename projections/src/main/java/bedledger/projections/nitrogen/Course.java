package bedledger.projections.nitrogen;

import bedledger.projections.tables.Parameters;

/**
 * The course of one residue on a bed: on top at first, worked in later as far as it was.
 *
 * <p>What was worked in goes on as a fresh residue of the same C:N; the microbes grown on it before go on as they were. That
 * joining of the two placements is ours; each of them is the STICS v8 residue module.
 */
final class Course {
    /** Normalised days after which everything has turned over: some centuries. */
    static final double FOREVER = 1e6;

    private final Turnover onTop;
    private final Turnover workedIn;

    Course(Parameters table) {
        onTop = new Turnover(table, Placement.ON_TOP);
        workedIn = new Turnover(table, Placement.WORKED_IN);
    }

    /** A residue of one C:N, its decay known in both placements. */
    Residue of(double carbonToNitrogen) {
        return new Residue(onTop.of(carbonToNitrogen), workedIn.of(carbonToNitrogen));
    }

    /** The decay of one residue on top and worked in. */
    record Residue(Decay above, Decay below) {
        /**
         * Share of the residue's nitrogen set free, below 0 where nitrogen is locked up.
         *
         * @param before normalised days on top
         * @param after normalised days since it was worked in
         * @param buried share of it that was worked in
         * @param contact share of what lies on top that can decay at a time
         */
        double share(double before, double after, double buried, double contact) {
            double left = buried >= 1 ? 0 : above.after(before + after, contact).shareOfNitrogen();
            if (buried <= 0) {
                return left;
            }
            Decay.Pools then = above.after(before, contact);
            double gone = then.withoutResidueAfter(after).shareOfNitrogen()
                    + then.residue() * below.after(after).shareOfNitrogen();
            return buried * gone + (1 - buried) * left;
        }
    }

    boolean isCapped(double carbonToNitrogen) {
        return carbonToNitrogen < workedIn.trustedRatio();
    }
}
