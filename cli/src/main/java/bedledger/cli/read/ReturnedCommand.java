package bedledger.cli.read;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.MassUnit;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.Returned;
import bedledger.projections.returned.Total;
import bedledger.projections.returned.Totals;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        footer = {
            "",
            "Example: bedledger returned N1 N2 --by piece",
            "Example: bedledger returned N1 N2 --if-hauled-off 80%%"
        })
public final class ReturnedCommand implements Callable<Integer> {
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

    @Option(names = "--with-typical", description = "count guesses from typical yields and cover crops too")
    boolean typical;

    @Mixin
    SupposeOptions suppose = new SupposeOptions();

    public ReturnedCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        ReadBook book = ReadBook.open(around, options);
        List<BedId> named = beds.stream().map(bed -> Bed.named(book, bed)).toList();
        LocalDate day = book.dayOr("--on", on);
        Options speaking = Options.DEFAULT.speaking(book.massUnit());
        Options counted = typical ? speaking.countingTypical() : speaking;
        Returned returned = Returned.of(book.farm(), book.tables(), day, counted);
        List<Return> pieces = returned.pieces().stream().filter(this::asked).toList();
        List<Total> totals = totals(returned);
        Optional<Supposed> supposed = suppose.of(book, named, day)
                .map(each -> new Supposed(book, day, suppose.words(), each, returned, counted));
        ReturnedView view = ReturnedView.of(
                book,
                day,
                by,
                returned,
                pieces,
                totals,
                supposed.map(Supposed::view).orElse(null));
        return new Output(around, options)
                .print(
                        view,
                        view.table(),
                        out -> supposed.ifPresentOrElse(
                                each -> each.print(around.out()), () -> print(book, view, returned, pieces, totals)));
    }

    /** What {@code --by bed --csv} prints of all beds. */
    public static Output.Table table(ReadBook book, LocalDate day) {
        Options speaking = Options.DEFAULT.speaking(book.massUnit());
        Returned returned = Returned.of(book.farm(), book.tables(), day, speaking);
        return ReturnedView.of(
                        book, day, "bed", returned, List.of(), returned.totals().byBed(), null)
                .table();
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
        book.banner().forEach(around.out()::println);
        around.out()
                .println("Returned by " + view.on() + ", dry mass in "
                        + book.massUnit().name() + ": best (low–high)");
        TextTable table = by.equals("piece") ? pieces(pieces, book.massUnit()) : totals(totals, book.massUnit());
        table.lines().forEach(around.out()::println);
        if (table.lines().stream().anyMatch(line -> line.contains(" *"))) {
            paragraph(
                    "* incomplete: not known for every piece, or only guessed from what is typical; the sum is of what is"
                            + " known. With the guesses: --with-typical.");
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

    private static TextTable totals(List<Total> totals, MassUnit unit) {
        TextTable table = new TextTable("of", "dry", "carbon", "nitrogen", "C:N", "entries");
        totals.forEach(total -> table.row(
                total.of() + (total.sharedByArea() ? " (by area)" : ""),
                sum(total, Measure.DRY, unit),
                sum(total, Measure.CARBON, unit),
                sum(total, Measure.NITROGEN, unit),
                total.carbonToNitrogen()
                        .map(ratio -> Figure.short3(ratio.best()))
                        .orElse("–"),
                entries(total.entries())));
        return table;
    }

    private static String sum(Total total, Measure measure, MassUnit unit) {
        var sum = total.measures().get(measure);
        if (sum == null || sum.known().isEmpty()) {
            return "not known";
        }
        String figure = Figure.band(sum.known().get(), unit.kilograms());
        return sum.isComplete() && total.typicalLeftOut() == 0 ? figure : figure + " *";
    }

    private static TextTable pieces(List<Return> pieces, MassUnit unit) {
        TextTable table = new TextTable("day", "beds", "what", "evidence", "dry", "N", "C:N");
        pieces.forEach(piece -> table.row(
                piece.day(),
                piece.beds().stream().map(share -> share.bed().name()).collect(Collectors.joining(" "))
                        + (piece.isSharedByArea() ? " (by area)" : ""),
                piece.what() + ", " + piece.kind().words(),
                piece.evidence().words(),
                piece.matter()
                        .dry()
                        .map(dry -> Figure.band(dry, unit.kilograms()))
                        .orElse("not known"),
                piece.matter()
                        .nitrogen()
                        .map(n -> Figure.band(n, unit.kilograms()))
                        .orElse("–"),
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
