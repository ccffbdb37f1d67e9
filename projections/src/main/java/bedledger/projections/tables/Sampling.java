package bedledger.projections.tables;

/** Thresholds and factors for measurements, each with a row in the sampling table. */
public record Sampling(
        double fewestQuadrats,
        double widestVariation,
        double confidence,
        double phosphorusInPhosphate,
        double kilogramsInAPound) {}
