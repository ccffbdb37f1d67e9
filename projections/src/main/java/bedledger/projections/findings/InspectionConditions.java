package bedledger.projections.findings;

import bedledger.language.Entry;
import bedledger.language.Oversight;
import bedledger.projections.oversight.AskedCondition;
import java.util.List;

/** What an inspection asked for is answered by its day: 7 CFR 205.400(a), 205.662(a). */
record InspectionConditions(RuleSheet sheet) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return AskedCondition.of(inquiry.farm(), inquiry.asOf()).stream()
                .map(asked -> finding(inquiry, asked))
                .toList();
    }

    private Finding finding(Inquiry inquiry, AskedCondition asked) {
        Entry inspection = asked.inspection();
        String what = "Condition " + asked.condition().id() + " of the inspection of "
                + inspection.head().doneOn() + " (" + asked.condition().words() + "), due "
                + asked.condition().due() + ": ";
        Draft draft = new Draft(
                        sheet,
                        inquiry,
                        "condition " + asked.condition().id() + " of "
                                + inspection.head().doneOn(),
                        inspection.head().doneOn())
                .restsOn(inspection)
                .restsOn(asked.answers().stream().map(Entry::number).toList());
        String answer = "did answer-condition " + asked.condition().id() + " --inspection " + inspection.number()
                + " --how \"…\" --evidence \"…\"";
        if (asked.isAccepted()) {
            return draft.says(Outcome.MET, what + "answered, and accepted by the certifier, as recorded.");
        }
        if (asked.isAnswered()) {
            Entry last = asked.answers().get(asked.answers().size() - 1);
            boolean late = last.head().doneOn().isAfter(asked.condition().due());
            return draft.settledBy("Enter the certifier's word once it is there: " + answer + " --accepted yes.")
                    .says(
                            Outcome.ASK,
                            what + "answered on " + last.head().doneOn() + (late ? ", after that day" : "") + " ("
                                    + ((Oversight.ConditionAnswered) last.fact()).how()
                                    + "); whether the certifier has accepted it is not recorded.");
        }
        boolean overdue = inquiry.asOf().isAfter(asked.condition().due());
        return draft.settledBy("Answer it, and enter that: " + answer
                        + (overdue ? "; tell the certifier that it is late." : "."))
                .says(
                        overdue ? Outcome.NOT_MET : Outcome.INCOMPLETE,
                        what + (overdue ? "not answered, as far as the book says." : "still open."));
    }
}
