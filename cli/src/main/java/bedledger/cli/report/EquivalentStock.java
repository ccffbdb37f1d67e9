package bedledger.cli.report;

import bedledger.projections.estimate.Derived;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.soil.Layer;
import bedledger.projections.soil.Profile;
import bedledger.projections.soil.SampledLayer;
import bedledger.projections.soil.Sampling;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The carbon of one place at each sampling over the same mass of fine earth, so that loosening, packing or another depth is not
 * taken for a change (Ellert and Bettany 1995).
 *
 * @param reference fine earth, t/ha: the most that every sampling with a profile reached; empty without any
 * @param stocks t C/ha over it, with the range of the carbon found
 */
record EquivalentStock(OptionalDouble reference, Map<Sampling, Estimate> stocks) {
    static EquivalentStock of(List<Sampling> samplings) {
        OptionalDouble reference = samplings.stream()
                .flatMap(each -> each.profile().stream())
                .mapToDouble(Profile::mass)
                .min();
        Map<Sampling, Estimate> stocks = new LinkedHashMap<>();
        samplings.forEach(each -> each.profile()
                .ifPresent(profile -> stocks.put(each, over(each.layers(), profile, reference.orElseThrow()))));
        return new EquivalentStock(reference, stocks);
    }

    private static Estimate over(List<SampledLayer> sampled, Profile profile, double reference) {
        List<Estimate> carbon =
                sampled.stream().map(each -> each.carbon().orElseThrow()).toList();
        return Derived.from(
                        carbon,
                        "t C/ha",
                        part -> with(profile, part)
                                .stockInMass(Math.min(reference, profile.mass()))
                                .orElseThrow())
                .by("carbon over equal mass of fine earth (Ellert & Bettany 1995)");
    }

    private static Profile with(Profile profile, double[] carbon) {
        List<Layer> layers = new ArrayList<>();
        for (int at = 0; at < carbon.length; at++) {
            Layer layer = profile.layers().get(at);
            layers.add(
                    new Layer(layer.from(), layer.to(), layer.bulkDensity(), Math.max(0, carbon[at]), layer.stones()));
        }
        return new Profile(layers);
    }
}
