package bedledger.cli.prove;

import bedledger.cli.prove.BalanceView.CountView;
import bedledger.cli.prove.BalanceView.LineView;
import bedledger.cli.prove.BalanceView.LotView;
import bedledger.cli.read.TextTable;
import bedledger.projections.balance.Plausible;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.MassUnit;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A balance for people: the arithmetic laid out, a line each, with the entries behind it. */
final class BalanceText {
    private static final int WIDTH = 80;
    private static final int WORDS = 38;
    private static final int NUMBER = 11;
    private final PrintStream out;
    private final BalanceView view;

    BalanceText(PrintStream out, BalanceView view) {
        this.out = out;
        this.view = view;
    }

    void print() {
        paragraph("Mass balance of " + view.of() + ", " + view.from() + " to " + view.to() + ", in " + view.unit());
        out.println();
        count("  ", "counted " + view.from(), view.opening());
        for (LineView line : view.lines()) {
            line(
                    line.sign() > 0 ? "+ " : "− ",
                    line.what(),
                    BalanceView.number(line.number()),
                    entries(line.parts().stream()
                            .map(BalanceView.PartView::entry)
                            .toList()));
        }
        line("= ", "should be there", view.expected() == null ? "not known" : BalanceView.number(view.expected()), "");
        count("  ", "counted " + view.to(), view.counted());
        difference();
        out.println();
        view.missing().forEach(missing -> paragraph("Incomplete: " + missing));
        paragraph(
                "No tolerance is in the rule (7 CFR 205.103 asks for records that add up): this reports, and does not judge.");
    }

    private void difference() {
        BigDecimal difference = view.difference();
        if (difference == null) {
            line("  ", "difference", "incomplete", "");
            return;
        }
        String words = difference.signum() < 0
                ? "short"
                : difference.signum() > 0 ? "more than should be there" : "difference";
        String percent = view.percent() == null || difference.signum() == 0
                ? ""
                : view.percent().toPlainString() + " % of " + held();
        line("  ", words, BalanceView.number(difference.abs()), percent);
    }

    private String held() {
        BigDecimal held =
                view.opening() == null ? BigDecimal.ZERO : view.opening().number();
        for (LineView line : view.lines()) {
            held = line.sign() > 0 ? held.add(line.number()) : held;
        }
        return view.words(held);
    }

    private void count(String sign, String words, @Nullable CountView count) {
        line(
                sign,
                words,
                count == null ? "no count" : BalanceView.number(count.number()),
                count == null ? "" : entries(count.entries()));
    }

    private void line(String sign, String words, String number, String behind) {
        List<String> lines = TextTable.wrapped(words, WORDS);
        List<String> notes = TextTable.wrapped(behind, WIDTH - WORDS - NUMBER - 7);
        for (int at = 0; at < Math.max(lines.size(), notes.size()); at++) {
            String text = at < lines.size() ? lines.get(at) : "";
            String note = at < notes.size() ? notes.get(at) : "";
            out.println(("  " + (at == 0 ? sign : "  ") + padded(text, WORDS) + " " + right(at == 0 ? number : "")
                            + "  " + note)
                    .stripTrailing());
        }
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    private static String right(String number) {
        return " ".repeat(Math.max(0, NUMBER - number.length())) + number;
    }

    private static String entries(List<Long> numbers) {
        return numbers.stream().distinct().map(number -> "#" + number).collect(Collectors.joining(" "));
    }

    /** The lots on paper; a lot that more left than came in stands out in words. */
    void lots() {
        if (view.lots().isEmpty()) {
            return;
        }
        out.println();
        paragraph("By lot, on paper on " + view.to());
        TextTable table = new TextTable("lot", "came in", "went out", "left", "");
        for (LotView lot : view.lots()) {
            String apart = lot.notCounted().isEmpty() ? "" : "not counted: " + String.join(", ", lot.notCounted());
            String beyond = lot.beyondWhatItHeld() ? "MORE WENT OUT THAN IT HELD" : "";
            table.row(
                    lot.lot(),
                    BalanceView.number(lot.cameIn()) + " " + lot.unit(),
                    BalanceView.number(lot.wentOut()) + " " + lot.unit(),
                    BalanceView.number(lot.left()) + " " + lot.unit(),
                    beyond.isEmpty() || apart.isEmpty() ? beyond + apart : beyond + "; " + apart);
        }
        table.lines().forEach(out::println);
    }

    void seedToSale(Plausible plausible, MassUnit unit) {
        out.println();
        paragraph("From seed to sale");
        if (plausible.starts().isEmpty()) {
            indented("no sowing or planting of it is on record in this time");
        }
        plausible.starts().forEach(start -> indented(start.day() + "  " + start.words() + " (#" + start.entry() + ")"));
        if (plausible.squareMetres() > 0) {
            indented("area: " + String.format(Locale.ROOT, "%.1f", plausible.squareMetres()) + " m² of bed tops ("
                    + String.join(" ", plausible.beds()) + ")");
        }
        typical(plausible, unit);
    }

    private void typical(Plausible plausible, MassUnit unit) {
        if (plausible.typical().isEmpty()) {
            indented("typical yield: none in the tables for this crop");
            return;
        }
        Estimate typical = plausible.typical().get();
        indented("typical yield of that area: " + unit.words(typical)
                + "; a guess from fields per acre, and closely planted beds give more");
        view.lines().stream()
                .filter(line -> line.what().equals("harvested"))
                .findFirst()
                .ifPresent(line -> indented("harvested: " + view.words(line.number()) + where(typical, line, unit)));
        view.lines().stream()
                .filter(line -> line.what().equals("sold"))
                .findFirst()
                .ifPresent(line -> indented("sold: " + view.words(line.number())));
    }

    /** Against the band, where both are weights in the farm's unit. */
    private String where(Estimate typical, LineView harvested, MassUnit unit) {
        if (!view.unit().equals(unit.name()) || !typical.hasBand()) {
            return "";
        }
        double kilograms = harvested.number().doubleValue() * unit.kilograms();
        String place = kilograms > typical.high()
                ? "above that band"
                : kilograms < typical.low() ? "below that band" : "within that band";
        return ", " + place;
    }

    private void indented(String text) {
        List<String> lines = TextTable.wrapped(text, WIDTH - 4);
        for (int at = 0; at < lines.size(); at++) {
            out.println((at == 0 ? "  " : "    ") + lines.get(at));
        }
    }

    private void paragraph(String text) {
        TextTable.wrapped(text, WIDTH).forEach(out::println);
    }
}
