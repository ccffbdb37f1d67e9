package bedledger.cli.read;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.hours.Hours;
import bedledger.projections.hours.HoursLine;
import bedledger.projections.hours.InPlace;
import bedledger.projections.hours.OwnRate;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bedledger hours}: work as far as it was recorded. */
@Command(
        name = "bedledger hours",
        sortOptions = false,
        description = "Add up people × minutes as far as they were recorded, and say where they were not.",
        footer = {"", "Example: bedledger hours N1 N2 --by flip"})
public final class HoursCommand implements Callable<Integer> {
    private final Surroundings around;

    @Parameters(arity = "0..*", paramLabel = "BED", description = "only these beds (all if left out)")
    List<String> beds = new ArrayList<>();

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(names = "--by", paramLabel = "HOW", description = "operation, bed, flip or crop (operation if left out)")
    String by = "operation";

    @Option(names = "--from", paramLabel = "DAY", description = "work done from that day (the first if left out)")
    @Nullable
    String from;

    @Option(
            names = {"--to", "--on"},
            paramLabel = "DAY",
            description = "work done up to that day (today if left out)")
    @Nullable
    String to;

    public HoursCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        ReadBook book = ReadBook.open(around, options);
        List<BedId> asked = beds.stream().map(bed -> Bed.named(book, bed)).toList();
        LocalDate last = book.dayOr("--to", to);
        LocalDate first = from == null ? firstDay(book, last) : book.dayOr("--from", from);
        if (first.isAfter(last)) {
            throw new Failure(
                    Exit.USAGE, "--from " + first + " lies after --to " + last + ". Turn the two days round.");
        }
        Hours hours = Hours.of(book.farm(), first, last, asked);
        InPlace inPlace = InPlace.of(book.farm(), first, last, asked);
        List<HoursLine> lines = lines(hours);
        HoursView view = HoursView.of(book, by, hours, lines, inPlace);
        return new Output(around, options).print(view, view.table(), out -> print(book, hours, lines, inPlace));
    }

    private static LocalDate firstDay(ReadBook book, LocalDate last) {
        return book.farm().inForce().stream()
                .map(Entry::head)
                .map(head -> head.doneOn())
                .min(LocalDate::compareTo)
                .filter(day -> day.isBefore(last))
                .orElse(last);
    }

    private List<HoursLine> lines(Hours hours) {
        return switch (by) {
            case "operation" -> hours.byOperation();
            case "bed" -> hours.byBed();
            case "flip" -> hours.byFlip();
            case "crop" -> hours.byCrop();
            default -> throw new Failure(Exit.USAGE, "--by '" + by + "' is none of operation, bed, flip, crop.");
        };
    }

    private void print(ReadBook book, Hours hours, List<HoursLine> lines, InPlace inPlace) {
        book.banner().forEach(around.out()::println);
        around.out().println("Work from " + hours.from() + " to " + hours.to() + ", as far as it was recorded");
        TextTable table = new TextTable("of", "person-minutes", "steps with minutes", "entries");
        lines.forEach(line -> table.row(
                line.of() + (line.byArea() ? " (by area)" : ""),
                minutes(line),
                line.withMinutes() + " of " + line.steps() + (line.isComplete() ? "" : " *"),
                numbers(line)));
        table.lines().forEach(around.out()::println);
        HoursLine all = hours.all();
        paragraph("Together: "
                + (all.withMinutes() == 0
                        ? "not recorded"
                        : minutes(all) + " person-minutes, " + Figure.short3(all.minutes() / 60) + " hours")
                + "; " + all.words() + ".");
        if (!all.isComplete()) {
            paragraph("* incomplete: the other steps have no people or no minutes on record and are not in the sum.");
        }
        around.out().println();
        print(inPlace);
    }

    private void print(InPlace inPlace) {
        String where = inPlace.flips() + (inPlace.flips() == 1 ? " flip" : " flips")
                + " with the residue flailed in place, " + Figure.short3(inPlace.squareMetres()) + " m²";
        if (inPlace.hauled().isEmpty() || inPlace.saved().isEmpty()) {
            paragraph("What leaving residue in place saved (" + where + "): incomplete.");
            inPlace.missing().forEach(gap -> paragraph("- " + gap));
        } else {
            paragraph("What leaving residue in place saved (" + where + "): " + band(inPlace.saved())
                    + " person-minutes against hauling it off.");
        }
        rate(inPlace.hauling());
        rate(inPlace.flailing());
        if (inPlace.saved().isPresent()) {
            paragraph("From this farm's own acts alone, by area; mean with a " + confidence()
                    + " interval of Student's t,"
                    + " none for a single act (†). It holds if a bed that is hauled off need not be flailed.");
        }
    }

    private void rate(OwnRate rate) {
        rate.perSquareMetre()
                .ifPresent(each -> paragraph("- " + rate.operation() + ": "
                        + Figure.band(each, 1) + " person-minutes per m², n = " + rate.timed() + " of " + rate.acts()
                        + rate.perKilogram()
                                .map(weight -> "; " + Figure.band(weight, 1) + " per kg fresh, n = " + rate.weighed())
                                .orElse("")
                        + numbered(rate.entries())));
    }

    private static String confidence() {
        return Math.round(100 * Tables.sampling().confidence()) + " %";
    }

    private static String band(Optional<Estimate> estimate) {
        return estimate.map(each -> Figure.band(each, 1)).orElse("not known");
    }

    private static String minutes(HoursLine line) {
        return line.withMinutes() == 0 ? "not recorded" : Figure.short3(line.minutes());
    }

    private static String numbers(HoursLine line) {
        return line.entries().stream().map(number -> "#" + number).collect(Collectors.joining(" "));
    }

    static String numbered(Collection<Long> entries) {
        return " (" + entries.stream().map(number -> "#" + number).collect(Collectors.joining(" ")) + ")";
    }

    private void paragraph(String text) {
        TextTable.wrapped(text, 80).forEach(around.out()::println);
    }
}
