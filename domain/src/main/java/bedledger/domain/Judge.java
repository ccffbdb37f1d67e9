package bedledger.domain;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Land;
import bedledger.language.Misfit;
import bedledger.language.Place;
import bedledger.language.Problem;
import bedledger.language.Step;
import bedledger.ledger.store.Ledger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Judges entries about to be written, as a whole and in the order of the work, against the timelines they touch. */
final class Judge {
    private final Farm before;
    private final Farm after;
    private final List<Entry> candidates;
    private final Set<Long> numbers;

    private Judge(List<Entry> known, List<Entry> candidates) {
        this.before = Farm.of(known);
        this.after = Farm.of(Stream.concat(known.stream(), candidates.stream()).toList());
        this.candidates = candidates;
        this.numbers = candidates.stream().map(Entry::number).collect(Collectors.toSet());
    }

    static Judge of(Ledger ledger, List<Entry> candidates) {
        return new Judge(touched(ledger, candidates), candidates);
    }

    /** Loads what the candidates touch, what that was split from and what it was split into, until nothing new turns up. */
    private static List<Entry> touched(Ledger ledger, List<Entry> candidates) {
        Map<Long, Entry> known = new TreeMap<>();
        Set<Place> asked = new HashSet<>();
        Set<Place> ask = new HashSet<>();
        candidates.forEach(entry -> ask.addAll(entry.fact().places()));
        candidates.stream()
                .filter(entry -> entry.head().corrects() != null)
                .flatMap(entry -> ledger.act(entry.act()).stream())
                .forEach(entry -> {
                    known.put(entry.number(), entry);
                    ask.addAll(entry.fact().places());
                });
        while (asked.addAll(ask)) {
            List<Entry> found = ledger.touching(ask);
            found.forEach(entry -> known.put(entry.number(), entry));
            ask.clear();
            ask.addAll(split(found));
            ask.removeAll(asked);
        }
        return List.copyOf(known.values());
    }

    private static Set<Place> split(Collection<Entry> entries) {
        return entries.stream()
                .filter(entry -> entry.fact() instanceof Land.BedSplit)
                .flatMap(entry -> entry.fact().places().stream())
                .collect(Collectors.toSet());
    }

    /** Why candidates cannot be written, by their number; empty if they can. */
    Map<Long, List<Problem>> problems() {
        Map<Long, List<Problem>> problems = new TreeMap<>();
        after.misfits().forEach((number, misfits) -> {
            if (numbers.contains(number)) {
                problems.put(
                        number,
                        misfits.stream().map(misfit -> problem(misfit, number)).toList());
            }
        });
        after.standing().idle().stream()
                .filter(entry -> numbers.contains(entry.number()))
                .forEach(entry -> problems.computeIfAbsent(entry.number(), n -> new ArrayList<>())
                        .add(notInForce(entry)));
        return problems;
    }

    private Problem problem(Misfit misfit, long number) {
        String kind = misfit.place().key();
        Problem problem = misfit.as(kind.substring(0, kind.indexOf(':')));
        return Openings.after(day(number), after, misfit.place())
                .map(opening -> new Problem(
                        problem.what(),
                        problem.entered(),
                        problem.why() + "; it is there from " + opening.head().doneOn() + " on (#" + opening.number()
                                + ")",
                        "check the day, or correct that entry: correct " + opening.number()
                                + " --on DATE --why REASON"))
                .orElse(problem);
    }

    private LocalDate day(long number) {
        return candidates.stream()
                .filter(entry -> entry.number() == number)
                .findFirst()
                .orElseThrow()
                .head()
                .doneOn();
    }

    private Problem notInForce(Entry entry) {
        long number = java.util.Objects.requireNonNull(entry.head().corrects()).number();
        Entry answer = after.standing().answeredBy().get(number);
        String became = answer == null
                ? "it is not in force"
                : answer.fact() instanceof BookKeeping.Struck
                        ? "it was struck by #" + answer.number()
                        : "#" + answer.number() + " took its place";
        return new Problem(
                "entry",
                "#" + number,
                became,
                answer == null || answer.fact() instanceof BookKeeping.Struck
                        ? "write it as a new entry if it was right after all"
                        : "correct or strike #" + answer.number() + " instead");
    }

    /** What the writer should know: acts told twice, crops that end, and entries in the book that no longer fit. */
    List<String> says() {
        List<String> says = new ArrayList<>();
        SaidBefore said = new SaidBefore(before);
        candidates.forEach(entry -> said.of(entry).ifPresent(says::add));
        candidates.forEach(entry -> entry.fact().places().stream()
                .filter(BedId.class::isInstance)
                .forEach(bed -> ended((BedId) bed, entry).forEach(says::add)));
        candidates.forEach(entry -> says.addAll(StockWords.of(after, entry)));
        Map<Long, List<Misfit>> already = before.misfits();
        after.misfits().forEach((number, misfits) -> {
            // Place by place: of an entry's other places, which were not loaded, neither farm knows enough.
            List<Misfit> fresh = new ArrayList<>(misfits);
            fresh.removeAll(already.getOrDefault(number, List.of()));
            if (!numbers.contains(number) && !fresh.isEmpty()) {
                says.add("Entry #" + number + " no longer fits: "
                        + fresh.get(0).place() + ": " + fresh.get(0).why()
                        + ". It stays in the book, without effect, until it is corrected.");
            }
        });
        return says;
    }

    private List<String> ended(BedId bed, Entry entry) {
        return after.bed(bed).steps().stream()
                .filter(step -> step.entry().number() == entry.number())
                .flatMap(step -> endedBy(step).map(crop -> bed + ": " + crop + " ends with this."))
                .toList();
    }

    private static Stream<String> endedBy(Step<BedState> step) {
        boolean saidSo = step.entry().fact() instanceof bedledger.language.Planting
                || step.entry().fact() instanceof bedledger.language.Harvesting
                || step.entry().fact() instanceof Land;
        return saidSo
                ? Stream.empty()
                : step.before().crops().stream()
                        .filter(stand -> !step.after().crops().contains(stand))
                        .map(stand -> stand.crop().name());
    }
}
