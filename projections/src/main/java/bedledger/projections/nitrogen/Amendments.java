package bedledger.projections.nitrogen;

import bedledger.projections.estimate.Derived;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.tables.Parameters;
import java.util.Optional;

/** Manures and composts by the shares of total nitrogen that RB209 gives for the next crop. */
final class Amendments {
    private final Parameters table = Parameters.of("amendment-nitrogen");

    Optional<Estimate> toTheNextCrop(String material, Optional<Estimate> nitrogen) {
        return nitrogen.flatMap(each -> table.find(material, "nitrogen to the next crop")
                .map(share -> each.times(Derived.of(share))
                        .by("total nitrogen x share to the next crop (RB209, Section 2)")));
    }
}
