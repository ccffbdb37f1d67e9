package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.CropName;
import bedledger.language.Fact;
import bedledger.language.Harvesting;
import bedledger.language.Land;
import bedledger.language.LotId;
import bedledger.language.Planting;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Which lots were harvested from what was sown, planted or found standing: while it stood, on the beds it stood in. */
final class Growing {
    private final Map<Long, Set<LotId>> lots = new HashMap<>();

    static Growing of(Inquiry inquiry) {
        Growing growing = new Growing();
        inquiry.beds().forEach(bed -> growing.walk(inquiry, bed));
        return growing;
    }

    private void walk(Inquiry inquiry, BedId bed) {
        Map<CropName, List<Long>> standing = new HashMap<>();
        for (BedStep step : inquiry.steps(bed)) {
            CropName planted = planted(step.fact());
            if (planted != null && step.fits()) {
                standing.computeIfAbsent(planted, crop -> new ArrayList<>()).add(step.number());
            }
            step.as(Harvesting.Harvested.class)
                    .map(Done::fact)
                    .ifPresent(harvest -> standing.getOrDefault(harvest.crop(), List.of())
                            .forEach(planting -> lots.computeIfAbsent(planting, number -> new LinkedHashSet<>())
                                    .add(harvest.lot())));
            standing.keySet().removeIf(crop -> !step.after().grows(crop));
        }
    }

    private static @Nullable CropName planted(Fact fact) {
        if (fact instanceof Planting.Sown sown) {
            return sown.crop();
        }
        if (fact instanceof Planting.Transplanted set) {
            return set.crop();
        }
        return fact instanceof Land.Found found ? found.crop() : null;
    }

    /** The lots grown from the planting that an entry records. */
    Set<LotId> lotsFrom(long planting) {
        return lots.getOrDefault(planting, Set.of());
    }
}
