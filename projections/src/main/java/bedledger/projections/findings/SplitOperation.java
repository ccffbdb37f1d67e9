package bedledger.projections.findings;

import bedledger.language.FieldId;
import bedledger.language.Land;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Organic and other land side by side: 7 CFR 205.2 "Split operation", 205.201(a)(5). */
record SplitOperation(RuleSheet sheet, Figures figures) implements Rule {

    /** A field, since when it is in the book, and since when it is shown to be clean. */
    private record Ground(FieldId field, Done<Land.FieldRegistered> registered, LocalDate clean, LandHistory history) {}

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        List<Ground> grounds = inquiry.done(Land.FieldRegistered.class).stream()
                .flatMap(registered -> ground(inquiry, registered).stream())
                .sorted(Comparator.comparing(Ground::field, Wording.NATURAL))
                .toList();
        List<Ground> waiting = grounds.stream()
                .filter(ground -> waits(inquiry, ground))
                .filter(ground -> grounds.stream().anyMatch(other -> beside(ground, other, inquiry.asOf())))
                .toList();
        return waiting.isEmpty() ? List.of() : List.of(finding(inquiry, waiting, grounds));
    }

    private Optional<Ground> ground(Inquiry inquiry, Done<Land.FieldRegistered> registered) {
        LandHistory history = LandHistory.of(inquiry, figures, registered.fact().field());
        return history.eligibleFrom(inquiry.asOf())
                .map(clean -> new Ground(history.field(), registered, clean, history));
    }

    private static boolean waits(Inquiry inquiry, Ground ground) {
        return ground.history().lastApplied(inquiry.asOf()).isPresent()
                && ground.clean().isAfter(ground.registered().day());
    }

    /** Whether the other field gives an organic harvest while this one does not. */
    private static boolean beside(Ground ground, Ground other, LocalDate asOf) {
        LocalDate both = later(other.clean(), other.registered().day());
        return both.isBefore(ground.clean()) && !both.isAfter(asOf);
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    private Finding finding(Inquiry inquiry, List<Ground> waiting, List<Ground> grounds) {
        List<FieldId> others = grounds.stream()
                .filter(other -> waiting.stream().anyMatch(ground -> beside(ground, other, inquiry.asOf())))
                .map(Ground::field)
                .toList();
        List<Long> entries = new ArrayList<>();
        waiting.forEach(ground -> entries.addAll(ground.history().entries()));
        String until = waiting.stream()
                .map(ground -> "field " + ground.field() + " gives no organic harvest before " + ground.clean())
                .collect(Collectors.joining("; "));
        LocalDate from = waiting.stream()
                .map(ground -> ground.registered().day())
                .min(Comparator.naturalOrder())
                .orElseThrow();
        return new Draft(sheet, inquiry, "the farm", from)
                .at(waiting.stream().map(Ground::field).toList())
                .at(inquiry.beds(waiting.stream().map(Ground::field).toList()))
                .restsOn(entries)
                .settledBy(
                        "Agree with the certifier how the two are kept apart, in the field, at harvest and in the store,"
                                + " and keep that in the plan.")
                .says(
                        Outcome.ASK,
                        "A split operation for a time: " + until + ", while " + Wording.list(others)
                                + (others.size() == 1 ? " does." : " do."));
    }
}
