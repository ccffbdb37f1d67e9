package bedledger.cli.read;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.language.BedId;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Returned;
import bedledger.projections.soil.Soil;
import bedledger.projections.soil.SoilOptions;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bedledger soil}: soil carbon as sampled, what went in, and what published balances make of it. */
@Command(
        name = "bedledger soil",
        sortOptions = false,
        description = "Soil carbon: samples, what went back, and what published balances make of it. Estimates only.",
        footer = {"", "Example: bedledger soil N1 --years 20 --mean-temperature 10.5"})
public final class SoilCommand implements Callable<Integer> {
    private static final double GRAMS_PER_PERCENT = 10;

    private final Surroundings around;
    private final Set<BedId> named = new HashSet<>();

    @Parameters(arity = "0..*", paramLabel = "BED", description = "only these beds, in full (all if left out)")
    List<String> beds = new ArrayList<>();

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(names = "--on", paramLabel = "DAY", description = "as of the end of that day (today if left out)")
    @Nullable
    String on;

    @Option(names = "--years", paramLabel = "N", description = "how far to look ahead, 1 to 200 (20 if left out)")
    int years = 20;

    @Option(names = "--mean-temperature", paramLabel = "C", description = "mean air temperature of the year, °C")
    @Nullable
    Double celsius;

    @Option(
            names = "--water-balance",
            paramLabel = "MM",
            description = "rain and irrigation less evapotranspiration, mm a year")
    @Nullable
    Double water;

    @Option(names = "--clay", paramLabel = "%", description = "clay, where it was not tested")
    @Nullable
    Double clay;

    @Option(names = "--carbonate", paramLabel = "%", description = "carbonate (CaCO3)")
    @Nullable
    Double carbonate;

    @Option(names = "--ph", paramLabel = "PH", description = "pH, where it was not tested")
    @Nullable
    Double ph;

    @Option(names = "--soil-c-to-n", paramLabel = "RATIO", description = "carbon to nitrogen of the soil")
    @Nullable
    Double ratio;

    @Option(names = "--with-typical", description = "count guesses from typical yields too")
    boolean typical;

    public SoilCommand(Surroundings around) {
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
        Soil soil = Soil.of(book.farm(), returned, folder.weather(book), counted, given(), this::asked);
        SoilText text = new SoilText(around, soil);
        SoilView view = SoilView.of(book, text.answer(), soil);
        return new Output(around, options).print(view, view.table(), out -> {
            book.banner().forEach(around.out()::println);
            text.print(!beds.isEmpty());
        });
    }

    private boolean asked(BedId bed) {
        return named.isEmpty() || named.contains(bed);
    }

    private SoilOptions given() {
        return new SoilOptions(
                (int) within("--years", (double) years, 1, 200).orElseThrow(),
                within("--mean-temperature", celsius, -10, 35),
                within("--water-balance", water, -3000, 6000),
                times(GRAMS_PER_PERCENT, within("--clay", clay, 0, 100)),
                times(GRAMS_PER_PERCENT, within("--carbonate", carbonate, 0, 100)),
                within("--ph", ph, 3, 10),
                within("--soil-c-to-n", ratio, 4, 40));
    }

    private static OptionalDouble times(double factor, OptionalDouble value) {
        return value.isPresent() ? OptionalDouble.of(factor * value.getAsDouble()) : value;
    }

    private static OptionalDouble within(String option, @Nullable Double value, double least, double most) {
        if (value == null) {
            return OptionalDouble.empty();
        }
        if (!(value >= least && value <= most)) {
            throw new Failure(
                    Exit.USAGE,
                    option + " '" + value + "': no soil or climate has that. Give a number from " + Figure.short3(least)
                            + " to " + Figure.short3(most) + ".");
        }
        return OptionalDouble.of(value);
    }
}
