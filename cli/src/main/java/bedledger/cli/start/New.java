package bedledger.cli.start;

import bedledger.cli.BookPlace;
import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.domain.ActIds;
import bedledger.domain.Book;
import bedledger.language.BadValue;
import bedledger.language.BookKeeping;
import bedledger.language.PersonId;
import bedledger.language.Refused;
import bedledger.ledger.note.KeyFile;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.note.SigningKey;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.store.BookUnusable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bedledger new FOLDER}: starts a book. */
@picocli.CommandLine.Command(
        name = "bedledger new",
        sortOptions = false,
        description = "Start a book in a folder: the whole record of one farm.",
        footer = {"", "Example: bedledger new my-farm --farm \"Hollow Lane Farm\" --rules us --units metric"})
public final class New implements java.util.concurrent.Callable<Integer> {
    private final Surroundings around;

    @Parameters(paramLabel = "FOLDER", description = "the folder; made if it is not there")
    Path folder = Path.of("");

    @Option(names = "--farm", required = true, paramLabel = "NAME", description = "the farm's name")
    String farm = "";

    @Option(names = "--rules", paramLabel = "us|eu", description = "the rule book (us if left out)")
    String rules = "us";

    @Option(names = "--units", paramLabel = "metric|us", description = "the units shown (metric if left out)")
    String units = "metric";

    @Option(
            names = "--time-zone",
            paramLabel = "ZONE",
            description = "as in America/New_York (this computer's if left out)")
    String timeZone = ZoneId.systemDefault().getId();

    @Option(
            names = "--practice",
            description = "a practice book, for ever: for trying and learning; the moment of writing may be given,"
                    + " and every page says PRACTICE")
    boolean practice;

    @Option(names = "--written-by", paramLabel = "WHO", description = "who writes (else BEDLEDGER_PERSON, else owner)")
    String writtenBy = "";

    @Option(names = "--written", paramLabel = "MOMENT", description = "practice books only: the moment of writing")
    @Nullable
    String written;

    public New(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        BookKeeping.BookOpened opened = new BookKeeping.BookOpened(
                checkedFarm(),
                practice,
                zone().getId(),
                oneOf("rules", rules, "us", "eu"),
                oneOf("units", units, "metric", "us"));
        BookFolder place = new BookFolder(around.folder().resolve(folder).normalize());
        SigningKey key = SigningKey.generate(keyName());
        Path keyFile = BookPlace.keyFile(around, key.verifier());
        make(place, key, keyFile, opened);
        around.out()
                .println("Started " + (practice ? "a PRACTICE book" : "the book") + " of " + farm + " in "
                        + place.root());
        around.out()
                .println(
                        "Days: " + opened.timeZone() + "; units: " + opened.units() + "; rule book: " + opened.rules());
        around.out().println("Its key is " + keyFile);
        around.out()
                .println("Keep a copy of the key in a safe place, apart from the book: who has it can sign for you.");
        around.out().println("Next: bedledger did register-field NAME --gross 0.05ha --book " + place.root());
        return Exit.OK;
    }

    /** The key comes first: a book whose key was lost at its making could never be sealed. */
    private void make(BookFolder place, SigningKey key, Path keyFile, BookKeeping.BookOpened opened) {
        keep(key, keyFile);
        try (Book book =
                Book.create(place, key, opened, writer(), around.clock(), new ActIds(around.random()), moment())) {
            book.seal(key);
        } catch (BookUnusable failed) {
            forget(keyFile);
            throw new Failure(Exit.CANNOT_CREATE, String.valueOf(failed.getMessage()));
        } catch (RuntimeException failed) {
            forget(keyFile);
            throw failed;
        }
    }

    private static void keep(SigningKey key, Path keyFile) {
        try {
            Files.createDirectories(keyFile.toAbsolutePath().getParent());
            KeyFile.save(key, keyFile);
        } catch (UncheckedIOException | NoteRejected failed) {
            throw new Failure(Exit.CANNOT_CREATE, "The book was not started. " + failed.getMessage());
        } catch (IOException failed) {
            throw new Failure(
                    Exit.CANNOT_CREATE,
                    "The book was not started: its key could not be kept in '" + keyFile + "': " + failed.getMessage()
                            + ". Check that the folder is there and yours to write in, or set XDG_CONFIG_HOME.");
        }
    }

    private static void forget(Path keyFile) {
        try {
            Files.deleteIfExists(keyFile);
        } catch (IOException left) {
            // A key without a book does no harm.
        }
    }

    private String checkedFarm() {
        if (farm.isBlank() || farm.length() > 120 || farm.codePoints().anyMatch(Character::isISOControl)) {
            throw new Refused(
                    List.of(new BadValue(farm, "this cannot be a farm's name", "write up to 120 characters on one line")
                            .as("farm")));
        }
        return farm.strip();
    }

    /** A name for the key and the log: the farm in plain letters, and a random part so that no two books share it. */
    private String keyName() {
        String plain = Normalizer.normalize(farm, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        return (plain.isEmpty() ? "farm" : plain) + "/"
                + "%08x".formatted(around.random().nextInt());
    }

    private ZoneId zone() {
        try {
            return ZoneId.of(timeZone);
        } catch (DateTimeException unknown) {
            throw new Refused(
                    List.of(new BadValue(timeZone, "there is no such time zone", "write it like America/New_York")
                            .as("time-zone")));
        }
    }

    private PersonId writer() {
        try {
            String named = writtenBy.isEmpty() ? around.environment().getOrDefault("BEDLEDGER_PERSON", "") : writtenBy;
            return new PersonId(named.isEmpty() ? "owner" : named);
        } catch (BadValue bad) {
            throw new Refused(List.of(bad.as("written-by")));
        }
    }

    private java.time.@Nullable Instant moment() {
        if (written == null) {
            return null;
        }
        try {
            return LocalDateTime.parse(written.contains("T") ? written : written + "T20:00")
                    .atZone(zone())
                    .toInstant();
        } catch (DateTimeException notAMoment) {
            throw new Refused(List.of(
                    new BadValue(written, "it is not a moment", "write 2025-07-14 or 2025-07-14T20:30").as("written")));
        }
    }

    private static String oneOf(String option, String given, String... choices) {
        if (!List.of(choices).contains(given)) {
            throw new Refused(
                    List.of(new BadValue(given, "it is none of the choices", "choose " + String.join(" or ", choices))
                            .as(option)));
        }
        return given;
    }
}
