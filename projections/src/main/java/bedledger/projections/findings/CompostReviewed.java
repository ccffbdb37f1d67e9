package bedledger.projections.findings;

import bedledger.language.BookKeeping;
import bedledger.language.Fertility;
import java.time.LocalDate;
import java.util.List;

/** The farm's own compost log is looked through and signed: 21 CFR 112.161(b) with 112.60(b)(2). */
record CompostReviewed(RuleSheet sheet) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return inquiry.done(Fertility.PileBuilt.class).stream()
                .filter(built -> Ingredients.of(built.fact()) != Ingredients.PLANT)
                .map(built -> PileLog.of(inquiry, built.fact().pile(), inquiry.asOf()))
                .filter(log -> log.used().isPresent() && !log.readings().isEmpty())
                .map(log -> finding(inquiry, log))
                .toList();
    }

    private Finding finding(Inquiry inquiry, PileLog log) {
        LocalDate from = log.readings().firstKey();
        LocalDate to = log.readings().lastKey();
        List<Done<BookKeeping.PeriodSignedOff>> signed = inquiry.done(BookKeeping.PeriodSignedOff.class).stream()
                .filter(done ->
                        !done.fact().from().isAfter(from) && !done.fact().to().isBefore(to))
                .toList();
        Draft draft = new Draft(sheet, inquiry, "log of pile " + log.pile(), to)
                .at(log.pile())
                .at(log.beds())
                .restsOn(log.entries())
                .restsOn(signed.stream().map(Done::number).toList());
        String what = "The log of pile " + log.pile() + ", " + from + " to " + to + ", ";
        return signed.isEmpty()
                ? draft.settledBy("Look it through and sign: did sign-off --from " + from + " --to " + to + ".")
                        .says(Outcome.INCOMPLETE, what + "is not signed off by whoever answers for it.")
                : draft.says(
                        Outcome.MET, what + "was signed off on " + signed.get(0).day() + ".");
    }
}
