package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.FieldId;
import bedledger.language.Land;
import bedledger.language.Planting;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** A rotation has more in it than cash crops: 7 CFR 205.205. The rule sets no number of years. */
record RotationCovers(RuleSheet sheet) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return inquiry.done(Land.FieldRegistered.class).stream()
                .flatMap(field -> finding(inquiry, field.fact().field()).stream())
                .toList();
    }

    private Optional<Finding> finding(Inquiry inquiry, FieldId field) {
        List<BedId> beds = inquiry.beds(List.of(field));
        TreeSet<Integer> years = new TreeSet<>();
        List<Done<Planting.CoverSown>> covers = new ArrayList<>();
        LocalDate last = LocalDate.MIN;
        for (BedId bed : beds) {
            for (BedStep step : inquiry.steps(bed)) {
                if (step.after().crops().stream().anyMatch(stand -> !stand.cover())) {
                    years.add(step.day().getYear());
                    last = step.day().isAfter(last) ? step.day() : last;
                }
                step.as(Planting.CoverSown.class)
                        .filter(one -> !covers.contains(one))
                        .ifPresent(covers::add);
            }
        }
        // One season shows no sequence.
        if (years.size() < 2) {
            return Optional.empty();
        }
        String span = years.first() + " to " + years.last();
        Draft draft = new Draft(sheet, inquiry, "field " + field + ", " + span, last)
                .at(field)
                .at(beds);
        if (covers.isEmpty()) {
            return Optional.of(
                    draft.restsOn(beds.stream()
                                    .flatMap(bed -> inquiry.steps(bed).stream())
                                    .filter(step -> step.after().crops().stream()
                                            .anyMatch(stand -> stand.since().equals(step.day())))
                                    .map(BedStep::number)
                                    .toList())
                            .settledBy(
                                    "Show the certifier how the rotation keeps organic matter, pests, nutrients and erosion in hand; enter"
                                            + " cover crops that were sown: did sow-cover.")
                            .says(
                                    Outcome.ASK,
                                    "Field " + field + ", " + span
                                            + ": no sod, cover crop, green manure or catch crop is recorded on any of its beds."));
        }
        String crops = covers.stream()
                .map(done -> done.fact().crop() + " " + done.day())
                .collect(Collectors.joining("; "));
        return Optional.of(draft.restsOn(covers.stream().map(Done::number).toList())
                .says(Outcome.MET, "Field " + field + ", " + span + ": cover crops in the rotation: " + crops + "."));
    }
}
