package bedledger.projections.soil;

/**
 * Two samplings of one place compared over the same mass of soil, so that loosening or packing is not taken for a change of carbon.
 *
 * @param reference fine earth compared, t/ha: that of the first sampling's depth, or the most that both reach
 * @param reachesDepth whether the later sampling reached the first one's mass
 * @param first t C/ha in it
 * @param later t C/ha in it
 * @param fixedDepth cm to which both were sampled
 * @param firstToDepth t C/ha to that depth
 * @param laterToDepth t C/ha to that depth
 */
public record EquivalentMass(
        double reference,
        boolean reachesDepth,
        double first,
        double later,
        double fixedDepth,
        double firstToDepth,
        double laterToDepth) {
    /** Compares over the mass that the first sampling found down to the depth both share. */
    public static EquivalentMass of(Profile first, Profile later) {
        double depth = Math.min(first.depth(), later.depth());
        double wanted = massTo(first, depth);
        double reference = Math.min(wanted, Math.min(first.mass(), later.mass()));
        return new EquivalentMass(
                reference,
                reference >= wanted,
                first.stockInMass(reference).orElseThrow(),
                later.stockInMass(reference).orElseThrow(),
                depth,
                first.stockToDepth(depth).orElseThrow(),
                later.stockToDepth(depth).orElseThrow());
    }

    private static double massTo(Profile profile, double depth) {
        return profile.layers().stream()
                .mapToDouble(layer -> layer.mass()
                        * Math.max(0, Math.min(depth, layer.to()) - layer.from())
                        / (layer.to() - layer.from()))
                .sum();
    }

    /** t C/ha over the same mass of soil. */
    public double change() {
        return later - first;
    }

    /** t C/ha to the same depth: what it would seem to be. */
    public double changeToDepth() {
        return laterToDepth - firstToDepth;
    }
}
