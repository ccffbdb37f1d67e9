package bedledger.cli.prove;

import bedledger.cli.Bedledger;
import bedledger.cli.BookPlace;
import bedledger.cli.Exit;
import bedledger.cli.Surroundings;
import bedledger.cli.read.Output;
import bedledger.cli.read.ReadOptions;
import bedledger.cli.read.TextTable;
import bedledger.language.BookKeeping;
import bedledger.ledger.entry.Line;
import bedledger.ledger.entry.UnreadableEntry;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.store.DatabaseRows;
import bedledger.ledger.verify.Disagreement;
import bedledger.ledger.verify.Evidence;
import bedledger.ledger.verify.Verdict;
import bedledger.ledger.verify.Verifier;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code bedledger verify}: whether journal, database and checkpoints agree, and agree with a checkpoint that somebody else kept. */
@Command(
        name = "bedledger verify",
        sortOptions = false,
        description = "Check that nothing in the log was changed, and name the first entry that does not agree.",
        footer = {"", "Example: bedledger verify --against checkpoint-kept-by-the-certifier.txt"})
public final class Verify implements Callable<Integer> {
    /** What a seal proves and what it does not, in plain words. */
    public static final List<String> PROVES = List.of(
            "A change made without the book's key no longer agrees with the signed checkpoints, and is found. Where the"
                    + " checkpoints were cut back too, or the key was used or exchanged, it is found by whoever holds an"
                    + " earlier checkpoint or the key above: bedledger verify --against FILE. Nothing before anybody else"
                    + " held a checkpoint is proved.");

    private final Surroundings around;

    @Option(names = "--book", paramLabel = "FOLDER", description = "the book (else the one in this folder or above it)")
    @Nullable
    Path book;

    @Option(names = "--against", paramLabel = "FILE", description = "a checkpoint that somebody else kept")
    @Nullable
    Path against;

    @Option(names = "--json", description = "as JSON, by the schema of the same name")
    boolean json;

    public Verify(Surroundings around) {
        this.around = around;
    }

    /** What {@code --json} prints. */
    record View(
            boolean practice,
            boolean agrees,
            String key,
            long entries,
            long checkpoints,
            long sealed,
            long notYetSealed,
            long databaseRows,
            List<DisagreementView> disagreements,
            long notListed) {}

    /** One disagreement: the entries it concerns (0: none), what kind, what was found, what expected, what to do. */
    record DisagreementView(
            long first, long last, String fault, String where, String found, String expected, String whatToDo) {
        String entries() {
            if (first == 0) {
                return "no entry";
            }
            return first == last ? "entry " + first : "entries " + first + " to " + last;
        }

        String words() {
            return entries() + ", " + where + ": found " + found + ", expected " + expected + ". " + whatToDo;
        }
    }

    @Override
    public Integer call() {
        BookFolder folder = BookPlace.find(around, book);
        String key = folder.verifierKey().toString();
        Evidence evidence = Evidence.of(folder.journal(), folder.checkpoints(), key);
        if (against != null) {
            evidence = evidence.against(read(around.folder().resolve(against)));
        }
        Verdict verdict;
        try (DatabaseRows rows = DatabaseRows.of(folder)) {
            verdict = Verifier.verify(evidence.withRows(rows));
        }
        List<DisagreementView> documents = Documents.check(folder);
        View view = view(isPractice(folder), key, verdict, documents);
        if (json) {
            ReadOptions options = ReadOptions.asJson();
            new Output(around, options).print(view, new Output.Table(List.of(), List.of()), out -> {});
        } else {
            print(view);
        }
        return view.agrees() ? Exit.OK : Exit.FOUND_WANTING;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException failed) {
            throw Bedledger.unreadable(file, failed);
        }
    }

    /** Whether the first line, as far as it can be read, opens a practice book. */
    private static boolean isPractice(BookFolder folder) {
        try (BufferedReader lines = Files.newBufferedReader(folder.journal())) {
            String first = lines.readLine();
            return first != null
                    && Line.read(first.getBytes(StandardCharsets.UTF_8)).fact() instanceof BookKeeping.BookOpened opened
                    && opened.practice();
        } catch (IOException | UnreadableEntry unreadable) {
            return false;
        }
    }

    private static View view(boolean practice, String key, Verdict verdict, List<DisagreementView> documents) {
        return new View(
                practice,
                verdict.agrees() && documents.isEmpty(),
                key,
                verdict.entries(),
                verdict.checkpoints(),
                verdict.sealed(),
                verdict.notYetSealed(),
                verdict.rows(),
                Stream.concat(verdict.disagreements().stream().map(Verify::view), documents.stream())
                        .toList(),
                verdict.notListed());
    }

    private static DisagreementView view(Disagreement one) {
        return new DisagreementView(
                one.first(),
                one.last(),
                bedledger.language.Words.of(one.fault()),
                one.where(),
                one.found(),
                one.expected(),
                one.whatToDo());
    }

    private void print(View view) {
        if (view.practice()) {
            around.out().println("PRACTICE book");
        }
        around.out()
                .println(view.entries() + " entries, " + view.checkpoints() + " checkpoints agree, " + view.sealed()
                        + " entries sealed, " + view.notYetSealed() + " not yet.");
        around.out().println("Key " + view.key());
        if (view.agrees()) {
            around.out().println("Everything agrees.");
        } else {
            around.out()
                    .println("DOES NOT AGREE, first at "
                            + view.disagreements().get(0).entries() + ":");
            view.disagreements()
                    .forEach(one -> TextTable.wrapped("- " + one.words(), 80).forEach(around.out()::println));
        }
        PROVES.forEach(text -> TextTable.wrapped(text, 80).forEach(around.out()::println));
    }
}
