package bedledger.projections.hours;

import bedledger.language.BedId;
import bedledger.language.BedWork;
import bedledger.language.Care;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Fertility;
import bedledger.language.Harvesting;
import bedledger.language.Planting;
import bedledger.projections.history.BedAreas;
import bedledger.projections.history.Flip;
import bedledger.projections.history.Flips;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the steps of work out of the entries in force. */
final class WorkSteps {
    private final Farm farm;
    private final LocalDate to;
    private final BedAreas areas;
    private final CropOfWork crops;
    private final Map<BedId, Map<Long, String>> flips = new HashMap<>();

    WorkSteps(Farm farm, LocalDate to) {
        this.farm = farm;
        this.to = to;
        this.areas = new BedAreas(farm);
        this.crops = new CropOfWork(farm);
    }

    /** Every step done by the day, in the order of the work. */
    List<WorkStep> all() {
        return farm.inForce().stream()
                .filter(entry -> !entry.head().doneOn().isAfter(to))
                .filter(WorkSteps::isWork)
                .map(this::step)
                .toList();
    }

    /** What is seen, bought, sold or declared is work only where somebody put minutes to it. */
    private static boolean isWork(Entry entry) {
        Fact fact = entry.fact();
        return entry.head().minutes() != null
                || (fact instanceof Planting && !(fact instanceof Planting.CropFinished))
                || fact instanceof BedWork
                || fact instanceof Care
                || fact instanceof Fertility
                || fact instanceof Harvesting.Harvested;
    }

    private WorkStep step(Entry entry) {
        List<WorkStep.Part> parts = BedAreas.beds(entry).stream()
                .map(bed -> new WorkStep.Part(bed, areas.share(entry, bed), crops.of(bed, entry), flip(bed, entry)))
                .toList();
        return new WorkStep(entry, entry.kind().word(), minutes(entry), parts);
    }

    static Optional<Double> minutes(Entry entry) {
        Integer people = entry.head().people();
        Integer each = entry.head().minutes();
        return people == null || each == null ? Optional.empty() : Optional.of((double) people * each);
    }

    private String flip(BedId bed, Entry entry) {
        return flips.computeIfAbsent(bed, this::flipsByEntry).getOrDefault(entry.number(), bed + ": outside a flip");
    }

    private Map<Long, String> flipsByEntry(BedId bed) {
        Map<Long, String> names = new HashMap<>();
        for (Flip flip : Flips.of(farm, bed, areas, to)) {
            flip.steps().forEach(step -> names.put(step.entry().number(), flip.name()));
        }
        return names;
    }
}
