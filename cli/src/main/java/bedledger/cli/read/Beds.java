package bedledger.cli.read;

import bedledger.cli.Surroundings;
import bedledger.projections.history.BedList;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code bedledger beds}: all beds, and what is in and on them. */
@Command(
        name = "bedledger beds",
        sortOptions = false,
        description = "List the beds with their field, size and state on a day.",
        footer = {"", "Example: bedledger beds --on 2025-07-12"})
public final class Beds implements Callable<Integer> {
    private final Surroundings around;

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(names = "--on", paramLabel = "DAY", description = "the day asked about (today if left out)")
    @Nullable
    String on;

    public Beds(Surroundings around) {
        this.around = around;
    }

    /** What {@code --json} prints. */
    record View(
            boolean practice,
            String farm,
            String on,
            @Nullable String asKnownOn,
            List<Row> beds) {}

    /** One bed; {@code state} is in plain sentences with the numbers of the entries behind them. */
    record Row(String bed, String field, String length, String width, double squareMetres, List<String> state) {}

    @Override
    public Integer call() {
        ReadBook book = ReadBook.open(around, options);
        LocalDate day = book.dayOr("--on", on);
        View view = new View(
                book.opened().practice(),
                book.opened().farm(),
                day.toString(),
                text(book.asKnownOn()),
                rows(book, day));
        return new Output(around, options).print(view, table(view.beds()), out -> print(book, view));
    }

    /** What {@code --csv} prints. */
    public static Output.Table table(ReadBook book, LocalDate day) {
        return table(rows(book, day));
    }

    private static List<Row> rows(ReadBook book, LocalDate day) {
        return BedList.of(book.farm(), day).rows().stream().map(Beds::row).toList();
    }

    private static Output.Table table(List<Row> rows) {
        return new Output.Table(
                List.of("bed", "field", "length", "width", "square_metres", "state"),
                rows.stream()
                        .map(row -> List.of(
                                row.bed(),
                                row.field(),
                                row.length(),
                                row.width(),
                                Double.toString(row.squareMetres()),
                                String.join("; ", row.state())))
                        .toList());
    }

    private static Row row(BedList.Row row) {
        List<String> state = row.sentences().stream()
                .filter(sentence -> !sentence.startsWith("in field "))
                .toList();
        return new Row(
                row.bed().name(),
                String.valueOf(row.state().field()),
                String.valueOf(row.state().length()),
                String.valueOf(row.state().width()),
                Math.round(row.state().squareMetres() * 100) / 100.0,
                state);
    }

    private void print(ReadBook book, View view) {
        book.banner().forEach(around.out()::println);
        around.out().println("Beds on " + view.on());
        TextTable table = new TextTable("bed", "field", "m²", "state");
        view.beds()
                .forEach(row -> table.row(
                        row.bed(),
                        row.field(),
                        String.format(Locale.ROOT, "%.1f", row.squareMetres()),
                        String.join("; ", row.state())));
        table.lines().forEach(around.out()::println);
        if (view.beds().isEmpty()) {
            around.out().println("No beds yet. Enter some:");
            around.out().println("bedledger did lay-out N1..N4 --field FIELD --length 20m --width 0.75m");
        }
    }

    static @Nullable String text(@Nullable Object value) {
        return value == null ? null : value.toString();
    }
}
