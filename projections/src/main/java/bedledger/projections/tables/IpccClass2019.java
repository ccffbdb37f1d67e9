package bedledger.projections.tables;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One class of IPCC 2019 Refinement Table 11.1A.
 *
 * <p>{@code residueToCrop} in kg dry per kg dry, nitrogen in kg per kg dry; empty where the publication gives nothing.
 */
public record IpccClass2019(
        String name,
        List<String> crops,
        double dryShare,
        OptionalDouble residueToCrop,
        double nitrogenAbove,
        OptionalDouble nitrogenBelow,
        OptionalDouble belowToAboveGroundBiomass,
        Citation citation,
        String note) {
    public IpccClass2019 {
        crops = List.copyOf(crops);
    }
}
