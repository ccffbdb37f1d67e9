package bedledger.projections.findings;

import bedledger.language.BedWork;
import java.util.List;

/** Residue is not burnt to be rid of it: 7 CFR 205.203(e)(3). */
record ResidueBurnt(RuleSheet sheet) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return inquiry.done(BedWork.ResidueHauledOff.class).stream()
                .filter(done -> Said.BURNT.in(done.fact().to()))
                .map(done -> finding(inquiry, done))
                .toList();
    }

    private Finding finding(Inquiry inquiry, Done<BedWork.ResidueHauledOff> done) {
        String note = done.entry().head().note();
        String where = Wording.list(done.fact().beds());
        Draft draft = new Draft(sheet, inquiry, where + " residue burnt", done.day())
                .at(done.fact().beds())
                .restsOn(done.entry());
        String what = "Residue of " + where + " went to “" + done.fact().to() + "” on " + done.day() + ": ";
        if (Said.DISEASE.in(note) || Said.DISEASE.in(done.fact().to())) {
            return draft.settledBy("Keep what showed the disease; the certifier may ask for it.")
                    .says(Outcome.ASK, what + "burning is for stopping disease only, which is given as the reason.");
        }
        return draft.settledBy(
                        "If it was to stop a disease, correct the entry and say which: --note \"…\"; otherwise ask the certifier.")
                .says(
                        note == null ? Outcome.INCOMPLETE : Outcome.NOT_MET,
                        what
                                + (note == null
                                        ? "burning is for stopping disease only, and no reason is recorded."
                                        : "burning is for stopping disease only, and the note gives another reason."));
    }
}
