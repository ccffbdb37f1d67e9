package bedledger.projections.findings;

import bedledger.language.Care;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Products against pests only where prevention did not do, with the record that shows the need: 2018/848 Annex II Part I, 1.10.2. */
record PlantProtection(RuleSheet sheet) implements Rule {
    private record Answer(Outcome outcome, String words) {}

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<String, List<Done<Care.Sprayed>>> together = new LinkedHashMap<>();
        inquiry.done(Care.Sprayed.class)
                .forEach(done -> together.computeIfAbsent(
                                done.fact().product() + " in " + done.day().getYear(), key -> new ArrayList<>())
                        .add(done));
        return together.entrySet().stream()
                .map(all -> finding(inquiry, all.getKey(), all.getValue()))
                .toList();
    }

    private static Answer answer(Done<Care.Sprayed> spray) {
        String tried = spray.fact().triedFirst();
        String day = spray.day() + " (#" + spray.number() + ")";
        if (Said.NONE.in(tried)) {
            return new Answer(Outcome.NOT_MET, day + ": nothing was tried first");
        }
        List<String> lacks = new ArrayList<>();
        if (tried == null) {
            lacks.add("what was tried first");
        }
        if (spray.fact().target() == null) {
            lacks.add("against which pest or disease");
        }
        return lacks.isEmpty()
                ? new Answer(Outcome.MET, "")
                : new Answer(Outcome.INCOMPLETE, day + ": not recorded is " + String.join(", nor ", lacks));
    }

    private Finding finding(Inquiry inquiry, String subject, List<Done<Care.Sprayed>> all) {
        Outcome worst =
                Outcome.worst(all.stream().map(spray -> answer(spray).outcome()).toList());
        List<Done<Care.Sprayed>> told =
                all.stream().filter(spray -> answer(spray).outcome() == worst).toList();
        Draft draft = new Draft(sheet, inquiry, subject, told.get(0).day())
                .at(told.stream().flatMap(spray -> spray.fact().beds().stream()).toList())
                .restsOn(told.stream().map(Done::number).toList());
        return worst == Outcome.MET
                ? draft.says(worst, subject + ": each use names the pest and what was tried first.")
                : draft.settledBy(
                                worst == Outcome.INCOMPLETE
                                        ? "Correct the sprayings: --target \"…\" --tried-first \"…\"."
                                        : "Ask the control body; next time prevention comes first.")
                        .says(
                                worst,
                                subject + ", "
                                        + told.stream()
                                                .map(spray -> answer(spray).words())
                                                .collect(Collectors.joining("; "))
                                        + ".");
    }
}
