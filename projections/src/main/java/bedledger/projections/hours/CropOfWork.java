package bedledger.projections.hours;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.BedWork;
import bedledger.language.Care;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Harvesting;
import bedledger.language.Planting;
import bedledger.language.Step;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** For which crop a piece of work was done: the one it names, else what stood in the bed, else after what had stood there. */
final class CropOfWork {
    private static final String NONE = "before any crop";

    private final Farm farm;
    private final Map<BedId, Map<Long, String>> byBed = new HashMap<>();

    CropOfWork(Farm farm) {
        this.farm = farm;
    }

    String of(BedId bed, Entry entry) {
        return named(entry.fact())
                .orElseGet(() -> byBed.computeIfAbsent(bed, this::walk).getOrDefault(entry.number(), NONE));
    }

    private static Optional<String> named(Fact fact) {
        if (fact instanceof Planting.Sown sown) {
            return Optional.of(sown.crop().name());
        }
        if (fact instanceof Planting.Transplanted set) {
            return Optional.of(set.crop().name());
        }
        if (fact instanceof Planting.CoverSown cover) {
            return Optional.of(cover.crop().name());
        }
        if (fact instanceof Planting.Staked staked) {
            return Optional.of(staked.crop().name());
        }
        if (fact instanceof Planting.CropThinned thinned) {
            return Optional.of(thinned.crop().name());
        }
        if (fact instanceof Care.Pruned pruned) {
            return Optional.of(pruned.crop().name());
        }
        if (fact instanceof Harvesting.Harvested harvested) {
            return Optional.of(harvested.crop().name());
        }
        // Residue is carted off after the crop is over, like the rest of a flip.
        return fact instanceof BedWork.ResidueHauledOff haul && haul.crop() != null
                ? Optional.of("after " + haul.crop().name())
                : Optional.empty();
    }

    private Map<Long, String> walk(BedId bed) {
        Map<Long, String> crops = new HashMap<>();
        String after = NONE;
        for (Step<BedState> step : farm.bed(bed).steps()) {
            List<BedState.Stand> standing = step.before().crops();
            crops.put(step.entry().number(), standing.isEmpty() ? after : names(standing));
            if (!standing.isEmpty() && step.after().crops().isEmpty()) {
                after = "after " + names(standing);
                crops.put(step.entry().number(), after);
            }
        }
        return crops;
    }

    private static String names(List<BedState.Stand> standing) {
        return standing.stream().map(stand -> stand.crop().name()).distinct().collect(Collectors.joining(", "));
    }
}
