package bedledger.cli.prove;

import bedledger.cli.prove.BalanceView.LotView;
import bedledger.cli.prove.MockAuditView.BalancePick;
import bedledger.cli.prove.MockAuditView.LinkView;
import bedledger.cli.prove.MockAuditView.PickView;
import bedledger.cli.prove.MockAuditView.QuestionView;
import bedledger.cli.prove.MockAuditView.ReasonView;
import bedledger.cli.prove.MockAuditView.TraceView;
import bedledger.cli.read.TextTable;
import bedledger.projections.findings.Outcome;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A mock audit for people, at most 80 columns wide. */
final class MockAuditText {
    private static final int WIDTH = 80;
    private static final int SHOWN = 2;
    private final PrintStream out;
    private final MockAuditView view;

    MockAuditText(PrintStream out, MockAuditView view) {
        this.out = out;
        this.view = view;
    }

    void print(List<String> banner) {
        banner.forEach(out::println);
        lines("", "Mock audit, " + view.from() + " to " + view.on() + ", rule book " + view.rules());
        lines("", "Seed " + view.seed() + ", " + view.seedOf() + "; the same again with --seed " + view.seed());
        lines(
                "",
                "Picked " + view.traces().size() + " of " + view.traceable().things() + " sales and lots, and "
                        + view.balances().size() + " of " + view.balanceable().things()
                        + " crops and inputs, drawn at random, weighted to risk. The weights are our judgement (table "
                        + view.weights() + ").");
        for (int at = 0; at < view.traces().size(); at++) {
            print(at + 1, view.traces().get(at));
        }
        for (int at = 0; at < view.balances().size(); at++) {
            print(at + 1, view.balances().get(at));
        }
        out.println();
        lines("", "In all: " + counts() + ".");
        lines(
                "",
                "The book was read in " + seconds(view.readIn()) + " and held against the rules in "
                        + seconds(view.judgedIn())
                        + "; each answer's time comes after that. What was not written down was not timed: the paper"
                        + " behind an entry has to be found by hand. This is practice; the inspector asks what he or she"
                        + " chooses, and the certifier decides.");
    }

    private String counts() {
        List<String> outcomes = new ArrayList<>();
        view.traces().forEach(trace -> trace.links().forEach(link -> outcomes.add(link.outcome())));
        view.balances().forEach(balance -> outcomes.add(balance.outcome()));
        return java.util.Arrays.stream(Outcome.values())
                        .map(Outcome::words)
                        .map(words -> outcomes.stream().filter(words::equals).count() + " " + words)
                        .collect(Collectors.joining(", "))
                + " of " + outcomes.size() + " links and balances";
    }

    private void print(int number, TraceView trace) {
        picked("Trace-back " + number + ": " + trace.pick().name(), trace.pick(), view.traceable());
        trace.links().forEach(this::print);
        trace.lots().forEach(this::print);
        answered(trace.answeredIn(), trace.pick());
    }

    private void picked(String title, PickView pick, MockAuditView.PoolView pool) {
        out.println();
        lines("", title);
        lines("  ", "Picked for (weight " + number(pick.weight()) + " of " + number(pool.weight()) + " in all):");
        for (ReasonView reason : pick.why()) {
            hanging("    " + number(reason.weight()) + "  ", reason.says() + GapsCommand.numbers(reason.entries()));
        }
    }

    private void print(LinkView link) {
        hanging(
                "  " + padded(link.outcome().toUpperCase(Locale.ROOT), 12),
                link.link() + ": " + link.says() + GapsCommand.numbers(link.entries()));
        open(link.open());
    }

    private void open(List<QuestionView> open) {
        List<QuestionView> shown = shown(open);
        for (QuestionView question : shown) {
            String citation = question.citation().isEmpty() ? "" : " [" + question.citation() + "]";
            hanging("      - ", question.says() + GapsCommand.numbers(question.entries()) + citation);
            if (!question.settles().isEmpty()) {
                hanging("        ", (isCommand(question.settles()) ? "> " : "") + question.settles());
            }
        }
        if (open.size() > shown.size()) {
            lines("      ", "and " + (open.size() - shown.size()) + " more: bedledger check, bedledger gaps");
        }
    }

    /** The worst, one for each rule. */
    private static List<QuestionView> shown(List<QuestionView> open) {
        List<QuestionView> shown = new ArrayList<>();
        Set<String> rules = new HashSet<>();
        for (QuestionView question : open) {
            boolean another = question.citation().isEmpty() || rules.add(question.citation());
            if (another && shown.size() < SHOWN) {
                shown.add(question);
            }
        }
        return shown;
    }

    private static boolean isCommand(String text) {
        return text.startsWith("did ") || text.startsWith("correct ");
    }

    private void print(LotView lot) {
        hanging(
                "  " + padded("QUANTITY", 12),
                lot.lot() + ": " + BalanceView.number(lot.cameIn()) + " " + lot.unit() + " came in, "
                        + BalanceView.number(lot.wentOut()) + " went out, " + BalanceView.number(lot.left())
                        + " left on paper"
                        + (lot.notCounted().isEmpty() ? "" : "; not counted: " + String.join(", ", lot.notCounted())));
    }

    private void print(int number, BalancePick balance) {
        picked("Mass balance " + number + ": " + balance.pick().name(), balance.pick(), view.balanceable());
        hanging(
                "  " + padded(balance.outcome().toUpperCase(Locale.ROOT), 12),
                balance.from() + " to " + balance.to() + ", in " + balance.unit() + ": counted "
                        + known(balance.opening()) + " + came in " + BalanceView.number(balance.cameIn())
                        + " − went out " + BalanceView.number(balance.wentOut()) + " = expected "
                        + known(balance.expected()) + "; counted " + known(balance.counted()) + ", difference "
                        + known(balance.difference()));
        open(balance.open());
        answered(balance.answeredIn(), balance.pick());
    }

    private void answered(double seconds, PickView pick) {
        lines("  ", "Answered in " + seconds(seconds) + ". In full: bedledger " + pick.command());
    }

    private static String known(@Nullable BigDecimal number) {
        return number == null ? "not known" : BalanceView.number(number);
    }

    private static String number(double weight) {
        return weight == Math.rint(weight) ? Long.toString((long) weight) : Double.toString(weight);
    }

    private static String seconds(double seconds) {
        return String.format(Locale.ROOT, "%.3f s", seconds);
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    private void hanging(String first, String text) {
        List<String> wrapped = TextTable.wrapped(text, WIDTH - first.length());
        for (int at = 0; at < wrapped.size(); at++) {
            out.println((at == 0 ? first : " ".repeat(first.length())) + wrapped.get(at));
        }
    }

    private void lines(String indent, String text) {
        TextTable.wrapped(text, WIDTH - indent.length()).forEach(line -> out.println(indent + line));
    }
}
