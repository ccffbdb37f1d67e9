package bedledger.projections.tables;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One class of IPCC 2006 Table 11.2.
 *
 * <p>Intercept in t dry per ha, nitrogen in kg per kg dry; empty where the publication gives nothing. {@code crops} are
 * our crops that may be compared with it.
 */
public record IpccClass2006(
        String name,
        List<String> crops,
        double dryShare,
        double slope,
        double intercept,
        double nitrogenAbove,
        OptionalDouble nitrogenBelow,
        OptionalDouble belowToAboveGroundBiomass,
        Citation citation,
        String note) {
    public IpccClass2006 {
        crops = List.copyOf(crops);
    }
}
