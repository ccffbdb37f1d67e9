package bedledger.projections.nitrogen;

import bedledger.projections.tables.Parameters;

/** The STICS v8 residue module for one placement: what a residue's C:N makes of its decay. */
public final class Turnover {
    private final double decayConstant;
    private final double decayByNitrogen;
    private final double microbialConstant;
    private final double microbialByNitrogen;
    private final double microbialLeast;
    private final double microbialMost;
    private final double humifiedConstant;
    private final double humifiedByNitrogen;
    private final double microbialDecay;
    private final double assimilated;
    private final double humusNitrogen;
    private final double leastRatio;
    private final double mostRatio;
    private final double trustedRatio;

    public Turnover(Parameters table, Placement placement) {
        String set = placement.words();
        decayConstant = table.value(set, "decay constant");
        decayByNitrogen = table.value(set, "decay by N:C");
        microbialConstant = table.value(set, "microbial C:N constant");
        microbialByNitrogen = table.value(set, "microbial C:N by N:C");
        microbialLeast = table.value(set, "microbial C:N least");
        microbialMost = table.value("both", "microbial C:N most");
        humifiedConstant = table.value(set, "humified constant");
        humifiedByNitrogen = table.value(set, "humified by N:C");
        microbialDecay = table.value(set, "microbial decay");
        assimilated = table.value(set, "assimilated share");
        humusNitrogen = table.value("both", "humus N:C");
        leastRatio = table.value("both", "residue C:N least");
        mostRatio = table.value("both", "residue C:N most");
        trustedRatio = table.value("both", "residue C:N trusted from");
    }

    /** The narrowest C:N at which the module's nitrogen has been found near what was measured (Justes et al. 2009). */
    public double trustedRatio() {
        return trustedRatio;
    }

    /** As the module has it: C:N from 8 to 100. */
    public Decay asPublished(double carbonToNitrogen) {
        double nitrogen = 1 / Math.max(leastRatio, Math.min(mostRatio, carbonToNitrogen));
        double microbes = Math.max(microbialLeast, microbialConstant + microbialByNitrogen * nitrogen);
        return new Decay(
                decayConstant + decayByNitrogen * nitrogen,
                1 - humifiedConstant / (humifiedByNitrogen * nitrogen + 1),
                Math.min(microbialMost, microbes),
                microbialDecay,
                assimilated,
                humusNitrogen,
                nitrogen);
    }

    /** With a C:N below 12 taken as 12, because below it the module says too much. */
    public Decay of(double carbonToNitrogen) {
        return asPublished(Math.max(trustedRatio, carbonToNitrogen));
    }
}
