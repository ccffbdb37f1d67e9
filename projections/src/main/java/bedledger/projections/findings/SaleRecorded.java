package bedledger.projections.findings;

import bedledger.language.Selling;
import bedledger.language.SoldAs;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A sale can be traced to a buyer and a document: 7 CFR 205.103(b)(2), and (b)(3) since the enforcement rule. */
record SaleRecorded(RuleSheet sheet, String newer, LocalDate since) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        List<Done<Selling.Sold>> sold = inquiry.done(Selling.Sold.class).stream()
                .filter(done -> done.fact().as() != SoldAs.NOT_ORGANIC)
                .toList();
        return Yearly.of(sold, Done::day).entrySet().stream()
                .map(year -> finding(inquiry, year.getKey(), year.getValue()))
                .toList();
    }

    private static List<String> lacks(Selling.Sold sold) {
        List<String> lacks = new ArrayList<>();
        if (sold.invoice() == null) {
            lacks.add("no invoice or list");
        }
        if (sold.buyer() == null) {
            lacks.add("no buyer");
        }
        return lacks;
    }

    private Finding finding(Inquiry inquiry, int year, List<Done<Selling.Sold>> all) {
        List<Done<Selling.Sold>> lacking =
                all.stream().filter(done -> !lacks(done.fact()).isEmpty()).toList();
        List<Done<Selling.Sold>> told = lacking.isEmpty() ? all : lacking;
        LocalDate day = told.get(told.size() - 1).day();
        Draft draft = new Draft(sheet, inquiry, "sales of " + year, day)
                .restsOn(told.stream().map(Done::number).toList())
                .citing(day.isBefore(since) ? sheet.citation() : newer);
        if (lacking.isEmpty()) {
            return draft.says(
                    Outcome.MET,
                    "All " + all.size() + " sales of " + year
                            + " as organic or in transition name a buyer and a document.");
        }
        return draft.settledBy(
                        "Correct them: --buyer \"who, or which market\" and --invoice \"number, or the day's list\".")
                .says(
                        Outcome.INCOMPLETE,
                        lacking.size() + " of " + all.size() + " sales of " + year
                                + " as organic or in transition cannot be followed on: "
                                + lacking.stream()
                                        .map(done -> "#" + done.number() + " " + String.join(", ", lacks(done.fact())))
                                        .collect(Collectors.joining("; "))
                                + ".");
    }
}
