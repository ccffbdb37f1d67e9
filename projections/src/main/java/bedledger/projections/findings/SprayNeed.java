package bedledger.projections.findings;

import bedledger.language.Care;
import java.util.List;

/** A spray only where what comes first did not suffice, and recorded so: 7 CFR 205.206(e). */
record SprayNeed(RuleSheet sheet) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return inquiry.done(Care.Sprayed.class).stream()
                .map(spray -> finding(inquiry, spray))
                .toList();
    }

    private Finding finding(Inquiry inquiry, Done<Care.Sprayed> spray) {
        Care.Sprayed fact = spray.fact();
        String beds = Wording.list(fact.beds());
        String tried = fact.triedFirst();
        String what = fact.product() + " sprayed on " + beds + " on " + spray.day();
        Draft draft = new Draft(sheet, inquiry, beds + " " + fact.product(), spray.day())
                .at(fact.beds())
                .restsOn(spray.entry());
        if (tried == null || tried.isBlank()) {
            return draft.settledBy(
                            "Correct the spraying with what was tried: --tried-first \"row cover, hand picking\".")
                    .says(Outcome.INCOMPLETE, what + ": what was tried first is not recorded.");
        }
        return Said.NONE.in(tried)
                ? draft.settledBy("Ask the certifier; next time prevention and mechanical means come first.")
                        .says(Outcome.NOT_MET, what + ": nothing was tried first.")
                : draft.says(Outcome.MET, what + " after " + tried + ".");
    }
}
