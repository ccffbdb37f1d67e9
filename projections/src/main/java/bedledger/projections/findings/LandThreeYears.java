package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.CropName;
import bedledger.language.FieldId;
import bedledger.language.Harvesting;
import bedledger.language.LotId;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** No prohibited substance for three years before harvest, 7 CFR 205.202(b); the clock ends at harvest. */
record LandThreeYears(RuleSheet sheet, Figures figures) implements Rule {

    private record Pick(Done<Harvesting.Harvested> harvest, FieldId field) {
        LocalDate day() {
            return harvest.day();
        }

        LotId lot() {
            return harvest.fact().lot();
        }
    }

    private record Judged(Pick pick, Outcome outcome, String because, String arithmetic) {
        /** A lot too early is told on its own; what is well or unknown is told once for a field and year. */
        String together() {
            Object each = outcome == Outcome.NOT_MET ? pick.harvest().number() : because;
            return outcome + " " + pick.day().getYear() + " " + each;
        }
    }

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<FieldId, Map<Long, Pick>> byField = new TreeMap<>(Wording.NATURAL);
        inquiry.beds().stream()
                .flatMap(bed -> picks(inquiry, bed))
                .forEach(pick -> byField.computeIfAbsent(pick.field(), field -> new TreeMap<>())
                        .put(pick.harvest().number(), pick));
        return byField.entrySet().stream()
                .flatMap(field ->
                        findings(inquiry, field.getKey(), field.getValue().values()))
                .toList();
    }

    private static Stream<Pick> picks(Inquiry inquiry, BedId bed) {
        return inquiry.steps(bed).stream()
                .filter(BedStep::own)
                .flatMap(step -> step.as(Harvesting.Harvested.class).stream()
                        .flatMap(harvest -> Optional.ofNullable(step.before().field()).stream()
                                .map(field -> new Pick(harvest, field))));
    }

    private Stream<Finding> findings(Inquiry inquiry, FieldId field, Collection<Pick> picks) {
        LandHistory history = LandHistory.of(inquiry, figures, field);
        Map<String, List<Judged>> together = new TreeMap<>();
        picks.stream()
                .sorted(Comparator.comparing(Pick::day)
                        .thenComparing(pick -> pick.harvest().number()))
                .map(pick -> judged(history, pick))
                .forEach(judged -> together.computeIfAbsent(judged.together(), key -> new ArrayList<>())
                        .add(judged));
        return together.values().stream().map(judged -> finding(inquiry, history, judged));
    }

    private static Judged judged(LandHistory history, Pick pick) {
        Optional<LocalDate> applied = history.lastApplied(pick.day());
        Optional<LocalDate> since = applied.or(history::noneSince);
        if (since.isEmpty()) {
            return new Judged(pick, Outcome.INCOMPLETE, "nothing is recorded of what was put on it before", "");
        }
        LocalDate clean = history.cleanFrom(since.get());
        boolean late = !pick.day().isBefore(clean);
        String what = applied.isPresent()
                ? "a prohibited substance was last applied on " + since.get()
                : "nothing prohibited is declared since " + since.get();
        String sum = since.get() + " + " + history.years() + " years = " + clean;
        if (late) {
            return new Judged(pick, Outcome.MET, what, sum);
        }
        String early = sum + "; " + pick.day() + " is " + Wording.days(ChronoUnit.DAYS.between(pick.day(), clean))
                + " before it";
        return new Judged(pick, applied.isPresent() ? Outcome.NOT_MET : Outcome.INCOMPLETE, what, early);
    }

    private Finding finding(Inquiry inquiry, LandHistory history, List<Judged> judged) {
        Judged first = judged.get(0);
        List<LotId> lots =
                judged.stream().map(one -> one.pick().lot()).distinct().toList();
        boolean alone = first.outcome() == Outcome.NOT_MET;
        Done<Harvesting.Harvested> harvest = first.pick().harvest();
        String subject = alone
                ? history.field() + " " + harvest.fact().crop() + ", lot "
                        + first.pick().lot()
                : history.field() + ", harvests of " + first.pick().day().getYear();
        String sentence = alone
                ? Wording.capital(harvest.fact().crop().name()) + " picked in field " + history.field() + " on "
                        + harvest.day() + ": " + first.because() + ", so no organic harvest before "
                        + history.lastApplied(harvest.day())
                                .map(history::cleanFrom)
                                .orElseThrow() + "."
                : "Field " + history.field() + ": " + first.because() + "; " + Wording.lots(lots) + ".";
        return new Draft(sheet, inquiry, subject, first.pick().day())
                .at(history.field())
                .at(judged.stream()
                        .flatMap(one -> one.pick().harvest().fact().beds().stream())
                        .toList())
                .lots(lots)
                .restsOn(history.entries())
                .restsOn(judged.stream()
                        .map(one -> one.pick().harvest().number())
                        .toList())
                .counting(first.arithmetic())
                .settledBy(settles(first.outcome(), history.field()))
                .says(first.outcome(), sentence);
    }

    private static String settles(Outcome outcome, FieldId field) {
        return switch (outcome) {
            case NOT_MET -> "Ask the certifier what becomes of the lot; it does not go out as organic.";
            case INCOMPLETE ->
                "Enter what the land was used for, with its evidence: did declare-land " + field
                        + " --none-since DATE --evidence \"…\", or --last-applied DATE.";
            default -> "";
        };
    }

    @Override
    public List<Wait> waits(Inquiry inquiry, BedId bed, CropName crop) {
        FieldId field = fieldOf(inquiry, bed);
        if (field == null) {
            return List.of();
        }
        LandHistory history = LandHistory.of(inquiry, figures, field);
        return history
                .lastApplied(inquiry.asOf())
                .map(applied -> new Wait(
                        sheet.id(),
                        history.cleanFrom(applied),
                        "Field " + field + ": a prohibited substance was last applied on " + applied
                                + ", so no organic harvest before " + history.cleanFrom(applied) + ".",
                        history.entries(),
                        sheet.citation()))
                .stream()
                .toList();
    }

    private static @Nullable FieldId fieldOf(Inquiry inquiry, BedId bed) {
        return inquiry.farm().bed(bed).on(inquiry.asOf()).field();
    }
}
