package bedledger.cli.report;

import bedledger.projections.balance.Balance;
import bedledger.projections.balance.Balance.Line;
import bedledger.projections.balance.Balance.Part;
import bedledger.projections.balance.Count;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The arithmetic of one balance, a row for each line, with the entries each is made of. */
record BalanceTable(Asked asked, String anchor, Balance balance) {
    String name() {
        return balance.of();
    }

    Table table() {
        List<Row> rows = new ArrayList<>();
        rows.add(count("counted on " + balance.from(), balance.opening()));
        balance.lines()
                .forEach(line ->
                        rows.add(row((line.sign() > 0 ? "+ " : "− ") + line.words(), number(line.sum()), parts(line))));
        rows.add(row("= should be there", number(balance.expected()), Phrase.NONE)
                .styled("sum"));
        rows.add(count("counted on " + balance.to(), balance.closing()));
        rows.add(row("difference", number(balance.difference()), difference()).styled("sum"));
        return Table.of(
                        anchor,
                        "Mass balance of " + balance.of() + ", " + balance.from() + " to " + balance.to() + ", in "
                                + balance.unit().symbol(),
                        "",
                        List.of("what", balance.unit().symbol(), "made up of"),
                        rows)
                .numbersIn(1, 2);
    }

    private Row count(String words, Optional<Count> count) {
        return row(
                words,
                count.map(Count::number).map(BalanceTable::number).orElse("no count"),
                count.map(Count::entries)
                        .map(entries -> asked.links().entries(entries))
                        .orElse(Phrase.NONE));
    }

    private static Row row(String words, String number, Phrase behind) {
        return Row.of(Cell.of(words).asHeader(), Cell.number(number), Cell.of(behind));
    }

    private Phrase parts(Line line) {
        return Phrase.joined(line.parts().stream().map(this::part).toList(), "; ");
    }

    private Phrase part(Part part) {
        String what = part.what().isEmpty() ? "" : " " + part.what();
        return Phrase.whole(part.day().toString())
                .plus(what + " " + part.amount() + " ")
                .plus(asked.links().entry(part.entry()));
    }

    private Phrase difference() {
        return Phrase.of(balance.difference()
                .map(difference -> difference.signum() == 0
                        ? "nothing is short"
                        : (difference.signum() < 0 ? "short" : "more than should be there") + percent())
                .orElse("incomplete: a count is missing"));
    }

    private String percent() {
        return balance.percent()
                .flatMap(percent -> balance.held()
                        .map(held -> ", " + percent.toPlainString() + " % of " + number(held) + " "
                                + balance.unit().symbol()))
                .orElse("");
    }

    /** Opening, in, out, expected, counted and difference, each with its unit. */
    List<Cell> figures() {
        return List.of(
                figure(balance.opening().map(Count::number)),
                figure(Optional.of(sum(1))),
                figure(Optional.of(sum(-1))),
                figure(balance.expected()),
                figure(balance.closing().map(Count::number)),
                figure(balance.difference()));
    }

    private Cell figure(Optional<BigDecimal> number) {
        return Cell.number(
                number.map(known -> number(known) + " " + balance.unit().symbol())
                        .orElse("not known"));
    }

    private BigDecimal sum(int sign) {
        return balance.lines().stream()
                .filter(line -> line.sign() == sign)
                .map(Line::sum)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    List<Phrase> missing() {
        return balance.missing().stream()
                .map(why -> Phrase.strong("Incomplete")
                        .plus(": ")
                        .plus(asked.links().linked(why)))
                .toList();
    }

    boolean isIncomplete() {
        return !balance.isComplete();
    }

    private static String number(Optional<BigDecimal> number) {
        return number.map(BalanceTable::number).orElse("not known");
    }

    static String number(BigDecimal number) {
        return number.toPlainString().replace('-', '−');
    }
}
