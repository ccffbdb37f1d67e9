package bedledger.cli.read;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.language.Entry;
import bedledger.ledger.entry.Line;
import bedledger.projections.history.FactWords;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code bedledger entry 31}: one entry as it stands in the log, and what became of it. */
@Command(
        name = "bedledger entry",
        sortOptions = false,
        description = "Show one entry, its line in the log, and what became of it.",
        footer = {"", "Example: bedledger entry 31"})
public final class ShowEntry implements Callable<Integer> {
    private final Surroundings around;

    @Parameters(arity = "0..1", paramLabel = "NUMBER", description = "the entry's number; the last twenty if left out")
    String number = "";

    @Mixin
    ReadOptions options = new ReadOptions();

    public ShowEntry(Surroundings around) {
        this.around = around;
    }

    /** What {@code --json} prints; {@code line} is the entry's line in the log, byte for byte. */
    record View(
            boolean practice,
            String farm,
            long entry,
            String words,
            String status,
            @Nullable Long answeredBy,
            @Nullable String reason,
            String line) {}

    @Override
    public Integer call() {
        ReadBook book = ReadBook.open(around, options);
        if (number.isEmpty()) {
            return new LastEntries(around, options).print(book);
        }
        long wanted = parsed();
        Entry entry = book.farm().written().stream()
                .filter(known -> known.number() == wanted)
                .findFirst()
                .orElseThrow(() -> new Failure(
                        Exit.REFUSED,
                        "There is no entry #" + wanted + book.known() + "; the last is #"
                                + book.farm().written().size() + "."));
        Entry answer = book.farm().standing().answerTo(entry);
        View view = new View(
                book.opened().practice(),
                book.opened().farm(),
                wanted,
                FactWords.of(entry.fact()),
                answer == null
                        ? "in force"
                        : answer.fact() instanceof bedledger.language.BookKeeping.Struck ? "struck" : "replaced",
                answer == null ? null : answer.number(),
                answer == null || answer.head().corrects() == null
                        ? null
                        : answer.head().corrects().reason(),
                new String(Line.write(entry), StandardCharsets.UTF_8));
        Output.Table table = new Output.Table(
                List.of("entry", "words", "status", "line"),
                List.of(List.of(Long.toString(wanted), view.words(), view.status(), view.line())));
        return new Output(around, options).print(view, table, out -> print(book, view));
    }

    private long parsed() {
        try {
            return Long.parseLong(number.startsWith("#") ? number.substring(1) : number);
        } catch (NumberFormatException notANumber) {
            throw new Failure(Exit.USAGE, "'" + number + "' is no entry number. The last entries: bedledger entry");
        }
    }

    private void print(ReadBook book, View view) {
        book.banner().forEach(around.out()::println);
        around.out().println("#" + view.entry() + "  " + view.words());
        around.out()
                .println("    " + view.status()
                        + (view.answeredBy() == null ? "" : " by #" + view.answeredBy() + ": " + view.reason()));
        around.out().println(view.line());
    }
}
