package bedledger.cli.read;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Sum;
import bedledger.projections.trends.Input;
import bedledger.projections.trends.Season;
import bedledger.projections.trends.Source;
import bedledger.projections.trends.Trends;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bedledger seasons}: what went back to the beds, season beside season. */
@Command(
        name = "bedledger seasons",
        sortOptions = false,
        description = "What went back to the soil, season beside season, by weight over the bed tops.",
        footer = {"", "Example: bedledger seasons N1 N2 --of nitrogen"})
public final class Seasons implements Callable<Integer> {
    private static final int WIDTH = 80;
    private final Surroundings around;

    @Parameters(arity = "0..*", paramLabel = "BED", description = "only these beds (all if left out)")
    List<String> beds = new ArrayList<>();

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(names = "--of", paramLabel = "WHAT", description = "dry, carbon or nitrogen (dry if left out)")
    String of = "dry";

    @Option(
            names = "--by",
            paramLabel = "HOW",
            description = "bed: a line for each bed; season: a line for each season and source (bed if left out)")
    String by = "bed";

    @Option(names = "--on", paramLabel = "DAY", description = "up to the end of that day (today if left out)")
    @Nullable
    String on;

    public Seasons(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Measure measure = measure();
        if (!List.of("bed", "season").contains(by)) {
            throw new Failure(Exit.USAGE, "--by '" + by + "' is none of bed, season.");
        }
        ReadBook book = ReadBook.open(around, options);
        List<BedId> asked = beds.stream().map(bed -> Bed.named(book, bed)).toList();
        LocalDate day = book.dayOr("--on", on);
        Trends trends = Trends.of(book.farm(), book.tables(), day, Options.DEFAULT, asked);
        SeasonsView view = SeasonsView.of(book, trends, measure);
        return new Output(around, options).print(view, view.table(), out -> print(book, trends, measure));
    }

    private Measure measure() {
        return switch (of) {
            case "dry" -> Measure.DRY;
            case "carbon" -> Measure.CARBON;
            case "nitrogen" -> Measure.NITROGEN;
            default -> throw new Failure(Exit.USAGE, "--of '" + of + "' is none of dry, carbon, nitrogen.");
        };
    }

    private void print(ReadBook book, Trends trends, Measure measure) {
        PerArea unit = PerArea.of(book, measure);
        book.banner().forEach(around.out()::println);
        if (trends.beds().isEmpty()) {
            paragraph("There is no bed by " + trends.asOf() + ", so there is nothing to show.");
            return;
        }
        String what = measure == Measure.DRY ? "dry matter" : measure.words();
        paragraph("Returned by " + trends.asOf() + ", " + what + " in " + unit.unit() + " of bed top: best (low–high)");
        TextTable table = by.equals("bed") ? byBed(trends, measure, unit) : bySeason(trends, measure, unit);
        List<String> lines = table.lines();
        lines.forEach(around.out()::println);
        marks(lines);
        around.out().println();
        around.out().println("The same as charts, with coefficients: bedledger report --for agronomist");
    }

    private void marks(List<String> lines) {
        if (lines.stream().anyMatch(line -> line.contains("*"))) {
            paragraph(
                    "* incomplete: not known for every piece, or a guess from a typical yield was left out. The sum is of what is known.");
        }
        if (lines.stream().anyMatch(line -> line.contains("†"))) {
            paragraph("† no range is known for some coefficient in it; the true doubt is wider than shown.");
        }
    }

    private static TextTable byBed(Trends trends, Measure measure, PerArea unit) {
        List<String> header = new ArrayList<>(List.of("bed"));
        trends.seasons().forEach(season -> header.add(season.name()));
        TextTable table = new TextTable(header.toArray(String[]::new));
        for (BedId bed : trends.beds()) {
            List<String> row = new ArrayList<>(List.of(bed.name()));
            for (Season season : trends.seasons()) {
                row.add(whole(trends.inputs().of(bed, season), measure, unit));
            }
            table.row(row.toArray());
        }
        List<String> all = new ArrayList<>(List.of("all"));
        trends.seasons().forEach(season -> all.add(whole(trends.inputs().of(season), measure, unit)));
        table.row(all.toArray());
        return table;
    }

    private static TextTable bySeason(Trends trends, Measure measure, PerArea unit) {
        TextTable table = new TextTable("season", "source", "best (low–high)");
        for (Season season : trends.seasons()) {
            Input input = trends.inputs().of(season);
            SortedSet<Source> sources = new TreeSet<>(input.sources());
            sources.forEach(source ->
                    table.row(season.name(), source.words(), figure(input, input.from(source, measure), unit)));
            table.row(season.name(), "all", whole(input, measure, unit));
        }
        return table;
    }

    private static String whole(Input input, Measure measure, PerArea unit) {
        Sum total = input.total(measure);
        if (input.isNothing()) {
            return "nothing";
        }
        String figure = total.pieces() == 0 ? "not known" : figure(input, total, unit);
        return input.typicalLeftOut() > 0 && !figure.contains("*") ? figure + " *" : figure;
    }

    private static String figure(Input input, Sum sum, PerArea unit) {
        Optional<Estimate> known = input.perSquareMetre(sum);
        String figure = known.map(unit::band).orElse("not known");
        return sum.isComplete() ? figure : figure + " *";
    }

    private void paragraph(String text) {
        TextTable.wrapped(text, WIDTH).forEach(around.out()::println);
    }
}
