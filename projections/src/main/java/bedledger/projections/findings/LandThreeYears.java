package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.CropName;
import bedledger.language.FieldId;
import bedledger.language.Harvesting;
import bedledger.language.Land;
import bedledger.language.LotId;
import bedledger.language.SoldAs;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
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
                .map(pick -> doubted(inquiry, history, judged(history, pick)))
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

    /** Land that is clean as declared is in question after drift, whatever the certifier was told. */
    private static Judged doubted(Inquiry inquiry, LandHistory history, Judged judged) {
        if (judged.outcome() != Outcome.MET) {
            return judged;
        }
        return drift(inquiry, history, judged.pick())
                .map(done -> new Judged(
                        judged.pick(),
                        Outcome.ASK,
                        judged.because() + ", but “" + done.fact().what() + "” is on record for "
                                + Wording.list(done.fact().beds()) + " on " + done.day() + " (#" + done.number()
                                + "), and not whether anything prohibited came with it",
                        judged.arithmetic()))
                .orElse(judged);
    }

    private static Optional<Done<Land.IncidentReported>> drift(Inquiry inquiry, LandHistory history, Pick pick) {
        return inquiry.done(Land.IncidentReported.class).stream()
                .filter(done -> Said.DRIFT.in(done.fact().what()))
                .filter(done -> !done.day().isAfter(pick.day()) && pick.day().isBefore(history.cleanFrom(done.day())))
                .filter(done -> !Collections.disjoint(
                        done.fact().beds(), pick.harvest().fact().beds()))
                .max(Comparator.comparing(Done::day));
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
                .settledBy(alone ? early(inquiry, lots) : settles(first.outcome(), history.field()))
                .says(first.outcome(), sentence);
    }

    /** What was sold as not organic is where it belongs; the rule is about what goes out as organic. */
    private static String early(Inquiry inquiry, List<LotId> lots) {
        List<Sale> sales = lots.stream()
                .flatMap(lot -> inquiry.lineage().madeOf(lot).stream())
                .flatMap(lot -> inquiry.sales(lot).stream())
                .toList();
        boolean apart = !sales.isEmpty() && sales.stream().noneMatch(sale -> sale.as() == SoldAs.ORGANIC);
        return apart
                ? "No sale of it as organic is on record, and that is as it should be; nor does the rest go out as organic."
                : "Ask the certifier what becomes of the lot; it does not go out as organic.";
    }

    private static String settles(Outcome outcome, FieldId field) {
        return switch (outcome) {
            case ASK ->
                "Ask the certifier, with what was sprayed beside it and a residue test, if there is one; then enter what"
                        + " is known: did declare-land " + field + ".";
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
