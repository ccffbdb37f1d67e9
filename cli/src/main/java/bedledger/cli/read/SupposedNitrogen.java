package bedledger.cli.read;

import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.nitrogen.Nitrogen;
import bedledger.projections.nitrogen.Release;
import bedledger.projections.returned.Sum;
import bedledger.projections.returned.Supposing;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Nitrogen as recorded beside what it would be under a supposition.
 *
 * @param words what is supposed
 */
record SupposedNitrogen(ReadBook book, String words, Supposing supposing, Nitrogen recorded, Nitrogen supposed) {
    private static final String METHOD = "as recorded, less as supposed";

    /** What {@code --json} prints; kg N, and nothing of it is written. */
    record View(String supposed, List<BedView> beds, List<String> nothingOn) {}

    /** Sums over everything that went back to one bed. */
    record BedView(String bed, Map<String, ThreeView> kilograms) {}

    /** As recorded, as supposed, and the difference with its own band where both are known. */
    record ThreeView(
            NitrogenView.SumView recorded,
            NitrogenView.SumView supposed,
            @Nullable Sourced difference) {}

    private record Three(ReleaseFigure figure, Sum recorded, Sum supposed) {
        /** Empty too where nothing seems to leave but not all is known: it may be the very piece that was hauled off. */
        Optional<Estimate> difference() {
            Optional<Estimate> after =
                    supposed.pieces() == 0 ? recorded.known().map(each -> each.times(0)) : supposed.known();
            return recorded.known()
                    .flatMap(one -> after.map(two -> less(one, two)))
                    .filter(each -> recorded.isComplete() || each.best() != 0);
        }

        /** What is the same on both sides differs by nothing, not by what rounding leaves. */
        private static Estimate less(Estimate one, Estimate two) {
            Estimate difference = one.minus(two);
            double size = Math.max(Math.abs(difference.low()), Math.abs(difference.high()));
            Estimate kept = size <= 1e-9 * Math.abs(one.best()) ? Estimate.exact(0, one.unit()) : difference;
            return kept.by(METHOD);
        }

        boolean isShown() {
            return recorded.pieces() > 0 && figure != ReleaseFigure.AMENDMENTS;
        }
    }

    private List<BedId> beds() {
        return supposing.hauls().stream()
                .map(haul -> haul.cropping().bed())
                .distinct()
                .toList();
    }

    private List<Three> of(BedId bed) {
        List<Three> all = new ArrayList<>();
        for (ReleaseFigure figure : ReleaseFigure.values()) {
            Three three = new Three(figure, figure.of(on(recorded, bed)), figure.of(on(supposed, bed)));
            if (three.isShown()) {
                all.add(three);
            }
        }
        return all;
    }

    private static List<Release> on(Nitrogen nitrogen, BedId bed) {
        return nitrogen.releases().stream()
                .filter(each -> each.bed().equals(bed))
                .toList();
    }

    View view() {
        return new View(
                words,
                beds().stream().map(this::view).toList(),
                supposing.nothingOn().stream().map(BedId::name).toList());
    }

    private BedView view(BedId bed) {
        Map<String, ThreeView> kilograms = new LinkedHashMap<>();
        of(bed).forEach(each -> kilograms.put(
                each.figure().words(),
                new ThreeView(
                        NitrogenView.SumView.of(each.recorded()),
                        NitrogenView.SumView.of(each.supposed()),
                        Sourced.orNull(each.difference()))));
        return new BedView(bed.name(), kilograms);
    }

    void print(PrintStream out) {
        List<Release> all =
                beds().stream().flatMap(bed -> on(recorded, bed).stream()).toList();
        NitrogenUnit unit = NitrogenUnit.of(
                book.opened().units().equals("us"),
                ReleaseFigure.NITROGEN.of(all).known());
        book.banner().forEach(out::println);
        paragraph(
                out,
                "If " + words + " (supposed, not written): nitrogen of everything that went back by " + recorded.asOf()
                        + ", " + unit.name() + ": best (low–high); below 0 is locked up");
        TextTable table = new TextTable("bed", "nitrogen", "as recorded", "if hauled off", "difference");
        paragraph(
                out,
                "Of " + supposing.hauls().stream().map(SupposedReady::words).collect(Collectors.joining("; ")) + ".");
        beds().forEach(bed -> of(bed).forEach(each -> table.row(
                bed,
                each.figure().words(),
                cell(each.recorded(), unit),
                cell(each.supposed(), unit),
                each.difference().map(one -> Figure.band(one, unit.kilograms())).orElse("not known"))));
        table.lines().forEach(out::println);
        notes(out, table);
        supposing.nothingOn().forEach(bed -> paragraph(out, "Nothing had ended on " + bed + " by then."));
        out.println();
        paragraph(out, "Temperatures: " + recorded.weather() + ".");
        paragraph(
                out,
                "Not caught: set free on days when nothing grew and no tarp lay. The crops that followed are left as"
                        + " recorded. Both sides rest on the same coefficients, so what is doubtful in both is not doubted twice. "
                        + Estimate.RULE);
    }

    private static String cell(Sum sum, NitrogenUnit unit) {
        if (sum.pieces() == 0) {
            return "nothing";
        }
        String known =
                sum.known().map(each -> Figure.band(each, unit.kilograms())).orElse("not known");
        return sum.isComplete() || sum.known().isEmpty() ? known : known + " *";
    }

    private static void notes(PrintStream out, TextTable table) {
        if (table.lines().stream().anyMatch(line -> line.contains(" *"))) {
            paragraph(out, "* incomplete: not known for every piece; the sum is of what is known.");
        }
        if (table.lines().stream().anyMatch(line -> line.contains("†"))) {
            paragraph(out, "† no range is known for some coefficient in it; the true doubt is wider than shown.");
        }
    }

    private static void paragraph(PrintStream out, String text) {
        TextTable.wrapped(text, 80).forEach(out::println);
    }
}
