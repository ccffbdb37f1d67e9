package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.CropName;
import bedledger.language.FieldId;
import bedledger.language.Harvesting;
import bedledger.language.Land;
import bedledger.language.LotId;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Two years of organic management before annuals are sown, three before perennials are harvested: 2018/848 Annex II Part I, 1.7.1. */
record Conversion(RuleSheet sheet, Figures figures) implements Rule {

    /** One pick from one bed. */
    private record Pick(
            Done<Harvesting.Harvested> harvest,
            FieldId field,
            @Nullable LocalDate sown) {}

    private record Judged(Pick pick, Outcome outcome, String because, String arithmetic) {
        String together() {
            Object each = outcome == Outcome.NOT_MET ? pick.harvest().number() : because;
            return outcome + " " + pick.harvest().day().getYear() + " " + each;
        }
    }

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<FieldId, Map<String, List<Judged>>> fields = new TreeMap<>(Wording.NATURAL);
        inquiry.beds().stream()
                .flatMap(bed -> picks(inquiry, bed))
                .map(pick -> judged(inquiry, pick))
                .forEach(judged -> fields.computeIfAbsent(judged.pick().field(), field -> new TreeMap<>())
                        .computeIfAbsent(judged.together(), key -> new ArrayList<>())
                        .add(judged));
        return fields.values().stream()
                .map(Map::values)
                .flatMap(Collection::stream)
                .map(judged -> finding(inquiry, judged))
                .toList();
    }

    private static Stream<Pick> picks(Inquiry inquiry, BedId bed) {
        return inquiry.steps(bed).stream()
                .filter(BedStep::own)
                .flatMap(step -> step.as(Harvesting.Harvested.class).stream()
                        .flatMap(harvest -> Optional.ofNullable(step.before().field()).stream()
                                .map(field -> new Pick(
                                        harvest,
                                        field,
                                        sown(step.before(), harvest.fact().crop())))));
    }

    private static @Nullable LocalDate sown(BedState state, CropName crop) {
        return state.crops().stream()
                .filter(stand -> !stand.cover() && stand.crop().equals(crop))
                .map(BedState.Stand::since)
                .min(Comparator.naturalOrder())
                .orElse(null);
    }

    /** Since when the field is managed organically, as the record has it. */
    private Optional<LocalDate> start(Inquiry inquiry, FieldId field, LocalDate day) {
        LandHistory history = LandHistory.of(inquiry, figures, field);
        Optional<LocalDate> declared = Stream.of(history.noneSince(), history.lastApplied(day))
                .flatMap(Optional::stream)
                .max(Comparator.naturalOrder());
        if (inquiry.is(Reading.DECLARED_SINCE_COUNTS_AS_CONVERSION)) {
            return declared;
        }
        LocalDate entered = inquiry.done(field, Land.FieldRegistered.class).stream()
                .map(Done::day)
                .min(Comparator.naturalOrder())
                .orElse(LocalDate.MIN);
        return declared.map(since -> since.isBefore(entered) ? entered : since);
    }

    private Judged judged(Inquiry inquiry, Pick pick) {
        CropName crop = pick.harvest().fact().crop();
        Optional<LocalDate> start = start(inquiry, pick.field(), pick.harvest().day());
        if (start.isEmpty()) {
            return new Judged(pick, Outcome.INCOMPLETE, "nothing is recorded of when its conversion began", "");
        }
        boolean perennial = Said.PERENNIAL.in(crop.name());
        LocalDate counted = perennial ? pick.harvest().day() : pick.sown();
        String begun = "conversion counted from " + start.get();
        if (counted == null) {
            return new Judged(pick, Outcome.INCOMPLETE, begun + ", and when the crop was sown is not recorded", "");
        }
        LocalDate over = over(start.get(), perennial);
        String sum = start.get() + " + " + months(perennial) + " months = " + over + "; "
                + (perennial ? "picked " : "sown ") + counted;
        return counted.isBefore(over)
                ? new Judged(pick, Outcome.NOT_MET, begun, sum)
                : new Judged(pick, Outcome.MET, begun, start.get() + " + " + months(perennial) + " months = " + over);
    }

    private int months(boolean perennial) {
        return figures.whole(perennial ? "conversion.perennial" : "conversion.annual");
    }

    private LocalDate over(LocalDate start, boolean perennial) {
        return start.plusMonths(months(perennial));
    }

    private Finding finding(Inquiry inquiry, List<Judged> judged) {
        Judged first = judged.get(0);
        FieldId field = first.pick().field();
        Done<Harvesting.Harvested> harvest = first.pick().harvest();
        List<LotId> lots = judged.stream()
                .map(one -> one.pick().harvest().fact().lot())
                .distinct()
                .toList();
        boolean alone = first.outcome() == Outcome.NOT_MET;
        String subject = alone
                ? field + " " + harvest.fact().crop() + ", lot "
                        + harvest.fact().lot()
                : field + ", harvests of " + harvest.day().getYear();
        String sentence = alone
                ? Wording.capital(harvest.fact().crop().name()) + " picked in field " + field + " on " + harvest.day()
                        + " is in conversion: " + first.because()
                        + ". As in conversion it may be sold after " + figures.whole("conversion.product") + " months."
                : "Field " + field + ": " + first.because() + "; " + Wording.lots(lots) + ".";
        return new Draft(sheet, inquiry, subject, harvest.day())
                .at(field)
                .at(judged.stream()
                        .flatMap(one -> one.pick().harvest().fact().beds().stream())
                        .toList())
                .lots(lots)
                .restsOn(LandHistory.of(inquiry, figures, field).entries())
                .restsOn(judged.stream()
                        .map(one -> one.pick().harvest().number())
                        .toList())
                .counting(first.arithmetic())
                .settledBy(settles(first.outcome(), field))
                .says(first.outcome(), sentence);
    }

    private static String settles(Outcome outcome, FieldId field) {
        return switch (outcome) {
            case NOT_MET ->
                "Do not sell it as organic, unless the control body has recognised an earlier period (Article 10(3)); enter that: did"
                        + " declare-land " + field + " --none-since DATE --evidence \"recognised by …\".";
            case INCOMPLETE ->
                "Enter when organic management began and what shows it: did declare-land " + field
                        + " --none-since DATE --evidence \"…\"; and the sowing.";
            default -> "";
        };
    }

    @Override
    public List<Wait> waits(Inquiry inquiry, BedId bed, CropName crop) {
        BedState state = inquiry.farm().bed(bed).on(inquiry.asOf());
        FieldId field = state.field();
        LocalDate sown = sown(state, crop);
        boolean perennial = Said.PERENNIAL.in(crop.name());
        if (field == null || (sown == null && !perennial)) {
            return List.of();
        }
        return start(inquiry, field, inquiry.asOf()).stream()
                .filter(start -> perennial || (sown != null && sown.isBefore(over(start, false))))
                .map(start -> new Wait(
                        sheet.id(),
                        perennial ? over(start, true) : null,
                        perennial
                                ? "Field " + field + ": conversion counted from " + start
                                        + ", so no organic harvest before " + over(start, true) + "."
                                : Wording.capital(crop.name()) + " in " + bed + " was sown on " + sown
                                        + ", before the conversion of field " + field + " is over on "
                                        + over(start, false)
                                        + ": all of it is in conversion.",
                        LandHistory.of(inquiry, figures, field).entries(),
                        sheet.citation()))
                .toList();
    }

    @Override
    public List<Doubt> doubts(Inquiry inquiry, BedId bed, CropName crop) {
        FieldId field = inquiry.farm().bed(bed).on(inquiry.asOf()).field();
        if (field == null || Said.PERENNIAL.in(crop.name())) {
            return List.of();
        }
        return start(inquiry, field, inquiry.asOf()).stream()
                .filter(start -> inquiry.asOf().isBefore(over(start, false)))
                .map(start -> new Doubt(
                        sheet.id(),
                        Outcome.NOT_MET,
                        "Sown before " + over(start, false) + ", " + crop + " in " + bed
                                + " is in conversion, whenever it is picked (conversion counted from " + start + ").",
                        LandHistory.of(inquiry, figures, field).entries(),
                        sheet.citation()))
                .toList();
    }
}
