package bedledger.projections.hours;

import bedledger.language.BedId;
import bedledger.language.Farm;
import bedledger.language.NaturalOrder;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The work of a span of days, put together in several ways.
 *
 * @param steps in the order of the work
 */
public record Hours(LocalDate from, LocalDate to, List<WorkStep> steps) {
    public Hours {
        steps = List.copyOf(steps);
    }

    /** The work done from one day to another, both included, on some beds; on all, and off the beds, where none are named. */
    public static Hours of(Farm farm, LocalDate from, LocalDate to, List<BedId> beds) {
        WorkSteps reading = new WorkSteps(farm, to);
        Predicate<WorkStep> asked =
                step -> beds.isEmpty() || step.parts().stream().anyMatch(part -> beds.contains(part.bed()));
        List<WorkStep> steps = reading.all().stream()
                .filter(step -> !step.entry().head().doneOn().isBefore(from))
                .filter(asked)
                .map(step -> only(step, beds))
                .toList();
        return new Hours(from, to, steps);
    }

    private static WorkStep only(WorkStep step, List<BedId> beds) {
        return beds.isEmpty()
                ? step
                : new WorkStep(
                        step.entry(),
                        step.operation(),
                        step.minutes(),
                        step.parts().stream()
                                .filter(part -> beds.contains(part.bed()))
                                .toList());
    }

    /** Everything; the minutes of the beds asked about. */
    public HoursLine all() {
        return line("all", steps, part -> true);
    }

    /** One line for each operation, by its word. */
    public List<HoursLine> byOperation() {
        Map<String, List<WorkStep>> grouped = new TreeMap<>();
        steps.forEach(step -> grouped.computeIfAbsent(step.operation(), word -> new ArrayList<>())
                .add(step));
        List<HoursLine> lines = new ArrayList<>();
        grouped.forEach((word, of) -> lines.add(line(word, of, part -> true)));
        return List.copyOf(lines);
    }

    /** One line for each bed, in natural order; work on no bed stands last. */
    public List<HoursLine> byBed() {
        Map<String, List<WorkStep>> grouped = new TreeMap<>(NaturalOrder.INSTANCE);
        return byPart(grouped, part -> part.bed().name());
    }

    /** One line for each crop, by name. */
    public List<HoursLine> byCrop() {
        return byPart(new TreeMap<>(Comparator.naturalOrder()), WorkStep.Part::crop);
    }

    /** One line for each flip, in the order of the work. */
    public List<HoursLine> byFlip() {
        return byPart(new LinkedHashMap<>(), WorkStep.Part::flip);
    }

    private List<HoursLine> byPart(Map<String, List<WorkStep>> grouped, Function<WorkStep.Part, String> key) {
        for (WorkStep step : steps) {
            step.parts().stream()
                    .map(key)
                    .distinct()
                    .forEach(name -> grouped.computeIfAbsent(name, of -> new ArrayList<>())
                            .add(step));
        }
        List<HoursLine> lines = new ArrayList<>();
        grouped.forEach(
                (name, of) -> lines.add(line(name, of, part -> key.apply(part).equals(name))));
        List<WorkStep> onNone =
                steps.stream().filter(step -> step.parts().isEmpty()).toList();
        if (!onNone.isEmpty()) {
            lines.add(line("on no bed", onNone, part -> true));
        }
        return List.copyOf(lines);
    }

    private static HoursLine line(String of, List<WorkStep> steps, Predicate<WorkStep.Part> asked) {
        SortedSet<Long> entries = new TreeSet<>();
        double minutes = 0;
        int recorded = 0;
        boolean byArea = false;
        for (WorkStep step : steps) {
            entries.add(step.entry().number());
            if (step.minutes().isPresent()) {
                double share = share(step, asked);
                minutes += step.minutes().get() * share;
                byArea |= share < 1;
                recorded++;
            }
        }
        return new HoursLine(of, steps.size(), recorded, minutes, byArea, entries);
    }

    private static double share(WorkStep step, Predicate<WorkStep.Part> asked) {
        double share = step.parts().stream()
                .filter(asked)
                .mapToDouble(WorkStep.Part::share)
                .sum();
        boolean whole = step.parts().isEmpty() || share > 1 - 1e-9;
        return whole ? 1 : share;
    }
}
