package bedledger.cli.packet;

import bedledger.cli.packet.InspectView.Inspected;
import bedledger.cli.read.Output;
import bedledger.cli.read.TextTable;
import java.io.PrintStream;
import java.util.List;

/** Says for people what an inspection found. */
final class InspectText {
    private static final int WIDTH = 80;
    private static final int MOST_SHOWN = 5;

    private final PrintStream out;

    InspectText(PrintStream out) {
        this.out = out;
    }

    void print(InspectView view, boolean many) {
        if (many) {
            printTable(view);
        } else {
            print(view.packets().get(0));
        }
    }

    private void printTable(InspectView view) {
        TextTable table = new TextTable("farm", "entries", "last written", "agrees", "first disagreement");
        view.packets()
                .forEach(one -> table.row(
                        farm(one), one.entries(), orDash(one.lastWritten()), one.agrees() ? "yes" : "NO", first(one)));
        table.lines().forEach(out::println);
        long agree = view.packets().stream().filter(Inspected::agrees).count();
        out.println();
        paragraph(
                "",
                agree + " of " + view.packets().size()
                        + " agree. What is proved and what is not: bedledger inspect PACKET");
    }

    private void print(Inspected one) {
        paragraph("", heading(one));
        if (one.key() != null) {
            out.println("Key " + one.key());
        }
        out.println();
        if (one.agrees()) {
            out.println("Everything agrees.");
            out.println();
            out.println("Proved:");
            one.proved().forEach(line -> paragraph("- ", line));
            out.println("Not proved:");
            one.notProved().forEach(line -> paragraph("- ", line));
            if (one.findings() != null) {
                out.println();
                print(one.findings());
            }
            return;
        }
        out.println(isNotRead(one) ? "COULD NOT BE LOOKED THROUGH:" : "DOES NOT AGREE. The first thing:");
        paragraph("- ", one.disagreements().get(0).words());
        if (one.disagreements().size() > 1) {
            out.println("After it:");
        }
        one.disagreements().stream().skip(1).limit(MOST_SHOWN - 1).forEach(each -> paragraph("- ", each.words()));
        int more = one.disagreements().size() - MOST_SHOWN;
        if (more > 0) {
            out.println("and " + more + " more: --json");
        }
        out.println();
        paragraph("", "Nothing of it is proved until that is cleared up.");
    }

    /** Whether nothing is known of what it holds. */
    static boolean isNotRead(Inspected one) {
        return one.disagreements().stream().anyMatch(Difference::keptFromReading);
    }

    private void print(InspectView.Counts found) {
        paragraph(
                "",
                "The rule book on " + found.on() + ", worked out again from the lines: " + found.notMet() + " not met, "
                        + found.incomplete() + " incomplete, " + found.ask() + " ask, " + found.met()
                        + " met. Each with its entries: findings.json, report.html.");
        found.whatIsNotMet().stream().limit(MOST_SHOWN).forEach(each -> paragraph("- ", "not met: " + each));
        int more = found.whatIsNotMet().size() - MOST_SHOWN;
        if (more > 0) {
            out.println("and " + more + " more not met");
        }
    }

    private static String heading(Inspected one) {
        if (one.kind().equals("entry")) {
            return one.file() + ": the proof of entry " + one.entries();
        }
        String farm = one.farm() == null ? "" : one.farm() + (one.practice() ? " (PRACTICE book), " : ", ");
        String last = one.lastWritten() == null ? "" : ", the last written on " + one.lastWritten();
        return one.file() + ": " + farm + one.entries() + " entries" + last;
    }

    private void paragraph(String head, String text) {
        String indent = " ".repeat(head.length());
        List<String> lines = TextTable.wrapped(text, WIDTH - head.length());
        for (int at = 0; at < lines.size(); at++) {
            out.println((at == 0 ? head : indent) + lines.get(at));
        }
    }

    static Output.Table table(InspectView view) {
        return new Output.Table(
                List.of("farm", "file", "entries", "sealed", "last_written", "agrees", "first_disagreement"),
                view.packets().stream()
                        .map(one -> List.of(
                                one.farm() == null ? "" : one.farm(),
                                one.file(),
                                Long.toString(one.entries()),
                                Long.toString(one.sealed()),
                                one.lastWritten() == null ? "" : one.lastWritten(),
                                Boolean.toString(one.agrees()),
                                first(one)))
                        .toList());
    }

    private static String farm(Inspected one) {
        return one.farm() == null ? one.file() : one.farm() + " (" + one.file() + ")";
    }

    private static String orDash(@org.jspecify.annotations.Nullable String text) {
        return text == null ? "–" : text;
    }

    private static String first(Inspected one) {
        return one.disagreements().isEmpty() ? "" : one.disagreements().get(0).brief();
    }
}
