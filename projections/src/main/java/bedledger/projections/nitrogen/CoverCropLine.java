package bedledger.projections.nitrogen;

import bedledger.projections.estimate.Derived;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Matter;
import bedledger.projections.tables.Parameters;
import java.util.List;
import java.util.Optional;

/** The line of PNW 636 (Sullivan and Andrews 2012): nitrogen to the next crop from the nitrogen content of a cover crop. */
public final class CoverCropLine {
    private final double from;
    private final double slope;

    public CoverCropLine(Parameters table) {
        from = table.value("cover-crop line", "nitrogen from");
        slope = table.value("cover-crop line", "slope");
    }

    /** kg N per t of dry matter with so many % of nitrogen; never below nothing, though a cereal may lock nitrogen up. */
    public double kilogramsPerTonne(double percentNitrogen) {
        return Math.max(0, slope * (percentNitrogen - from));
    }

    Optional<Estimate> toTheNextCrop(Matter matter) {
        return matter.dry()
                .filter(dry -> dry.best() > 0)
                .flatMap(dry -> matter.nitrogen().map(nitrogen -> toTheNextCrop(dry, nitrogen)));
    }

    private Estimate toTheNextCrop(Estimate dry, Estimate nitrogen) {
        return Derived.from(
                        List.of(dry, nitrogen),
                        "kg",
                        part -> part[0] <= 0 ? 0 : part[0] / 1000 * kilogramsPerTonne(100 * part[1] / part[0]))
                .by("line of PNW 636 (Sullivan & Andrews 2012): 8.75 kg per t dry for each % N above 1.5");
    }
}
