package bedledger.cli.prove;

import bedledger.cli.prove.BalanceView.LotView;
import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.language.LotAccount;
import bedledger.projections.audit.BalanceAnswer;
import bedledger.projections.audit.Candidate;
import bedledger.projections.audit.LinkAnswer;
import bedledger.projections.audit.Question;
import bedledger.projections.audit.Reason;
import bedledger.projections.audit.TraceAnswer;
import bedledger.projections.balance.Balance;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What {@code mock-audit --json} prints; times in seconds as measured, weights as in the table. */
record MockAuditView(
        boolean practice,
        String farm,
        String rules,
        String from,
        String on,
        @Nullable String asKnownOn,
        String seed,
        String seedOf,
        String weights,
        double readIn,
        double judgedIn,
        PoolView traceable,
        PoolView balanceable,
        List<TraceView> traces,
        List<BalancePick> balances) {

    /** How many things there were to pick from, and the sum of their weights. */
    record PoolView(int things, double weight) {}

    /** What was picked, and why. */
    record PickView(String kind, String name, double weight, List<ReasonView> why, String command) {}

    /** What speaks for a pick. */
    record ReasonView(String says, double weight, List<Long> entries) {}

    /** A trace-back. */
    record TraceView(PickView pick, String worst, List<LinkView> links, List<LotView> lots, double answeredIn) {}

    /** One link of it. */
    record LinkView(String link, String outcome, String says, List<Long> entries, List<QuestionView> open) {}

    /** What is open, and what would settle it: a command as typed after bedledger, or words. */
    record QuestionView(String outcome, String says, String settles, List<Long> entries, String citation) {}

    /** A mass balance in short; numbers in {@code unit}. */
    record BalancePick(
            PickView pick,
            String outcome,
            String from,
            String to,
            String unit,
            @Nullable BigDecimal opening,
            BigDecimal cameIn,
            BigDecimal wentOut,
            @Nullable BigDecimal expected,
            @Nullable BigDecimal counted,
            @Nullable BigDecimal difference,
            List<QuestionView> open,
            double answeredIn) {}

    /** The head, before anything was picked. */
    static MockAuditView of(ReadBook book, MockAuditCommand.Asked asked, double readIn, double judgedIn) {
        return new MockAuditView(
                book.opened().practice(),
                book.opened().farm(),
                asked.rules(),
                asked.from().toString(),
                asked.on().toString(),
                book.asKnownOn() == null ? null : book.asKnownOn().toString(),
                asked.seed(),
                asked.seedOf(),
                "mock-audit " + bedledger.projections.tables.Tables.EDITION,
                readIn,
                judgedIn,
                pool(asked.traceable()),
                pool(asked.balanceable()),
                new ArrayList<>(),
                new ArrayList<>());
    }

    private static PoolView pool(List<Candidate> all) {
        return new PoolView(
                all.size(), all.stream().mapToDouble(Candidate::weight).sum());
    }

    private static PickView pick(Candidate picked, String command) {
        return new PickView(
                bedledger.language.Words.of(picked.thing().kind()),
                picked.thing().name(),
                picked.weight(),
                picked.reasons().stream()
                        .map((Reason reason) -> new ReasonView(reason.words(), reason.weight(), reason.entries()))
                        .toList(),
                command);
    }

    void trace(Candidate picked, TraceAnswer answer, double answeredIn) {
        String id = picked.thing().id();
        String name = id.substring(id.indexOf(':') + 1);
        String command = id.startsWith("sale:")
                ? "entry " + name
                : "trace " + id.substring(0, id.indexOf(':')) + " " + (name.contains(" ") ? '"' + name + '"' : name);
        traces.add(new TraceView(
                pick(picked, command),
                answer.worst().words(),
                answer.links().stream().map(MockAuditView::link).toList(),
                answer.lots().stream()
                        .flatMap((LotAccount lot) -> BalanceView.lot(lot).stream())
                        .toList(),
                answeredIn));
    }

    private static LinkView link(LinkAnswer answer) {
        return new LinkView(
                answer.link().words(),
                answer.outcome().words(),
                answer.says(),
                answer.entries(),
                answer.open().stream().map(MockAuditView::question).toList());
    }

    private static QuestionView question(Question open) {
        return new QuestionView(open.outcome().words(), open.says(), open.settles(), open.entries(), open.citation());
    }

    void balance(Candidate picked, BalanceAnswer answer, double answeredIn) {
        Balance balance = answer.balance();
        String name = picked.thing().name();
        balances.add(new BalancePick(
                pick(picked, "balance " + (name.contains(" ") ? '"' + name + '"' : name)),
                answer.outcome().words(),
                balance.from().toString(),
                balance.to().toString(),
                balance.unit().symbol(),
                balance.opening().map(count -> count.number()).orElse(null),
                sum(balance, 1),
                sum(balance, -1),
                balance.expected().orElse(null),
                balance.closing().map(count -> count.number()).orElse(null),
                balance.difference().orElse(null),
                answer.open().stream().map(MockAuditView::question).toList(),
                answeredIn));
    }

    private static BigDecimal sum(Balance balance, int sign) {
        return balance.lines().stream()
                .filter(line -> line.sign() == sign)
                .map(Balance.Line::sum)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** One row for each link of each trace-back, and one for each balance. */
    Output.Table table() {
        List<List<String>> rows = new ArrayList<>();
        traces.forEach(trace -> trace.links()
                .forEach(link -> rows.add(row(
                        "trace",
                        trace.pick(),
                        link.link(),
                        link.outcome(),
                        link.says(),
                        link.open(),
                        trace.answeredIn()))));
        balances.forEach(balance -> rows.add(row(
                "balance", balance.pick(), "quantities", balance.outcome(), "", balance.open(), balance.answeredIn())));
        return new Output.Table(
                List.of("exercise", "pick", "weight", "link", "outcome", "says", "open", "answered_in_s"), rows);
    }

    private static List<String> row(
            String exercise,
            PickView pick,
            String link,
            String outcome,
            String says,
            List<QuestionView> open,
            double answeredIn) {
        return List.of(
                exercise,
                pick.name(),
                Double.toString(pick.weight()),
                link,
                outcome,
                says,
                open.stream().map(QuestionView::says).collect(Collectors.joining(" ")),
                Double.toString(answeredIn));
    }
}
