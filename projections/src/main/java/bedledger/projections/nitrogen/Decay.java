package bedledger.projections.nitrogen;

/**
 * The decay of one residue in closed form (STICS v8: Nicolardot et al. 2001; Brisson et al. 2009).
 *
 * <p>Time is in normalised days, carbon in kg per kg of the residue's carbon.
 *
 * @param k decay of the residue, per normalised day
 * @param h share of what microbes leave behind that becomes humus
 * @param microbialRatio C:N of the microbes
 * @param microbialDecay per normalised day
 * @param assimilated share of the decayed carbon that microbes build in
 * @param humusNitrogen N:C of humus
 * @param nitrogen N:C of the residue
 */
public record Decay(
        double k,
        double h,
        double microbialRatio,
        double microbialDecay,
        double assimilated,
        double humusNitrogen,
        double nitrogen) {
    /** Where two rates are this near, their difference quotient is taken at its limit. */
    private static final double EQUAL_RATES = 1e-9;

    /** All of it within reach of the microbes. */
    public Pools after(double days) {
        return after(days, 1);
    }

    /**
     * With only part of it in contact with the soil: that part decays, and what lies above follows as it goes.
     *
     * @param contact share of the residue that can decay at a time, above 0; from 1 on all of it can
     */
    public Pools after(double days, double contact) {
        if (contact >= 1) {
            return pools(Math.exp(-k * days), fed(1, days));
        }
        double waiting = (1 - contact) / (k * contact);
        double steady = Math.min(days, waiting);
        double residue = 1 - k * contact * steady;
        double microbes = assimilated * k * contact * -Math.expm1(-microbialDecay * steady) / microbialDecay;
        if (days <= waiting) {
            return pools(residue, microbes);
        }
        double rest = days - waiting;
        return pools(
                contact * Math.exp(-k * rest), microbes * Math.exp(-microbialDecay * rest) + contact * fed(1, rest));
    }

    /** Microbial carbon of a residue that decays freely. */
    private double fed(double residue, double days) {
        double gap = k - microbialDecay;
        double quotient = Math.abs(gap) < EQUAL_RATES
                ? days * Math.exp(-k * days)
                : (Math.exp(-microbialDecay * days) - Math.exp(-k * days)) / gap;
        return assimilated * k * residue * quotient;
    }

    private Pools pools(double residue, double microbes) {
        double humus = h * (assimilated * (1 - residue) - microbes);
        return new Pools(this, residue, microbes, humus);
    }

    /** When everything has turned over. */
    public Pools finallyLeft() {
        return pools(0, 0);
    }

    /** What became of the residue's carbon. */
    public record Pools(Decay decay, double residue, double microbes, double humus) {
        /** Breathed out as carbon dioxide. */
        public double respired() {
            return 1 - residue - microbes - humus;
        }

        /** Mineral nitrogen set free, kg per kg of the residue's carbon; below 0 where it is locked up. */
        public double nitrogenFreed() {
            return decay.nitrogen * (1 - residue) - microbes / decay.microbialRatio - decay.humusNitrogen * humus;
        }

        /** The same per kg of the residue's nitrogen. */
        public double shareOfNitrogen() {
            return nitrogenFreed() / decay.nitrogen;
        }

        /** So many normalised days on with nothing more decaying: the microbes die off, their humus grows. */
        public Pools withoutResidueAfter(double days) {
            double left = microbes * Math.exp(-decay.microbialDecay * days);
            return new Pools(decay, residue, left, humus + decay.h * (microbes - left));
        }
    }
}
