package bedledger.projections.returned;

import bedledger.language.Entry;
import bedledger.language.Observation.QuadratsCut;
import bedledger.language.Share;
import bedledger.projections.estimate.DryShare;
import bedledger.projections.estimate.Quadrat;
import bedledger.projections.estimate.QuadratSample;
import java.util.Optional;

/** Quadrats as written down, as a sample. */
final class Cuts {
    private Cuts() {}

    static QuadratSample sample(Entry entry) {
        QuadratsCut cut = (QuadratsCut) entry.fact();
        double frame = cut.frame().squareMetres();
        return new QuadratSample(
                "quadrats " + cut.bed() + " #" + entry.number(),
                cut.weights().stream()
                        .map(weight -> new Quadrat(frame, weight.grams()))
                        .toList(),
                dry(cut.dry()));
    }

    /** A dry share of nothing is no measurement. */
    static Optional<DryShare> dry(@org.jspecify.annotations.Nullable Share share) {
        return share == null || share.percent() <= 0
                ? Optional.empty()
                : Optional.of(new DryShare(share.percent() / 100));
    }
}
