package bedledger.cli.read;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.language.BedId;
import bedledger.projections.nitrogen.Nitrogen;
import bedledger.projections.nitrogen.NitrogenTotal;
import bedledger.projections.nitrogen.Release;
import bedledger.projections.phosphorus.Phosphorus;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Returned;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bedledger nitrogen}: what the returned matter sets free or locks up, and the phosphorus balance. */
@Command(
        name = "bedledger nitrogen",
        sortOptions = false,
        description =
                "Estimate the nitrogen that what went back sets free or locks up, for the next crop or for nobody; and"
                        + " phosphorus in less phosphorus sold.",
        footer = {
            "",
            "Example: bedledger nitrogen N1 N2 --on 2025-10-31",
            "Example: bedledger nitrogen N1 N2 --if-hauled-off"
        })
public final class NitrogenCommand implements Callable<Integer> {
    private final Surroundings around;
    private final Set<BedId> named = new LinkedHashSet<>();

    @Parameters(arity = "0..*", paramLabel = "BED", description = "only these beds, with every piece (all if left out)")
    List<String> beds = new ArrayList<>();

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(names = "--by", paramLabel = "HOW", description = "flip, bed or season (flip if left out)")
    String by = "flip";

    @Option(names = "--on", paramLabel = "DAY", description = "set free by the end of that day (today if left out)")
    @Nullable
    String on;

    @Option(names = "--with-typical", description = "count guesses from typical yields too")
    boolean typical;

    @Mixin
    SupposeOptions suppose = new SupposeOptions();

    public NitrogenCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        ReadBook book = ReadBook.open(around, options);
        named.addAll(beds.stream().map(bed -> Bed.named(book, bed)).toList());
        LocalDate day = book.dayOr("--on", on);
        Options speaking = Options.DEFAULT.speaking(book.massUnit());
        Options counted = typical ? speaking.countingTypical() : speaking;
        WeatherFolder folder = WeatherFolder.of(book);
        folder.unreadable().forEach(word -> around.err().println("Careful: " + word));
        Returned returned = Returned.of(book.farm(), book.tables(), day, counted);
        Weather weather = folder.weather(book);
        Nitrogen nitrogen = Nitrogen.of(book.farm(), returned, weather, counted);
        Optional<SupposedNitrogen> supposed = suppose.of(book, List.copyOf(named), day)
                .map(each -> new SupposedNitrogen(
                        book,
                        suppose.words(),
                        each,
                        nitrogen,
                        Nitrogen.of(
                                each.farm(), Returned.of(each.farm(), book.tables(), day, counted), weather, counted)));
        List<NitrogenTotal> totals = totals(nitrogen);
        List<Release> releases =
                nitrogen.releases().stream().filter(each -> asked(each.bed())).toList();
        List<NitrogenView.PhosphorusView> phosphorus =
                Phosphorus.of(book.farm(), book.tables(), returned, counted).balances().stream()
                        .filter(each -> asked(each.bed()))
                        .map(each -> NitrogenView.phosphorus(
                                each,
                                LaboratoryPhosphorus.of(book, each.bed(), day).orElse(null)))
                        .toList();
        NitrogenText text = new NitrogenText(
                around,
                book.opened().units().equals("us"),
                nitrogen,
                nitrogen.totals().all(this::asked));
        NitrogenView view = NitrogenView.of(
                book,
                day,
                by,
                text.answer(),
                nitrogen,
                releases,
                totals,
                phosphorus,
                supposed.map(SupposedNitrogen::view).orElse(null));
        return new Output(around, options)
                .print(
                        view,
                        view.table(),
                        out -> supposed.ifPresentOrElse(each -> each.print(around.out()), () -> {
                            book.banner().forEach(around.out()::println);
                            text.print(totals, releases, phosphorus, by, !beds.isEmpty());
                        }));
    }

    private boolean asked(BedId bed) {
        return named.isEmpty() || named.contains(bed);
    }

    private List<NitrogenTotal> totals(Nitrogen nitrogen) {
        return switch (by) {
            case "flip" -> nitrogen.totals().byFlip(this::asked);
            case "bed" -> nitrogen.totals().byBed(this::asked);
            case "season" -> nitrogen.totals().bySeason(this::asked);
            default -> throw new Failure(Exit.USAGE, "--by '" + by + "' is none of flip, bed, season.");
        };
    }
}
