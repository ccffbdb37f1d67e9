package bedledger.projections.findings;

import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.LotAccount;
import bedledger.language.LotId;
import bedledger.language.LotMove;
import java.util.List;
import java.util.Optional;

/** No more goes out of a lot than came into it: 7 CFR 205.103. The rule sets no tolerance. */
record LotOversold(RuleSheet sheet) implements Rule {
    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return inquiry.farm().lots().stream()
                .sorted(Wording.NATURAL)
                .map(lot -> LotAccount.of(inquiry.farm(), lot, inquiry.asOf()))
                .flatMap(account -> finding(inquiry, account).stream())
                .toList();
    }

    private Optional<Finding> finding(Inquiry inquiry, LotAccount account) {
        return account.left()
                .filter(left -> left.number().signum() < 0)
                .flatMap(left -> account.opening().map(opening -> over(inquiry, account, opening, left)));
    }

    private Finding over(Inquiry inquiry, LotAccount account, Entry opening, LotAccount.Left left) {
        LotId lot = account.lot();
        List<LotMove> counted = account.moves().stream()
                .filter(move -> !left.apart().contains(move))
                .toList();
        String others = left.apart().isEmpty() ? "" : " What went out in other units is not counted here.";
        return new Draft(sheet, inquiry, "lot " + lot, opening.head().doneOn())
                .lots(List.of(lot))
                .restsOn(counted.stream().map(move -> move.entry().number()).toList())
                .counting(sum(counted) + " = " + left)
                .settledBy(
                        "Look for a line put to the wrong lot, a weight written down wrong, or a harvest that was not entered, and"
                                + " correct it.")
                .says(
                        Outcome.ASK,
                        inquiry.lineage()
                                        .crop(lot)
                                        .map(CropName::name)
                                        .map(Wording::capital)
                                        .orElse("Several crops")
                                + ", lot " + lot + ": more went out than came in, " + left + " on paper." + others);
    }

    private static String sum(List<LotMove> moves) {
        StringBuilder sum = new StringBuilder();
        for (LotMove move : moves) {
            sum.append(sum.isEmpty() ? "" : move.way().sign() < 0 ? " − " : " + ")
                    .append(move.amount())
                    .append(" ")
                    .append(move.way().words());
        }
        return sum.toString();
    }
}
