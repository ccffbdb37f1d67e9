package bedledger.cli.prove;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.cli.read.ReadOptions;
import bedledger.cli.read.TextTable;
import bedledger.projections.gaps.Gap;
import bedledger.projections.gaps.Gaps;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code bedledger gaps}: what is not in the book. */
@Command(
        name = "bedledger gaps",
        sortOptions = false,
        description =
                "What is not in the book, in the order an inspector reads, each with the command that would answer it.",
        footer = {"", "Example: bedledger gaps --from 2025-01-01 --on 2025-12-31"})
public final class GapsCommand implements Callable<Integer> {
    private static final int WIDTH = 80;
    private final Surroundings around;

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(
            names = {"--on", "--to"},
            paramLabel = "DAY",
            description = "what is missing by the end of that day (today if left out)")
    @Nullable
    String on;

    @Option(
            names = "--from",
            paramLabel = "DAY",
            description =
                    "work, cleaning and training are looked for from that day on (1 January of that year if left out)")
    @Nullable
    String from;

    public GapsCommand(Surroundings around) {
        this.around = around;
    }

    /** What {@code --json} prints. */
    record View(
            boolean practice,
            String farm,
            String from,
            String on,
            @Nullable String asKnownOn,
            List<GapView> gaps) {}

    /** One gap; the command as typed after {@code bedledger}. */
    record GapView(String topic, String subject, String says, String command, List<Long> entries) {}

    @Override
    public Integer call() {
        ReadBook book = ReadBook.open(around, options);
        LocalDate day = book.dayOr("--on", on);
        LocalDate first = from == null ? day.withDayOfYear(1) : book.dayOr("--from", from);
        if (first.isAfter(day)) {
            throw new Failure(Exit.USAGE, "--from " + first + " lies after " + day + ". Give an earlier day.");
        }
        Gaps gaps = Gaps.of(book.farm(), first, day);
        View view = new View(
                book.opened().practice(),
                book.opened().farm(),
                first.toString(),
                day.toString(),
                book.asKnownOn() == null ? null : book.asKnownOn().toString(),
                gaps.all().stream()
                        .map(gap -> new GapView(
                                gap.topic().words(), gap.subject(), gap.says(), gap.command(), gap.entries()))
                        .toList());
        return new Output(around, options).print(view, table(view), out -> print(book, gaps));
    }

    private static Output.Table table(View view) {
        return new Output.Table(
                List.of("topic", "subject", "says", "command", "entries"),
                view.gaps().stream()
                        .map(gap -> List.of(
                                gap.topic(),
                                gap.subject(),
                                gap.says(),
                                gap.command(),
                                gap.entries().stream().map(String::valueOf).collect(Collectors.joining(" "))))
                        .toList());
    }

    private void print(ReadBook book, Gaps gaps) {
        book.banner().forEach(around.out()::println);
        lines("", "What is not here, " + gaps.from() + " to " + gaps.day());
        for (Gap.Topic topic : Gap.Topic.values()) {
            List<Gap> here = gaps.of(topic);
            if (!here.isEmpty()) {
                around.out().println();
                lines("", topic.words());
                here.forEach(this::print);
            }
        }
        around.out().println();
        lines(
                "",
                gaps.all().isEmpty()
                        ? "Nothing that this program looks for is missing."
                        : gaps.all().size()
                                + " in all. Not everything need be answered: what was not done has no entry. Words in capitals are for"
                                + " you to fill in; 'bedledger' goes before each command.");
    }

    private void print(Gap gap) {
        lines("  ", gap.subject() + ": " + gap.says() + numbers(gap.entries()));
        lines("      ", "> " + gap.command());
    }

    /** Up to six numbers, and how many more. */
    static String numbers(List<Long> entries) {
        int shown = 6;
        String first = entries.stream().limit(shown).map(number -> "#" + number).collect(Collectors.joining(" "));
        String more = entries.size() > shown ? " and " + (entries.size() - shown) + " more" : "";
        return entries.isEmpty() ? "" : " (" + first + more + ")";
    }

    private void lines(String indent, String text) {
        TextTable.wrapped(text, WIDTH - indent.length())
                .forEach(line -> around.out().println(indent + line));
    }
}
