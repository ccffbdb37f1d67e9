package bedledger.projections.findings;

import bedledger.language.Fertility;
import java.util.List;

/** Compost with animal material: carbon to nitrogen, heat and turns, 7 CFR 205.203(c)(2). */
record CompostProcess(RuleSheet sheet, Figures figures) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return inquiry.done(Fertility.PileBuilt.class).stream()
                .map(built -> judge(inquiry, built))
                .toList();
    }

    private Finding judge(Inquiry inquiry, Done<Fertility.PileBuilt> built) {
        PileLog log = PileLog.of(inquiry, built.fact().pile(), inquiry.asOf());
        Ingredients nature = Ingredients.of(built.fact());
        Draft draft = new Draft(sheet, inquiry, "pile " + log.pile(), built.day())
                .at(log.pile())
                .at(log.beds())
                .restsOn(log.entries());
        if (nature == Ingredients.PLANT) {
            return draft.citing("7 CFR 205.203(c)(3)")
                    .says(
                            Outcome.MET,
                            Wording.capital(log.words())
                                    + ": plant material only, so no compost process is asked for.");
        }
        PileVerdict verdict = NopProcess.judge(inquiry, figures, log);
        String unknown = nature == Ingredients.UNKNOWN
                ? " Whether it holds anything from animals is not recorded; it is judged as if it did."
                : "";
        return draft.counting(verdict.everything())
                .settledBy(settles(verdict.outcome()))
                .says(
                        verdict.outcome(),
                        Wording.capital(log.words()) + ": " + verdict.words() + "." + verdict.notes() + unknown);
    }

    private String settles(Outcome outcome) {
        return switch (outcome) {
            case MET -> "";
            case ASK -> "Ask the certifier how they read it, and keep the answer on file.";
            case INCOMPLETE -> "Enter what is missing from the pile's own log; never a reading that was not taken.";
            case NOT_MET ->
                "Under NOP 5021 a certifier may accept another documented process: show the log, the ingredients and"
                        + " at least " + figures.whole("guidance.days") + " days at " + figures.number("compost.low.f")
                        + " °F or more, and keep the answer on file. Until then it counts as raw manure.";
        };
    }
}
