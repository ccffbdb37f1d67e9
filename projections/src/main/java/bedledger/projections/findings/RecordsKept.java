package bedledger.projections.findings;

import bedledger.language.Fact;
import bedledger.language.Harvesting;
import bedledger.language.Land;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Five years of records are at hand, also those from before the book: 7 CFR 205.103(b)(4). */
record RecordsKept(RuleSheet sheet, Figures figures) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        List<Done<? extends Fact>> found = Stream.<Done<? extends Fact>>concat(
                        inquiry.done(Land.Found.class).stream()
                                .filter(done -> done.fact().crop() != null
                                        || done.fact().coverCrop() != null),
                        inquiry.done(Harvesting.LotFound.class).stream())
                .toList();
        return found.isEmpty() ? List.of() : List.of(finding(inquiry, found));
    }

    private Finding finding(Inquiry inquiry, List<Done<? extends Fact>> found) {
        LocalDate begun = inquiry.farm().inForce().stream()
                .map(entry -> entry.head().doneOn())
                .min(Comparator.naturalOrder())
                .orElseThrow();
        int years = figures.whole("retention.us.years");
        LocalDate until = begun.plusYears(years);
        boolean over = !inquiry.asOf().isBefore(until);
        Draft draft = new Draft(sheet, inquiry, "records from before the book", begun)
                .restsOn(found.stream().map(Done::number).toList())
                .counting(begun + " + " + years + " years = " + until);
        String what =
                "The book begins on " + begun + ", and what was found then shows that the farm was at work before";
        return over
                ? draft.says(Outcome.MET, what + "; since " + until + " the book itself spans the " + years + " years.")
                : draft.settledBy("Keep the records from before, and have them at hand with this book until " + until
                                + "; if there are none, tell the certifier.")
                        .says(
                                Outcome.ASK,
                                what + ": until " + until + " the " + years
                                        + " years that an inspector may ask for reach back before it.");
    }
}
