package bedledger.cli.exchange;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.cli.read.Asking;
import bedledger.cli.read.ReadBook;
import bedledger.cli.read.ReadOptions;
import bedledger.cli.read.TextTable;
import bedledger.projections.due.Asked;
import bedledger.projections.due.Due;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code bedledger export}: the record for other programs, in open standards. */
@Command(
        name = "bedledger export",
        sortOptions = false,
        description = {
            "Hand the record to other programs, in open standards:",
            "  epcis       lots from bed to buyer, GS1 EPCIS 2.0 (JSON-LD)",
            "  icalendar   what is due, RFC 5545",
            "  geojson     the beds, RFC 7946; no positions are recorded",
            "  operations  what was done, CSV with ICASA names where they fit"
        },
        footer = {"", "Example: bedledger export --as epcis --out lots.json"})
public final class Export implements Callable<Integer> {
    private static final List<String> KINDS = List.of("epcis", "icalendar", "geojson", "operations");
    /** What is due within a year: a calendar is looked at without the book beside it. */
    private static final int CALENDAR_DAYS = 366;

    private final Surroundings around;

    @Mixin
    ReadOptions.OfExport options = new ReadOptions.OfExport();

    @Option(
            names = "--as",
            required = true,
            paramLabel = "KIND",
            description = "epcis, icalendar, geojson or operations")
    String as = "";

    @Option(names = "--on", paramLabel = "DAY", description = "what was done up to that day (today if left out)")
    @Nullable
    String on;

    @Option(names = "--out", paramLabel = "FILE", description = "into a new file (else it is printed)")
    @Nullable
    Path out;

    @Option(
            names = "--base",
            paramLabel = "ADDRESS",
            description = "epcis, geojson: names begin with this address (else one that leads nowhere)")
    @Nullable
    String base;

    public Export(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        if (!KINDS.contains(as)) {
            throw new Failure(Exit.USAGE, "--as " + as + ": give one of " + String.join(", ", KINDS) + ".");
        }
        ReadBook book = ReadBook.open(around, options.reading());
        LocalDate day = book.dayOr("--on", on);
        Written written = written(book, day);
        if (out == null) {
            around.out().print(written.text());
        } else {
            around.out().println("Written to " + FreeFile.write(around.folder().resolve(out), written.text()));
        }
        written.remarks().forEach(remark -> TextTable.wrapped(remark, 80).forEach(around.err()::println));
        return Exit.OK;
    }

    private Written written(ReadBook book, LocalDate day) {
        Instant now = around.clock().instant();
        return switch (as) {
            case "epcis" -> Epcis.of(book, day, base(book), now);
            case "geojson" -> BedsGeoJson.of(book, day, base(book));
            case "operations" -> Operations.of(book, day);
            default -> calendar(book, day, now);
        };
    }

    private static Written calendar(ReadBook book, LocalDate day, Instant now) {
        DueCalendar calendar = DueCalendar.of(book, Due.of(Asked.of(Asking.may(book, day), CALENDAR_DAYS)), now);
        return new Written(calendar.text(), calendar.remarks());
    }

    /** Example addresses that lead nowhere end in .invalid, RFC 2606. */
    private Base base(ReadBook book) {
        if (base == null) {
            String farm = book.opened().farm().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
            return new Base("https://" + farm.replaceAll("^-|-$", "") + ".invalid");
        }
        if (!base.matches("https?://[A-Za-z0-9.-]+(:[0-9]+)?(/[A-Za-z0-9._~/-]*)?")) {
            throw new Failure(
                    Exit.USAGE, "--base '" + base + "' is no address. Write it like https://example.org/farm");
        }
        return new Base(base);
    }
}
