package bedledger.projections.soil;

import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/**
 * The soil of a bed as sampled on one day.
 *
 * @param layers from the top down
 * @param beds those that the samples were taken from together
 * @param how laboratory, method and time of year, to tell whether two samplings can be compared
 * @param missing what no stock can be worked out without, and what had to be taken for granted
 * @param words what has to be said beside it
 * @param entries the numbers of the entries
 */
public record Sampling(
        LocalDate day,
        List<SampledLayer> layers,
        List<BedId> beds,
        String how,
        List<String> missing,
        List<String> words,
        SortedSet<Long> entries) {
    public Sampling {
        layers = List.copyOf(layers);
        beds = List.copyOf(beds);
        missing = List.copyOf(missing);
        words = List.copyOf(words);
    }

    /** t C/ha over all the layers; empty unless each of them has its carbon and its bulk density. */
    public Optional<Estimate> stock() {
        Optional<Estimate> sum = Optional.empty();
        for (SampledLayer layer : layers) {
            Optional<Estimate> here = layer.stock();
            if (here.isEmpty()) {
                return Optional.empty();
            }
            sum = sum.map(each -> each.plus(here.get())).or(() -> here);
        }
        return sum;
    }

    /** Empty unless the layers follow each other from the surface down, each with its carbon and its bulk density. */
    public Optional<Profile> profile() {
        List<Layer> known =
                layers.stream().flatMap(each -> each.layer().stream()).toList();
        double depth = 0;
        for (Layer layer : known) {
            if (Math.abs(layer.from() - depth) > 1e-9) {
                return Optional.empty();
            }
            depth = layer.to();
        }
        return known.isEmpty() || known.size() < layers.size() ? Optional.empty() : Optional.of(new Profile(known));
    }

    public boolean isCompositeOfBeds() {
        return beds.size() > 1;
    }
}
