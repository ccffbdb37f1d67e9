package bedledger.projections.soil;

import bedledger.projections.estimate.Estimate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One layer as sampled on one day, its repeated samples put together.
 *
 * @param from cm
 * @param to cm
 * @param carbon % of the fine earth; empty where neither carbon nor organic matter was found
 * @param samples how many samples of it were sent in apart
 * @param deviation standard deviation of their carbon, %; empty for one
 * @param density g/cm³; empty where it was not measured
 * @param stones share of the volume; empty where it was not measured
 */
public record SampledLayer(
        double from,
        double to,
        Optional<Estimate> carbon,
        int samples,
        OptionalDouble deviation,
        OptionalDouble density,
        OptionalDouble stones) {
    /** Empty where carbon or bulk density is missing; stones that nobody measured count as none. */
    Optional<Layer> layer() {
        return carbon.filter(each -> density.isPresent())
                .map(each -> new Layer(from, to, density.getAsDouble(), each.best(), stones.orElse(0)));
    }

    /** t C/ha. */
    Optional<Estimate> stock() {
        return carbon.flatMap(each -> layer().map(layer -> each.ratioTo(
                        Estimate.exact(1 / (layer.bulkDensity() * (to - from) * (1 - layer.stones())), ""), "t C/ha")
                .by("carbon x bulk density of the fine earth x depth x (1 - stones by volume)")));
    }
}
