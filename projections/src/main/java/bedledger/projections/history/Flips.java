package bedledger.projections.history;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.BedState.Stand;
import bedledger.language.BedWork;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Fertility;
import bedledger.language.Planting;
import bedledger.language.Step;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The flips of a bed, oldest first. */
public final class Flips {
    private Flips() {}

    public static List<Flip> of(Farm farm, BedId bed) {
        return of(farm, bed, new BedAreas(farm), LocalDate.MAX);
    }

    /** The flips as they stood at the end of a day, with the areas of the farm's beds at hand. */
    public static List<Flip> of(Farm farm, BedId bed, BedAreas areas, LocalDate asOf) {
        List<Step<BedState>> steps = farm.bed(bed).steps().stream()
                .filter(Step::fits)
                .filter(step -> !step.entry().head().doneOn().isAfter(asOf))
                .toList();
        List<Flip> flips = new ArrayList<>();
        for (int at = 0; at < steps.size(); at++) {
            if (empties(steps.get(at))) {
                flips.add(flip(bed, steps, at, areas));
            }
        }
        return List.copyOf(flips);
    }

    private static boolean empties(Step<BedState> step) {
        return !step.before().crops().isEmpty() && step.after().crops().isEmpty();
    }

    private static Flip flip(BedId bed, List<Step<BedState>> steps, int at, BedAreas areas) {
        Step<BedState> ending = steps.get(at);
        List<FlipStep> between = new ArrayList<>();
        LocalDate last = ending.entry().head().doneOn();
        if (isWork(ending.entry().fact())) {
            between.add(step(ending.entry(), bed, last, areas));
        }
        Optional<Step<BedState>> filled = Optional.empty();
        for (Step<BedState> step : steps.subList(at + 1, steps.size())) {
            if (!step.after().crops().isEmpty()) {
                filled = Optional.of(step);
                break;
            }
            between.add(step(step.entry(), bed, last, areas));
            last = step.entry().head().doneOn();
        }
        return new Flip(
                bed,
                ending.before().crops().stream().map(Stand::crop).toList(),
                ending.entry(),
                filled.map(Step::entry),
                filled.map(Flips::planted),
                between);
    }

    private static CropName planted(Step<BedState> step) {
        return step.after().crops().get(0).crop();
    }

    private static FlipStep step(Entry entry, BedId bed, LocalDate since, BedAreas areas) {
        long days = ChronoUnit.DAYS.between(since, entry.head().doneOn());
        return new FlipStep(entry, FactWords.of(entry.fact()), days, Labour.of(entry, bed, areas));
    }

    private static boolean isWork(Fact fact) {
        return fact instanceof BedWork || fact instanceof Fertility.Incorporated || fact instanceof Planting.CoverEnded;
    }
}
