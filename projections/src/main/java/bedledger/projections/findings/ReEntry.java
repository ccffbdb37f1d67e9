package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.Care;
import bedledger.language.CropName;
import bedledger.language.Head;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** After spraying nobody goes in before the label's hours have passed: 40 CFR 170.407, and the label. */
record ReEntry(RuleSheet sheet) implements Rule {

    /** Work in a bed soon after it was sprayed. */
    private record Work(BedStep step, Outcome outcome) {}

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<Long, Map<Long, Work>> works = new LinkedHashMap<>();
        Map<Long, Set<BedId>> beds = new LinkedHashMap<>();
        for (BedId bed : inquiry.beds()) {
            List<BedStep> steps = inquiry.steps(bed);
            for (int place = 0; place < steps.size(); place++) {
                int at = place;
                steps.get(place)
                        .as(Care.Sprayed.class)
                        .ifPresent(spray -> steps.subList(at + 1, steps.size()).stream()
                                .takeWhile(step -> !step.day().isAfter(last(spray)))
                                .flatMap(step -> early(spray, step).stream())
                                .forEach(work -> {
                                    works.computeIfAbsent(spray.number(), key -> new LinkedHashMap<>())
                                            .put(work.step().number(), work);
                                    beds.computeIfAbsent(spray.number(), key -> new LinkedHashSet<>())
                                            .add(bed);
                                }));
            }
        }
        return inquiry.done(Care.Sprayed.class).stream()
                .filter(spray -> works.containsKey(spray.number()))
                .map(spray -> finding(
                        inquiry,
                        spray,
                        List.copyOf(works.getOrDefault(spray.number(), Map.of()).values()),
                        beds.getOrDefault(spray.number(), Set.of())))
                .toList();
    }

    /** Work whose time is not known is taken as done at the latest moment of its day; then only a whole day too early is certain. */
    private static Optional<Work> early(Done<Care.Sprayed> spray, BedStep step) {
        double minutes = minutes(spray);
        if (minutes <= 0 || step.fact() instanceof Care.Sprayed || step.fact() instanceof bedledger.language.Land) {
            return Optional.empty();
        }
        Head first = spray.entry().head();
        Head second = step.entry().head();
        if (first.time() != null && second.time() != null) {
            LocalDateTime over = first.doneOn().atTime(first.time()).plusMinutes((long) Math.ceil(minutes));
            return second.doneOn().atTime(second.time()).isBefore(over)
                    ? Optional.of(new Work(step, Outcome.NOT_MET))
                    : Optional.empty();
        }
        LocalDateTime latest = second.doneOn().plusDays(1).atStartOfDay();
        if (latest.isBefore(first.doneOn().atStartOfDay().plusMinutes((long) minutes))) {
            return Optional.of(new Work(step, Outcome.NOT_MET));
        }
        return second.doneOn().equals(first.doneOn())
                ? Optional.of(new Work(step, Outcome.INCOMPLETE))
                : Optional.empty();
    }

    private static LocalDate last(Done<Care.Sprayed> spray) {
        LocalDateTime until = until(spray);
        return until == null ? spray.day() : until.toLocalDate();
    }

    private static double minutes(Done<Care.Sprayed> spray) {
        return spray.fact().reEntry() == null ? 0 : spray.fact().reEntry().minutes();
    }

    private Finding finding(Inquiry inquiry, Done<Care.Sprayed> spray, List<Work> works, Set<BedId> beds) {
        Outcome worst = Outcome.worst(works.stream().map(Work::outcome).toList());
        List<Work> told = works.stream().filter(work -> work.outcome() == worst).toList();
        String acts = told.stream()
                .map(work -> work.step().entry().kind().word() + " on "
                        + work.step().day() + time(work.step().entry().head()))
                .distinct()
                .collect(Collectors.joining(", "));
        String where = Wording.list(beds);
        return new Draft(sheet, inquiry, where + " " + spray.fact().product(), spray.day())
                .at(beds)
                .restsOn(spray.entry())
                .restsOn(told.stream().map(work -> work.step().number()).toList())
                .settledBy(
                        worst == Outcome.NOT_MET
                                ? "Look at the label and who was in there; see to the people first."
                                : "Correct the entries of that day with the time of day: --at 14:30.")
                .says(
                        worst,
                        spray.fact().product() + " sprayed on " + where + " on " + spray.day()
                                + time(spray.entry().head())
                                + ", nobody in for " + spray.fact().reEntry() + "; yet " + acts
                                + (worst == Outcome.NOT_MET
                                        ? ", too early."
                                        : ", and the times of day are not recorded."));
    }

    private static String time(Head head) {
        return head.time() == null ? "" : " at " + head.time();
    }

    /** Until when nobody goes in; sprayed at a time that is not known, it counts from the end of that day. */
    static @Nullable LocalDateTime until(Done<Care.Sprayed> spray) {
        double minutes = minutes(spray);
        Head head = spray.entry().head();
        LocalDateTime sprayed = head.time() == null
                ? head.doneOn().plusDays(1).atStartOfDay()
                : head.doneOn().atTime(head.time());
        return minutes <= 0 ? null : sprayed.plusMinutes((long) Math.ceil(minutes));
    }

    @Override
    public List<Wait> waits(Inquiry inquiry, BedId bed, CropName crop) {
        List<Wait> waits = new ArrayList<>();
        inquiry.done(bed, Care.Sprayed.class).forEach(spray -> {
            LocalDateTime until = until(spray);
            if (until != null) {
                LocalDate from = until.toLocalDate();
                waits.add(new Wait(
                        sheet.id(),
                        from,
                        spray.fact().product() + " sprayed on " + bed + " on " + spray.day()
                                + ": nobody goes in before " + from + " " + until.toLocalTime() + " ("
                                + spray.fact().reEntry() + ").",
                        List.of(spray.number()),
                        sheet.citation()));
            }
        });
        return waits;
    }
}
