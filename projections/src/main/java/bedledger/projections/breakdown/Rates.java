package bedledger.projections.breakdown;

/**
 * How fast the leaves and the stalks of a group go, per decomposition day.
 *
 * <p>As long as no look of the farm says otherwise the two are wrong the same way: both are the one rate of the table, the
 * leaves' times the leaf factor.
 */
record Rates(Rate leaves, Rate stalks) {
    /** A parameter times a fixed factor. */
    record Rate(Parameter parameter, double factor) {
        double under(Assumptions assumed) {
            return assumed.of(parameter) * factor;
        }
    }

    static Rates ofTable(ResidueGroup group) {
        double leaf = Constants.get("leaf factor").value();
        return new Rates(new Rate(group.rate(), leaf), new Rate(group.rate(), 1));
    }
}
