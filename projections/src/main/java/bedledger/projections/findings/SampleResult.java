package bedledger.projections.findings;

import bedledger.language.LotId;
import bedledger.language.Oversight;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Residues that a test finds are for the certifier before anything is sold: 7 CFR 205.670, 205.671. */
record SampleResult(RuleSheet sheet, String settles) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return inquiry.done(Oversight.SampleTaken.class).stream()
                .map(taken -> finding(inquiry, taken))
                .toList();
    }

    private Finding finding(Inquiry inquiry, Done<Oversight.SampleTaken> taken) {
        Oversight.SampleTaken sample = taken.fact();
        List<Done<Oversight.SampleReported>> reports = inquiry.done(sample.sample(), Oversight.SampleReported.class);
        boolean found = reports.stream()
                .anyMatch(done -> Boolean.TRUE.equals(done.fact().detected()));
        Draft draft = new Draft(sheet, inquiry, "sample " + sample.sample(), taken.day())
                .at(sample.sample())
                .at(sample.beds())
                .restsOn(Stream.concat(
                                Stream.of(taken.number()), reports.stream().map(Done::number))
                        .toList());
        String what = "Sample " + sample.sample() + " of " + taken.day() + ": ";
        if (reports.isEmpty()) {
            return draft.settledBy("Enter what the laboratory found: did sample-result " + sample.sample()
                            + " --result \"…\" --detected no.")
                    .says(Outcome.INCOMPLETE, what + "no result is recorded.");
        }
        if (found) {
            return draft.lots(lots(inquiry, taken))
                    .settledBy(settles)
                    .says(Outcome.ASK, what + reports.get(0).fact().result() + "; something prohibited was found.");
        }
        boolean known = reports.stream().allMatch(done -> done.fact().detected() != null);
        return known
                ? draft.says(
                        Outcome.MET,
                        what + reports.get(0).fact().result() + "; nothing prohibited was found, as recorded.")
                : draft.settledBy("Correct the result: --detected yes or no.")
                        .says(
                                Outcome.INCOMPLETE,
                                what + reports.get(0).fact().result()
                                        + "; whether anything prohibited was found is not recorded.");
    }

    /** The lots sampled, and those picked from the beds sampled in the year after. */
    private static Set<LotId> lots(Inquiry inquiry, Done<Oversight.SampleTaken> taken) {
        Set<LotId> lots = new LinkedHashSet<>(taken.fact().lots());
        lots.addAll(inquiry.pickedAfter(fact -> fact.equals(taken.fact()), 1).getOrDefault(taken.number(), Set.of()));
        return lots;
    }
}
