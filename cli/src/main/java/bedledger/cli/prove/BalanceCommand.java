package bedledger.cli.prove;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.cli.read.ReadOptions;
import bedledger.language.CropName;
import bedledger.language.MaterialName;
import bedledger.language.Words;
import bedledger.projections.balance.Balance;
import bedledger.projections.balance.CropBalance;
import bedledger.projections.balance.MaterialBalance;
import bedledger.projections.balance.Plausible;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bedledger balance}: opening, what came in and went out, expected, counted. */
@Command(
        name = "bedledger balance",
        sortOptions = false,
        description =
                "Mass balance of a crop or a listed material between two counts, with the entries behind every figure.",
        footer = {"", "Example: bedledger balance carrot --from 2025-02-20 --to 2025-09-30"})
public final class BalanceCommand implements Callable<Integer> {
    private final Surroundings around;

    @Parameters(arity = "1", paramLabel = "CROP|MATERIAL", description = "the crop, or the material as listed")
    String of = "";

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(
            names = "--from",
            paramLabel = "DAY",
            description = "the day of the opening count (the first of that year if left out)")
    @Nullable
    String from;

    @Option(
            names = {"--to", "--on"},
            paramLabel = "DAY",
            description = "the day of the closing count (the last one if left out)")
    @Nullable
    String to;

    public BalanceCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        ReadBook book = ReadBook.open(around, options);
        LocalDate first = from == null ? null : book.dayOr("--from", from);
        LocalDate last = to == null ? null : book.dayOr("--to", to);
        if (first != null && last != null && !first.isBefore(last)) {
            throw new Failure(
                    Exit.USAGE, "--from " + first + " does not lie before --to " + last + ". Turn them round.");
        }
        Optional<CropName> crop = crop(book);
        return crop.isPresent() ? crop(book, crop.get(), first, last) : material(book, first, last);
    }

    private int crop(ReadBook book, CropName crop, @Nullable LocalDate first, @Nullable LocalDate last) {
        CropBalance balanced = CropBalance.of(book.farm(), crop, first, last, book.today());
        Balance balance = balanced.balance();
        if (balanced.lots().isEmpty()
                && balance.opening().isEmpty()
                && balance.closing().isEmpty()) {
            throw new Failure(
                    Exit.REFUSED,
                    "No lot and no count of " + crop + " by " + balance.to() + book.known()
                            + ". A harvest is entered with: did harvest; what lay in store before, with: did found-lot");
        }
        Plausible plausible = Plausible.of(book.farm(), book.tables(), crop, balance.from(), balance.to());
        BalanceView view = BalanceView.of(book, balance, balanced, plausible);
        return new Output(around, options).print(view, view.table(), out -> {
            BalanceText text = begun(book, view);
            text.lots();
            text.seedToSale(plausible, book.massUnit());
        });
    }

    private int material(ReadBook book, @Nullable LocalDate first, @Nullable LocalDate last) {
        MaterialName material = listed(book);
        BalanceView view =
                BalanceView.of(book, MaterialBalance.of(book.farm(), material, first, last, book.today()), null, null);
        return new Output(around, options).print(view, view.table(), out -> begun(book, view));
    }

    private BalanceText begun(ReadBook book, BalanceView view) {
        book.banner().forEach(around.out()::println);
        BalanceText text = new BalanceText(around.out(), view);
        text.print();
        return text;
    }

    /** A crop that the tables know or that the book names. */
    private Optional<CropName> crop(ReadBook book) {
        return book.tables()
                .crop(of)
                .map(known -> new CropName(known.name()))
                .or(() -> Named.crops(book.farm()).stream()
                        .filter(name -> name.name().equalsIgnoreCase(of.strip()))
                        .findFirst());
    }

    private MaterialName listed(ReadBook book) {
        List<MaterialName> materials = Named.places(book.farm(), MaterialName.class);
        return materials.stream()
                .filter(material -> material.name().equalsIgnoreCase(of.strip()))
                .findFirst()
                .orElseThrow(() -> new Failure(
                        Exit.REFUSED,
                        "There is no crop and no listed material '" + of + "'" + book.known() + "."
                                + Words.nearest(
                                                of,
                                                Stream.concat(
                                                                materials.stream()
                                                                        .map(MaterialName::name),
                                                                Named.crops(book.farm()).stream()
                                                                        .map(CropName::name))
                                                        .toList())
                                        .map(near -> " Did you mean '" + near + "'?")
                                        .orElse("")));
    }
}
