package bedledger.projections.returned;

import bedledger.projections.estimate.Estimate;
import java.util.List;
import java.util.Optional;

/**
 * Shoots and roots of a group before anything was hauled off, kg dry.
 *
 * @param freshPerDry from a dry share measured on the bed; empty where the table's stands
 */
record Gross(
        Optional<Estimate> shoots,
        Optional<Estimate> roots,
        Optional<Double> freshPerDry,
        List<String> shootsMissing,
        List<String> rootsMissing,
        List<OtherEvidence> others,
        List<CrossCheck> crossChecks) {}
