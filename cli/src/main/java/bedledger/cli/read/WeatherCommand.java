package bedledger.cli.read;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.projections.weather.Coverage;
import bedledger.projections.weather.DailyFile;
import bedledger.projections.weather.DayWeather;
import bedledger.projections.weather.DegreeDays;
import bedledger.projections.weather.FarmWeather;
import bedledger.projections.weather.Normals;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code bedledger weather}: what weather the book has, and what a span of days rests on. */
@Command(
        name = "bedledger weather",
        sortOptions = false,
        description = {
            "Show what weather the book has, or put a file of it into the book.",
            "Files: daily CSV (date, min_c or min_f, max_c or max_f, rain_mm or rain_in), a GHCN-Daily station file (.dly),"
                    + " or monthly normals as CSV (month, min_c, max_c, rain_mm, or month, mean_c)."
        },
        footer = {"", "Example: bedledger weather --add station.csv"})
public final class WeatherCommand implements Callable<Integer> {
    private static final double BASE = 5;
    private final Surroundings around;

    @Option(names = "--add", paramLabel = "FILE", description = "check this file and put it into the book")
    @Nullable
    Path add;

    @Option(names = "--replace", description = "with --add: in place of the file of the same name")
    boolean replace;

    @Option(names = "--from", paramLabel = "DAY", description = "first day of the span (1 January if left out)")
    @Nullable
    String from;

    @Option(
            names = {"--to", "--on"},
            paramLabel = "DAY",
            description = "last day of the span (today if left out)")
    @Nullable
    String to;

    @Mixin
    ReadOptions options = new ReadOptions();

    public WeatherCommand(Surroundings around) {
        this.around = around;
    }

    /** What {@code --json} prints. */
    record View(
            boolean practice,
            String farm,
            @Nullable String asKnownOn,
            int notedDays,
            int notedRainDays,
            List<String> halfNoted,
            List<FileView> files,
            @Nullable String normals,
            List<String> unreadable,
            @Nullable String measuredTo,
            SpanView span) {}

    /** One file of daily weather. */
    record FileView(
            String name,
            String kind,
            @Nullable String station,
            @Nullable String first,
            @Nullable String last,
            int days,
            int missing,
            int withoutRain,
            int dropped) {}

    /** A span of days; degree days in °C, missing where a day is. */
    record SpanView(
            String from,
            String to,
            String coverage,
            int missing,
            @Nullable Double degreeDaysAbove5,
            @Nullable Double degreeDaysModified) {}

    @Override
    public Integer call() {
        ReadBook book = ReadBook.open(around, options);
        if (add != null) {
            new WeatherAdding(around, book).add(around.folder().resolve(add), replace);
            return Exit.OK;
        }
        if (replace) {
            throw new Failure(Exit.USAGE, "--replace goes with --add FILE.");
        }
        WeatherFolder folder = WeatherFolder.of(book);
        FarmWeather weather = folder.weather(book);
        LocalDate last = book.dayOr("--to", to);
        LocalDate first = from == null ? last.withDayOfYear(1) : book.dayOr("--from", from);
        if (first.isAfter(last) || first.plusYears(200).isBefore(last)) {
            throw new Failure(Exit.USAGE, "From " + first + " to " + last + " is no span of days. Swap them.");
        }
        View view = view(book, folder, weather, first, last);
        return new Output(around, options).print(view, table(weather, first, last), out -> print(book, view));
    }

    private static View view(
            ReadBook book, WeatherFolder folder, FarmWeather weather, LocalDate first, LocalDate last) {
        Coverage coverage = weather.over(first, last);
        return new View(
                book.opened().practice(),
                book.opened().farm(),
                Beds.text(book.asKnownOn()),
                weather.noted(),
                weather.notedRain(),
                weather.halfNoted().stream().map(LocalDate::toString).toList(),
                weather.files().stream().map(WeatherCommand::file).toList(),
                folder.normals().map(Normals::words).orElse(null),
                folder.unreadable(),
                weather.measuredTo().map(LocalDate::toString).orElse(null),
                new SpanView(
                        first.toString(),
                        last.toString(),
                        coverage.words(),
                        coverage.missing(),
                        rounded(DegreeDays.over(weather, first, last, day -> DegreeDays.mean(day, BASE))),
                        rounded(DegreeDays.over(weather, first, last, DegreeDays::modified))));
    }

    private static FileView file(DailyFile file) {
        return new FileView(
                file.name(),
                file.origin().words(),
                file.station().orElse(null),
                file.first().map(LocalDate::toString).orElse(null),
                file.last().map(LocalDate::toString).orElse(null),
                file.days(),
                file.missing(),
                file.withoutRain(),
                file.dropped());
    }

    private static @Nullable Double rounded(OptionalDouble sum) {
        return sum.isEmpty() ? null : Math.round(sum.getAsDouble() * 10) / 10.0;
    }

    private static Output.Table table(FarmWeather weather, LocalDate first, LocalDate last) {
        List<List<String>> rows = new ArrayList<>();
        for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
            weather.on(day).map(WeatherCommand::row).ifPresent(rows::add);
        }
        return new Output.Table(List.of("date", "min_c", "max_c", "rain_mm", "origin", "rain_origin"), rows);
    }

    private static List<String> row(DayWeather day) {
        return List.of(
                day.day().toString(),
                tenth(day.minC()),
                tenth(day.maxC()),
                day.rainMm().isEmpty() ? "" : tenth(day.rainMm().getAsDouble()),
                day.origin().words(),
                day.rainOrigin().map(origin -> origin.words()).orElse(""));
    }

    private static String tenth(double value) {
        return String.format(java.util.Locale.ROOT, "%.1f", value);
    }

    private void print(ReadBook book, View view) {
        book.banner().forEach(around.out()::println);
        around.out().println("Weather of " + view.farm());
        TextTable table = new TextTable("from", "days", "span", "missing", "no rain", "dropped");
        if (view.notedDays() + view.notedRainDays() > 0) {
            table.row("noted in the book", view.notedDays(), "", "", "", "");
        }
        view.files()
                .forEach(file -> table.row(
                        file.name() + (file.station() == null ? "" : " (" + file.station() + ")"),
                        file.days(),
                        file.first() + " to " + file.last(),
                        file.missing(),
                        file.withoutRain(),
                        file.dropped()));
        if (view.normals() != null) {
            table.row("normals.csv", "", view.normals(), "", "", "");
        }
        if (!table.isEmpty()) {
            table.lines().forEach(around.out()::println);
        } else {
            paragraph(
                    "None yet. Put a weather file into the book: bedledger weather --add FILE (see --help), or note the"
                            + " day's: bedledger did weather --min 9C --max 21C --rain 4mm");
        }
        view.unreadable().forEach(this::paragraph);
        if (!view.halfNoted().isEmpty()) {
            paragraph("Noted with only one of minimum and maximum, or crosswise, and not used: "
                    + String.join(", ", view.halfNoted()));
        }
        span(view.span());
    }

    private void span(SpanView span) {
        around.out().println();
        paragraph(span.from() + " to " + span.to() + ": " + span.coverage());
        if (span.degreeDaysAbove5() == null) {
            paragraph("Degree days: incomplete, a day is missing.");
            return;
        }
        paragraph("Degree days above 5 °C by the mean of minimum and maximum (Midwestern Regional Climate Center): "
                + span.degreeDaysAbove5() + ". By the modified 50/86 F method (Iowa State University), in °C: "
                + span.degreeDaysModified() + ".");
        paragraph("Files in the folder weather are not sealed: they are read as they lie there now.");
    }

    private void paragraph(String text) {
        TextTable.wrapped(text, 80).forEach(around.out()::println);
    }
}
