package bedledger.cli.read;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.language.BedId;
import bedledger.language.Farm;
import bedledger.projections.breakdown.BedBreakdown;
import bedledger.projections.breakdown.Breakdown;
import bedledger.projections.breakdown.FarmRate;
import bedledger.projections.breakdown.Practice;
import bedledger.projections.breakdown.ReadyDate;
import bedledger.projections.breakdown.Use;
import bedledger.projections.estimate.MassUnit;
import bedledger.projections.weather.FarmWeather;
import bedledger.projections.weather.SoilWarmth;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bedledger ready}: which bed is ready, and when. */
@Command(
        name = "bedledger ready",
        sortOptions = false,
        description = "List the beds under a tarp or waiting to be planted: what is left, and when they are ready.",
        footer = {"", "Example: bedledger ready K1 --for fine-seed", "Example: bedledger ready K1 --if-hauled-off 80%%"
        })
public final class ReadyCommand implements Callable<Integer> {
    private final Surroundings around;

    @Parameters(arity = "0..*", paramLabel = "BED", description = "only these beds, and all about them")
    List<String> beds = new ArrayList<>();

    @Option(
            names = "--for",
            paramLabel = "USE",
            description = "fine-seed, large-seed or transplants (fine-seed if left out)")
    String use = "fine-seed";

    @Option(
            names = "--cover",
            paramLabel = "PERCENT",
            description = "your own limit: how much of the bed residue may cover")
    @Nullable
    Double cover;

    @Option(names = "--on", paramLabel = "DAY", description = "the day asked about (today if left out)")
    @Nullable
    String on;

    @Mixin
    ReadOptions options = new ReadOptions();

    @Mixin
    SupposeOptions suppose = new SupposeOptions();

    public ReadyCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Use asked = use();
        ReadBook book = ReadBook.open(around, options);
        List<BedId> named = beds.stream().map(bed -> Bed.named(book, bed)).toList();
        WeatherFolder folder = WeatherFolder.of(book);
        FarmWeather weather = folder.weather(book);
        folder.unreadable().forEach(word -> around.err().println("Careful: " + word));
        LocalDate day = book.dayOr("--on", on);
        Breakdown breakdown = breakdown(book.farm(), book, weather, day);
        Optional<SupposedReady> supposed = suppose.of(book, named, day)
                .map(each -> new SupposedReady(
                        book, suppose.words(), each, breakdown, breakdown(each.farm(), book, weather, day)));
        List<BedBreakdown> waiting = breakdown.waiting().stream()
                .filter(bed ->
                        beds.isEmpty() || beds.stream().anyMatch(bed.bed().name()::equalsIgnoreCase))
                .toList();
        ReadyView view = ReadyView.of(
                book,
                day,
                asked,
                breakdown,
                waiting,
                supposed.map(SupposedReady::view).orElse(null));
        return new Output(around, options)
                .print(
                        view,
                        view.table(),
                        out -> supposed.ifPresentOrElse(
                                each -> each.print(around.out(), day, asked),
                                () -> print(book, view, breakdown, waiting, asked)));
    }

    private Breakdown breakdown(Farm farm, ReadBook book, FarmWeather weather, LocalDate day) {
        return Breakdown.of(farm, book.tables(), weather, day, limit(), book.massUnit());
    }

    private Use use() {
        return Arrays.stream(Use.values())
                .filter(each -> each.words().replace(' ', '-').equals(use))
                .findFirst()
                .orElseThrow(() ->
                        new Failure(Exit.USAGE, "--for '" + use + "' is none of fine-seed, large-seed, transplants."));
    }

    private Optional<Double> limit() {
        if (cover != null && !(cover > 0 && cover < 100)) {
            throw new Failure(
                    Exit.USAGE, "--cover " + cover + " is no share of a bed. Give percent, as in --cover 15.");
        }
        return Optional.ofNullable(cover).map(percent -> percent / 100);
    }

    private void print(ReadBook book, ReadyView view, Breakdown breakdown, List<BedBreakdown> waiting, Use asked) {
        book.banner().forEach(around.out()::println);
        around.out().println("Beds that wait, on " + view.on() + "; ready for " + asked.words() + ":");
        if (waiting.isEmpty()) {
            String which = beds.isEmpty() ? "No bed" : String.join(" ", beds);
            paragraph(which + (beds.isEmpty() || beds.size() == 1 ? " lies" : " lie") + (beds.isEmpty() ? "" : " not")
                    + " under a tarp or empty after a crop.");
            return;
        }
        MassUnit unit = book.massUnit();
        summary(waiting, asked, unit);
        paragraph(ReadyView.DECIDES);
        if (beds.isEmpty()) {
            incomplete(waiting);
            around.out().println();
            paragraph("What a date rests on, and the other uses: bedledger ready "
                    + waiting.get(0).bed());
            return;
        }
        waiting.forEach(bed -> detail(bed, asked, unit));
        grounds(breakdown);
    }

    private void summary(List<BedBreakdown> waiting, Use asked, MassUnit unit) {
        TextTable table = new TextTable("bed", "after", "tarp", unit.name() + " left", "earliest", "likely", "latest");
        waiting.forEach(bed -> {
            Optional<ReadyDate> date = bed.ready(asked);
            table.row(
                    bed.bed(),
                    String.join(", ", bed.after()),
                    bed.tarpedSince()
                            .map(day -> ChronoUnit.DAYS.between(day, bed.on()) + " d")
                            .orElse("–"),
                    bed.left()
                            .map(left -> Figure.short3(left.best() / unit.kilograms()))
                            .orElse("not known"),
                    date.map(each -> each.earliest().toString()).orElse("–"),
                    date.map(ReadyCommand::likely).orElse("incomplete"),
                    date.map(ReadyCommand::latest).orElse("–"));
        });
        table.lines().forEach(around.out()::println);
    }

    static String likely(ReadyDate date) {
        return date.likely().map(LocalDate::toString).orElse("beyond 2 years");
    }

    static String latest(ReadyDate date) {
        return date.latest().map(LocalDate::toString).orElse("open");
    }

    private void incomplete(List<BedBreakdown> waiting) {
        waiting.stream()
                .filter(bed -> !bed.isComplete())
                .forEach(bed ->
                        paragraph(bed.bed() + " incomplete: " + bed.missing().get(0)));
    }

    private void detail(BedBreakdown bed, Use asked, MassUnit unit) {
        around.out().println();
        paragraph(bed.bed() + ": after "
                + (bed.after().isEmpty() ? "nothing on record" : String.join(", ", bed.after()))
                + bed.since().map(day -> ", ended " + day).orElse("")
                + bed.tarpedSince()
                        .map(day -> ", under a tarp since " + day + " (" + ChronoUnit.DAYS.between(day, bed.on())
                                + " days)")
                        .orElse(""));
        item("done to it: " + bed.lies());
        bed.wentIn().forEach(piece -> item("went in: " + piece));
        bed.left()
                .ifPresent(left -> item("left: " + Figure.band(left, unit.kilograms()) + " " + unit.name() + " dry"
                        + bed.share()
                                .map(share -> ", " + percent(share.best()) + " of what went in")
                                .orElse("")
                        + bed.cover()
                                .map(cover -> "; it covers " + percent(cover.best()) + " of the bed ("
                                        + percent(cover.low()) + "–" + percent(cover.high()) + ")")
                                .orElse("")));
        bed.ready()
                .forEach(date -> item("ready for " + date.use().words() + " (at most "
                        + percent(date.cover()) + " covered): likely " + likely(date) + ", earliest " + date.earliest()
                        + ", latest " + latest(date) + past(date, bed.on())
                        + (date.held() ? "; it is the wait after green matter was worked in that decides" : "")));
        bed.practice().ifPresent(practice -> item("beside it, not used for the date: " + practice.words()));
        bed.missing().forEach(gap -> item("incomplete: " + gap));
        bed.remarks().forEach(this::item);
        weather(bed);
        bed.ready().stream()
                .filter(date -> date.use() == asked && !date.doubts().isEmpty())
                .forEach(date -> item("what moves the date most: " + String.join(", ", date.doubts())));
        bed.left().ifPresent(left -> left.remarks().forEach(this::item));
        if (!bed.entries().isEmpty()) {
            item("entries: " + bed.entries().stream().map(n -> "#" + n).collect(Collectors.joining(" ")));
        }
    }

    private static String past(ReadyDate date, LocalDate on) {
        return date.likely().filter(day -> !day.isAfter(on)).isPresent() ? ": now, by the model" : "";
    }

    private void weather(BedBreakdown bed) {
        bed.coverage().ifPresent(now -> item("weather since then: " + now.words()));
        bed.ready().stream()
                .findFirst()
                .ifPresent(date -> item("weather up to the likely date for "
                        + date.use().words() + ": " + date.coverage().words()));
    }

    private void grounds(Breakdown breakdown) {
        around.out().println();
        paragraph("How: mass falls by decomposition days (form of USDA-ARS WEPS; temperature after Stroo et al. 1989),"
                + " leaves and stalks apart; " + SoilWarmth.METHOD
                + "; under a tarp the soil is taken as warmer and moist,"
                + " and rain does not count. Which rate a vegetable is given, and from what cover on a bed is ready, is"
                + " judgement. The date uses this model. " + Practice.TRIAL);
        breakdown.rates().forEach(rate -> {
            rate.words().forEach(word -> paragraph("Own looks: " + word + "."));
            rate.looks().forEach(look -> paragraph("- " + look));
        });
        if (!breakdown.rates().isEmpty()) {
            paragraph(FarmRate.METHOD + ".");
        }
        paragraph(ReadyDate.METHOD);
        paragraph("Every figure it rests on, with its source: bedledger ready BED --json, under parameters.");
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    private void item(String text) {
        List<String> lines = TextTable.wrapped(text, 76);
        for (int at = 0; at < lines.size(); at++) {
            around.out().println((at == 0 ? "  - " : "    ") + lines.get(at));
        }
    }

    private void paragraph(String text) {
        TextTable.wrapped(text, 80).forEach(around.out()::println);
    }
}
