package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.CropName;
import bedledger.language.FieldId;
import bedledger.language.Land;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Leguminous crops in the multiannual rotation, as a main or a cover crop: 2018/848 Annex II Part I, 1.9.2(a). */
record Legumes(RuleSheet sheet, Figures figures) implements Rule {
    private static final Set<String> FAMILIES = Set.of("Fabaceae", "Leguminosae");

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return inquiry.done(Land.FieldRegistered.class).stream()
                .flatMap(field -> finding(inquiry, field.fact().field()).stream())
                .toList();
    }

    private Optional<Finding> finding(Inquiry inquiry, FieldId field) {
        TreeSet<Integer> years = new TreeSet<>();
        Map<String, BedStep> legumes = new TreeMap<>();
        TreeSet<String> unknown = new TreeSet<>();
        TreeSet<Long> plantings = new TreeSet<>();
        LocalDate last = LocalDate.MIN;
        List<BedId> beds = inquiry.beds(List.of(field));
        for (BedId bed : beds) {
            for (BedStep step : inquiry.steps(bed)) {
                for (BedState.Stand stand : step.after().crops()) {
                    years.add(step.day().getYear());
                    plantings.add(stand.entry());
                    last = step.day().isAfter(last) ? step.day() : last;
                    note(inquiry, stand.crop(), step, legumes, unknown);
                }
            }
        }
        if (years.size() < 2) {
            return Optional.empty();
        }
        Draft draft = new Draft(sheet, inquiry, "field " + field + ", " + years.first() + " to " + years.last(), last)
                .at(field)
                .at(beds);
        if (!legumes.isEmpty()) {
            return Optional.of(draft.restsOn(
                            legumes.values().stream().map(BedStep::number).toList())
                    .says(
                            Outcome.MET,
                            "Field " + field + ": legumes in the rotation: "
                                    + legumes.entrySet().stream()
                                            .map(one -> one.getKey() + " "
                                                    + one.getValue().day())
                                            .collect(Collectors.joining("; "))
                                    + "."));
        }
        int asked = figures.whole("legumes.years");
        Outcome outcome =
                !unknown.isEmpty() ? Outcome.INCOMPLETE : years.size() >= asked ? Outcome.NOT_MET : Outcome.ASK;
        return Optional.of(draft.restsOn(plantings)
                .settledBy(
                        unknown.isEmpty()
                                ? "Put a legume into the rotation, as a crop or under a cover, or show the control body the plan; greenhouses have"
                                        + " rules of their own."
                                : "Enter the families: did add-crop CROP --family FAMILY.")
                .says(
                        outcome,
                        "Field " + field + ", crops in " + years.size()
                                + " years: no legume is recorded, neither as a crop nor as a cover"
                                + (unknown.isEmpty() ? "" : "; of no known family: " + String.join(", ", unknown))
                                + ". The rule sets no number of years; " + asked
                                + " seasons without are read as too many."));
    }

    private static void note(
            Inquiry inquiry, CropName crop, BedStep step, Map<String, BedStep> legumes, Set<String> unknown) {
        Set<String> families = inquiry.families(crop);
        if (families.isEmpty()) {
            unknown.add(crop.name());
        } else if (families.stream().anyMatch(FAMILIES::contains)) {
            legumes.putIfAbsent(crop.name(), step);
        }
    }
}
