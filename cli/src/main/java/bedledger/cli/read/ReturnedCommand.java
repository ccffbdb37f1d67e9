package bedledger.cli.read;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.Returned;
import bedledger.projections.returned.Total;
import bedledger.projections.returned.Totals;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bedledger returned}: the organic matter that went back to the beds. */
@Command(
        name = "bedledger returned",
        sortOptions = false,
        description = "Estimate the organic matter that went back to the soil: low, best and high, with the evidence.",
        footer = {"", "Example: bedledger returned N1 N2 --by piece"})
public final class ReturnedCommand implements Callable<Integer> {
    private static final double KILOGRAMS_IN_A_POUND = 0.45359237;
    private final Surroundings around;

    @Parameters(arity = "0..*", paramLabel = "BED", description = "only these beds (all if left out)")
    List<String> beds = new ArrayList<>();

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(names = "--by", paramLabel = "HOW", description = "piece, bed, crop, flip or season (bed if left out)")
    String by = "bed";

    @Option(
            names = "--on",
            paramLabel = "DAY",
            description = "what went back by the end of that day (today if left out)")
    @Nullable
    String on;

    @Option(names = "--with-typical", description = "count guesses from typical yields too")
    boolean typical;

    public ReturnedCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        ReadBook book = ReadBook.open(around, options);
        beds.forEach(bed -> Bed.named(book, bed));
        LocalDate day = book.dayOr("--on", on);
        Options counted = typical ? Options.DEFAULT.countingTypical() : Options.DEFAULT;
        Returned returned = Returned.of(book.farm(), book.tables(), day, counted);
        List<Return> pieces = returned.pieces().stream().filter(this::asked).toList();
        List<Total> totals = totals(returned);
        ReturnedView view = ReturnedView.of(book, day, by, returned, pieces, totals);
        return new Output(around, options)
                .print(view, view.table(), out -> print(book, view, returned, pieces, totals));
    }

    private boolean asked(Return piece) {
        return beds.isEmpty()
                || piece.beds().stream().anyMatch(share -> asked(share.bed().name()));
    }

    private boolean asked(String bed) {
        return beds.isEmpty() || beds.stream().anyMatch(bed::equalsIgnoreCase);
    }

    private List<Total> totals(Returned returned) {
        Totals totals = returned.totals();
        List<Total> asked = switch (by) {
            case "piece" -> List.<Total>of();
            case "bed" -> totals.byBed();
            case "crop" -> totals.byCrop();
            case "flip" -> totals.byFlip();
            case "season" -> totals.bySeason();
            default -> throw new Failure(Exit.USAGE, "--by '" + by + "' is none of piece, bed, crop, flip, season.");
        };
        boolean ofBeds = by.equals("bed") || by.equals("flip");
        if (!beds.isEmpty() && !ofBeds && !by.equals("piece")) {
            throw new Failure(Exit.USAGE, "Beds are named with --by bed, --by flip or --by piece only.");
        }
        return ofBeds
                ? asked.stream()
                        .filter(total -> asked(total.of().split(":", -1)[0]))
                        .toList()
                : asked;
    }

    private void print(ReadBook book, ReturnedView view, Returned returned, List<Return> pieces, List<Total> totals) {
        boolean pounds = book.opened().units().equals("us");
        book.banner().forEach(around.out()::println);
        around.out()
                .println("Returned by " + view.on() + ", dry mass in " + (pounds ? "lb" : "kg") + ": best (low–high)");
        TextTable table = by.equals("piece") ? pieces(pieces, pounds) : totals(totals, pounds);
        table.lines().forEach(around.out()::println);
        if (table.lines().stream().anyMatch(line -> line.contains(" *"))) {
            paragraph(
                    "* incomplete: not known for every piece (the tables hold no carbon or nitrogen of roots); the sum is of"
                            + " what is known.");
        }
        if (table.lines().stream().anyMatch(line -> line.contains("†"))) {
            paragraph("† no range is known for some coefficient in it; the true doubt is wider than shown.");
        }
        if (by.equals("piece")) {
            remarks(pieces);
        }
        returned.left().stream()
                .filter(left -> asked(left.bed().name()))
                .forEach(left -> paragraph(
                        "Left on " + left.bed() + " on " + left.entry().head().doneOn() + " (#"
                                + left.entry().number() + "): " + String.join("; ", left.words())));
        view.stillStanding().forEach(standing -> paragraph("Still standing, not counted: " + standing));
        view.notCounted().forEach(not -> paragraph("Not counted: " + not));
        around.out().println();
        if (!by.equals("piece")) {
            around.out().println("Method, evidence and remarks of each piece: bedledger returned --by piece");
        }
        paragraph(Estimate.RULE);
    }

    private static TextTable totals(List<Total> totals, boolean pounds) {
        TextTable table = new TextTable("of", "dry", "carbon", "nitrogen", "C:N", "entries");
        totals.forEach(total -> table.row(
                total.of() + (total.sharedByArea() ? " (by area)" : ""),
                sum(total, bedledger.projections.returned.Measure.DRY, pounds),
                sum(total, bedledger.projections.returned.Measure.CARBON, pounds),
                sum(total, bedledger.projections.returned.Measure.NITROGEN, pounds),
                total.carbonToNitrogen()
                        .map(ratio -> Figure.short3(ratio.best()))
                        .orElse("–"),
                entries(total.entries())));
        return table;
    }

    private static String sum(Total total, bedledger.projections.returned.Measure measure, boolean pounds) {
        var sum = total.measures().get(measure);
        if (sum == null || sum.known().isEmpty()) {
            return "not known";
        }
        String figure = Figure.band(sum.known().get(), pounds ? KILOGRAMS_IN_A_POUND : 1);
        return sum.isComplete() ? figure : figure + " *";
    }

    private static TextTable pieces(List<Return> pieces, boolean pounds) {
        double unit = pounds ? KILOGRAMS_IN_A_POUND : 1;
        TextTable table = new TextTable("day", "beds", "what", "evidence", "dry", "N", "C:N");
        pieces.forEach(piece -> table.row(
                piece.day(),
                piece.beds().stream().map(share -> share.bed().name()).collect(Collectors.joining(" "))
                        + (piece.isSharedByArea() ? " (by area)" : ""),
                piece.what() + ", " + piece.kind().words(),
                piece.evidence().words(),
                piece.matter().dry().map(dry -> Figure.band(dry, unit)).orElse("not known"),
                piece.matter().nitrogen().map(n -> Figure.band(n, unit)).orElse("–"),
                piece.matter()
                        .carbonToNitrogen()
                        .map(ratio -> Figure.short3(ratio.best()))
                        .orElse("–")));
        return table;
    }

    private void remarks(List<Return> pieces) {
        for (Return piece : pieces) {
            around.out().println();
            paragraph(piece.what() + ", " + piece.kind().words() + ", " + piece.day() + " (entries "
                    + entries(piece.entries()) + "): " + piece.method());
            piece.words().forEach(word -> paragraph("- " + word));
        }
    }

    private static String entries(java.util.Collection<Long> entries) {
        return entries.stream().map(number -> "#" + number).collect(Collectors.joining(" "));
    }

    private void paragraph(String text) {
        TextTable.wrapped(text, 80).forEach(around.out()::println);
    }
}
