package bedledger.projections.history;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.BookKeeping;
import bedledger.language.Correction;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Land;
import bedledger.language.Misfit;
import bedledger.language.Step;
import bedledger.language.Timeline;
import bedledger.language.WorkOrder;
import bedledger.projections.history.HistoryLine.Answer;
import bedledger.projections.history.HistoryLine.Answered;
import bedledger.projections.history.HistoryLine.Status;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every entry that touches or touched a bed, with what became of it. */
final class HistoryLines {
    private final Farm farm;
    private final BookZone zone;
    private final Map<Long, List<String>> misfits;
    /** What is no longer in force, and answers without effect. */
    private final List<Entry> gone;

    HistoryLines(Farm farm, Timeline<BedState> timeline) {
        this.farm = farm;
        this.zone = BookZone.of(farm);
        this.misfits = timeline.steps().stream()
                .filter(step -> !step.fits())
                .collect(Collectors.toMap(
                        step -> step.entry().number(), HistoryLines::why, (one, two) -> one, HashMap::new));
        this.gone = Stream.concat(
                        farm.standing().answeredBy().keySet().stream().flatMap(number -> numbered(number).stream()),
                        farm.standing().idle().stream())
                .toList();
    }

    /** Looked up among all of them, which are in the order of their numbers. */
    private Optional<Entry> numbered(long number) {
        int low = 0;
        int high = farm.written().size() - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            Entry entry = farm.written().get(middle);
            if (entry.number() == number) {
                return Optional.of(entry);
            }
            low = entry.number() < number ? middle + 1 : low;
            high = entry.number() > number ? middle - 1 : high;
        }
        return Optional.empty();
    }

    private static List<String> why(Step<BedState> step) {
        return step.misfits().stream().map(Misfit::why).toList();
    }

    List<HistoryLine> upTo(BedId bed, LocalDate day) {
        return touching(bed, Set.of())
                .filter(entry -> !entry.head().doneOn().isAfter(day))
                .sorted(WorkOrder.OF_WORK)
                .map(this::line)
                .toList();
    }

    private Stream<Entry> touching(BedId bed, Set<BedId> asking) {
        Set<BedId> chain = new HashSet<>(asking);
        if (!chain.add(bed)) {
            return Stream.empty();
        }
        Stream<Entry> own = Stream.concat(
                        farm.entries(bed).stream(),
                        gone.stream().filter(entry -> entry.fact().places().contains(bed)))
                .filter(entry -> !(entry.fact() instanceof BookKeeping.Struck));
        Optional<Entry> split = farm.entries(bed).stream()
                .filter(entry -> entry.fact() instanceof Land.BedSplit parts
                        && parts.into().contains(bed)
                        && !parts.bed().equals(bed))
                .findFirst();
        Stream<Entry> inherited = split.stream()
                .flatMap(entry -> touching(((Land.BedSplit) entry.fact()).bed(), chain)
                        .filter(earlier -> WorkOrder.OF_WORK.compare(earlier, entry) < 0));
        return Stream.concat(inherited, own);
    }

    private HistoryLine line(Entry entry) {
        Entry answer = farm.standing().answerTo(entry);
        LocalDate writtenOn = zone.writtenOn(entry);
        return new HistoryLine(
                entry,
                FactWords.of(entry.fact()),
                status(entry, Optional.ofNullable(answer)),
                Optional.ofNullable(answer).map(this::answer),
                answered(entry),
                writtenOn,
                ChronoUnit.DAYS.between(entry.head().doneOn(), writtenOn),
                misfits.getOrDefault(entry.number(), List.of()));
    }

    private Status status(Entry entry, Optional<Entry> answer) {
        if (farm.standing().idle().contains(entry)) {
            return Status.WITHOUT_EFFECT;
        }
        return answer.map(later -> later.fact() instanceof BookKeeping.Struck ? Status.STRUCK : Status.REPLACED)
                .orElse(Status.IN_FORCE);
    }

    private Answer answer(Entry later) {
        String words = later.fact() instanceof BookKeeping.Struck ? "struck" : FactWords.of(later.fact());
        return new Answer(later.number(), reason(later), words, zone.writtenOn(later));
    }

    private Optional<Answered> answered(Entry entry) {
        Correction correction = entry.head().corrects();
        if (correction == null) {
            return Optional.empty();
        }
        String words = numbered(correction.number())
                .map(earlier -> FactWords.of(earlier.fact()))
                .orElse("");
        return Optional.of(new Answered(correction.number(), correction.reason(), words));
    }

    private static String reason(Entry later) {
        Correction correction = later.head().corrects();
        return correction == null ? "" : correction.reason();
    }
}
