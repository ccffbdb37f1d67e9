package bedledger.cli.prove;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.cli.read.ReadOptions;
import bedledger.ledger.note.Checkpoint;
import bedledger.ledger.note.Checkpoints;
import bedledger.ledger.note.NoteRejected;
import bedledger.ledger.store.BookFolder;
import bedledger.projections.audit.BalanceAnswer;
import bedledger.projections.audit.Candidate;
import bedledger.projections.audit.MockAudit;
import bedledger.projections.audit.TraceAnswer;
import bedledger.projections.findings.RuleBook;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code bedledger mock-audit}: asks the book as an inspector would, and times its answers. */
@Command(
        name = "bedledger mock-audit",
        sortOptions = false,
        description = {
            "Pick sales and lots to trace back, and crops and inputs to balance, drawn at random and weighted to risk, and answer"
                    + " them from the book, with the time each answer took.",
            "Exit code 0 when it was run, whatever it found."
        },
        footer = {"", "Example: bedledger mock-audit --on 2025-12-31 --seed spring"})
public final class MockAuditCommand implements Callable<Integer> {
    private static final int MOST = 100;
    private static final double NANOSECONDS = 1e9;
    private static final int SEED_DIGITS = 8;
    private final Surroundings around;

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(names = "--trace", paramLabel = "N", description = "how many sales or lots to trace back (3 if left out)")
    int traces = 3;

    @Option(names = "--balance", paramLabel = "N", description = "how many crops or inputs to balance (2 if left out)")
    int balances = 2;

    @Option(
            names = "--seed",
            paramLabel = "WORD",
            description =
                    "picks the same again; if left out, the first 8 digits of the root hash of the last checkpoint,"
                            + " or the day where there is none")
    @Nullable
    String seed;

    @Option(
            names = "--from",
            paramLabel = "DAY",
            description = "sales and moves from that day on (1 January of that year if left out)")
    @Nullable
    String from;

    @Option(names = "--on", paramLabel = "DAY", description = "as it was by the end of that day (today if left out)")
    @Nullable
    String on;

    public MockAuditCommand(Surroundings around) {
        this.around = around;
    }

    /** What is asked, and of what. */
    record Asked(
            String rules,
            LocalDate from,
            LocalDate on,
            String seed,
            String seedOf,
            List<Candidate> traceable,
            List<Candidate> balanceable) {}

    private record Seed(String word, String of) {}

    @Override
    public Integer call() {
        requireFew("--trace", traces);
        requireFew("--balance", balances);
        long begun = around.nanoTime().getAsLong();
        ReadBook book = ReadBook.open(around, options);
        LocalDate day = book.dayOr("--on", on);
        LocalDate first = from == null ? day.withDayOfYear(1) : book.dayOr("--from", from);
        if (first.isAfter(day)) {
            throw new Failure(Exit.USAGE, "--from " + first + " lies after " + day + ". Give an earlier day.");
        }
        long read = around.nanoTime().getAsLong();
        RuleBook rules = Judging.named(book.opened().rules());
        MockAudit audit = MockAudit.of(book.farm(), first, day, rules.id(), Judging.of(book, rules, day));
        Seed drawnBy = seed == null ? seed(book.folder(), day) : new Seed(seed, "as given");
        Asked asked = new Asked(
                rules.id() + " " + rules.edition(),
                first,
                day,
                drawnBy.word(),
                drawnBy.of(),
                audit.traceable(),
                audit.balanceable());
        MockAuditView view = MockAuditView.of(
                book, asked, seconds(read - begun), seconds(around.nanoTime().getAsLong() - read));
        answer(audit, asked, view);
        return new Output(around, options)
                .print(view, view.table(), out -> new MockAuditText(around.out(), view).print(book.banner()));
    }

    private void answer(MockAudit audit, Asked asked, MockAuditView view) {
        for (Candidate picked : MockAudit.drawn(asked.traceable(), traces, asked.seed())) {
            long before = around.nanoTime().getAsLong();
            TraceAnswer answer = audit.trace(picked.thing());
            view.trace(picked, answer, seconds(around.nanoTime().getAsLong() - before));
        }
        for (Candidate picked : MockAudit.drawn(asked.balanceable(), balances, asked.seed())) {
            long before = around.nanoTime().getAsLong();
            BalanceAnswer answer = audit.balance(picked.thing());
            view.balance(picked, answer, seconds(around.nanoTime().getAsLong() - before));
        }
    }

    private static void requireFew(String option, int many) {
        if (many < 0 || many > MOST) {
            throw new Failure(
                    Exit.USAGE, option + " " + many + " cannot be asked. Give a number from 0 to " + MOST + ".");
        }
    }

    /** Nobody chooses a root hash, and whoever holds the checkpoint can draw the same again. */
    private static Seed seed(BookFolder folder, LocalDate day) {
        try {
            Optional<Checkpoint> last =
                    Checkpoints.in(folder.checkpoints()).last().map(note -> Checkpoint.parse(note.text()));
            if (last.isPresent()) {
                return new Seed(
                        last.get().rootHash().toString().substring(0, SEED_DIGITS),
                        "from the root hash of the last checkpoint, of "
                                + last.get().size() + " entries");
            }
        } catch (NoteRejected damaged) {
            return new Seed(day.toString(), "the day, for the last checkpoint cannot be read");
        }
        return new Seed(day.toString(), "the day, for there is no checkpoint");
    }

    /** To the thousandth. */
    private static double seconds(long nanoseconds) {
        return Math.round(nanoseconds / NANOSECONDS * 1000) / 1000.0;
    }
}
