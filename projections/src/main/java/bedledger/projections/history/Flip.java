package bedledger.projections.history;

import bedledger.language.BedId;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Observation;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A bed's way from the end of what grew in it to the next planting.
 *
 * @param after what had stood in it last
 * @param end the entry that left the bed empty
 * @param next the planting that filled it again; empty while nothing was planted
 * @param steps what was done between, in the order of the work; what ended the crop counts where it was work on the bed
 */
public record Flip(
        BedId bed,
        List<CropName> after,
        Entry end,
        Optional<Entry> next,
        Optional<CropName> nextCrop,
        List<FlipStep> steps) {
    public Flip {
        after = List.copyOf(after);
        steps = List.copyOf(steps);
    }

    public LocalDate from() {
        return end.head().doneOn();
    }

    public Optional<LocalDate> to() {
        return next.map(entry -> entry.head().doneOn());
    }

    /** Days from the end of the crop to the next planting; empty while nothing was planted. */
    public Optional<Long> days() {
        return to().map(day -> ChronoUnit.DAYS.between(from(), day));
    }

    /** Such as "N1: broccoli ended 2025-07-06, lettuce from 2025-08-01". */
    public String name() {
        String crops = after.stream().map(CropName::name).collect(Collectors.joining(", "));
        String then = next.map(entry -> ", " + nextCrop.map(CropName::name).orElse("planted") + " from "
                        + entry.head().doneOn())
                .orElse(", nothing planted since");
        return bed + ": " + crops + " ended " + from() + then;
    }

    /** Person-minutes recorded for this bed, by area where several were worked at once; empty if none were. */
    public Optional<Double> minutesRecorded() {
        List<Labour> recorded =
                steps.stream().flatMap(step -> step.labour().stream()).toList();
        return recorded.isEmpty()
                ? Optional.empty()
                : Optional.of(recorded.stream().mapToDouble(Labour::here).sum());
    }

    /** The labour as far as it was recorded, step by step, and the steps for which it was not. */
    public String labourWords() {
        List<String> said = new ArrayList<>();
        steps.forEach(step -> step.labour()
                .ifPresent(labour -> said.add(FactWords.name(step.entry().kind()) + ": " + labour.words())));
        List<String> silent = steps.stream()
                .filter(step -> step.labour().isEmpty() && !(step.entry().fact() instanceof Observation))
                .map(step -> FactWords.name(step.entry().kind()))
                .distinct()
                .toList();
        if (!silent.isEmpty()) {
            said.add("not recorded: " + String.join(", ", silent));
        }
        return String.join("; ", said);
    }
}
