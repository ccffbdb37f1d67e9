package bedledger.cli.prove;

import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.language.LotAccount;
import bedledger.language.LotMove;
import bedledger.projections.balance.Balance;
import bedledger.projections.balance.Count;
import bedledger.projections.balance.CropBalance;
import bedledger.projections.balance.Plausible;
import bedledger.projections.estimate.Estimate;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What {@code balance --json} prints: numbers in {@code unit}, exact as written. */
record BalanceView(
        boolean practice,
        String farm,
        String of,
        String from,
        String to,
        @Nullable String asKnownOn,
        String unit,
        boolean complete,
        List<String> missing,
        @Nullable CountView opening,
        List<LineView> lines,
        @Nullable BigDecimal expected,
        @Nullable CountView counted,
        @Nullable BigDecimal difference,
        @Nullable BigDecimal percent,
        List<LotView> lots,
        @Nullable PlausibleView seedToSale) {

    /** A count, and its entries. */
    record CountView(String day, BigDecimal number, List<Long> entries) {}

    /** What came in or went out in one way; {@code sign} is 1 or -1. */
    record LineView(String what, int sign, BigDecimal number, List<PartView> parts) {}

    /** What one entry says, as written. */
    record PartView(long entry, String day, String what, String amount) {}

    /** A lot on paper on the last day; its numbers are in its own unit. */
    record LotView(
            String lot,
            String unit,
            BigDecimal cameIn,
            BigDecimal wentOut,
            BigDecimal left,
            boolean beyondWhatItHeld,
            List<String> notCounted,
            List<Long> entries) {}

    /** Sowings, area, and the typical yield of it in kg. */
    record PlausibleView(
            List<StartView> starts,
            double squareMetres,
            @Nullable Double typicalLow,
            @Nullable Double typicalBest,
            @Nullable Double typicalHigh,
            List<String> remarks) {}

    /** One sowing or planting. */
    record StartView(long entry, String day, String words) {}

    static BalanceView of(ReadBook book, Balance balance, @Nullable CropBalance crop, @Nullable Plausible plausible) {
        return new BalanceView(
                book.opened().practice(),
                book.opened().farm(),
                balance.of(),
                balance.from().toString(),
                balance.to().toString(),
                book.asKnownOn() == null ? null : book.asKnownOn().toString(),
                balance.unit().symbol(),
                balance.isComplete(),
                balance.missing(),
                count(balance.opening()),
                balance.lines().stream().map(BalanceView::line).toList(),
                balance.expected().orElse(null),
                count(balance.closing()),
                balance.difference().orElse(null),
                balance.percent().orElse(null),
                crop == null
                        ? List.of()
                        : crop.lots().stream().flatMap(lot -> lot(lot).stream()).toList(),
                plausible == null ? null : view(plausible));
    }

    private static @Nullable CountView count(Optional<Count> count) {
        return count.map(one -> new CountView(one.day().toString(), one.number(), one.entries()))
                .orElse(null);
    }

    private static LineView line(Balance.Line line) {
        return new LineView(
                line.words(),
                line.sign(),
                line.sum(),
                line.parts().stream()
                        .map(part -> new PartView(
                                part.entry(),
                                part.day().toString(),
                                part.what(),
                                part.amount().toString()))
                        .toList());
    }

    static Optional<LotView> lot(LotAccount account) {
        return account.left()
                .map(left -> new LotView(
                        account.lot().toString(),
                        left.unit().symbol(),
                        sum(account, 1).number(),
                        sum(account, -1).number().abs(),
                        left.number(),
                        left.number().signum() < 0,
                        left.apart().stream()
                                .map(move -> move.amount() + " " + move.way().words())
                                .toList(),
                        account.moves().stream()
                                .map(move -> move.entry().number())
                                .distinct()
                                .sorted()
                                .toList()));
    }

    private static LotAccount.Left sum(LotAccount account, int sign) {
        List<LotMove> some = account.moves().stream()
                .filter(move -> move.way().sign() == sign)
                .toList();
        return account.sum(some, account.unit().orElseThrow());
    }

    private static PlausibleView view(Plausible plausible) {
        Optional<Estimate> typical = plausible.typical();
        return new PlausibleView(
                plausible.starts().stream()
                        .map(start -> new StartView(start.entry(), start.day().toString(), start.words()))
                        .toList(),
                plausible.squareMetres(),
                typical.filter(Estimate::hasBand).map(Estimate::low).orElse(null),
                typical.map(Estimate::best).orElse(null),
                typical.filter(Estimate::hasBand).map(Estimate::high).orElse(null),
                typical.map(Estimate::remarks).orElse(List.of()));
    }

    /** The arithmetic as a table: one row for each line and each entry behind it. */
    Output.Table table() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("opening", opening));
        for (LineView line : lines) {
            line.parts()
                    .forEach(part -> rows.add(List.of(
                            line.what(), part.day(), part.what(), part.amount(), "", "", Long.toString(part.entry()))));
            rows.add(List.of(
                    "total " + line.what(),
                    to,
                    "",
                    "",
                    Integer.toString(line.sign()),
                    line.number().toPlainString(),
                    ""));
        }
        rows.add(List.of("expected", to, "", "", "", expected == null ? "" : expected.toPlainString(), ""));
        rows.add(row("counted", counted));
        rows.add(List.of("difference", to, "", "", "", difference == null ? "" : difference.toPlainString(), ""));
        return new Output.Table(List.of("line", "day", "lot", "as_written", "sign", unit, "entries"), rows);
    }

    private List<String> row(String name, @Nullable CountView count) {
        return count == null
                ? List.of(name, name.equals("opening") ? from : to, "", "", "", "", "")
                : List.of(
                        name,
                        count.day(),
                        "",
                        "",
                        "",
                        count.number().toPlainString(),
                        count.entries().stream().map(String::valueOf).collect(Collectors.joining(" ")));
    }

    static String number(BigDecimal number) {
        return number.toPlainString().replace('-', '−');
    }

    String words(BigDecimal number) {
        return number(number) + " " + unit;
    }
}
