package bedledger.cli.due;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.cli.exchange.DueCalendar;
import bedledger.cli.exchange.FreeFile;
import bedledger.cli.read.Asking;
import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.cli.read.ReadOptions;
import bedledger.cli.read.TextTable;
import bedledger.language.Words;
import bedledger.projections.due.Asked;
import bedledger.projections.due.Due;
import bedledger.projections.due.DueItem;
import bedledger.projections.due.PickWords;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code bedledger due}: what is due, to be looked at or not to be done yet, with the reasons. */
@Command(
        name = "bedledger due",
        sortOptions = false,
        description = "What is due, to be looked at or not to be done yet, why, and the command that answers it.",
        footer = {"", "Example: bedledger due --on 2025-06-30 --days 60"})
public final class DueCommand implements Callable<Integer> {
    private static final int WIDTH = 80;
    private final Surroundings around;

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(names = "--on", paramLabel = "DAY", description = "the day asked about (today if left out)")
    @Nullable
    String on;

    @Option(
            names = "--days",
            paramLabel = "N",
            defaultValue = "28",
            description = "look so many days ahead (28); what may not be done yet is always told")
    int days;

    @Option(names = "--ics", paramLabel = "FILE", description = "into a new calendar file too (iCalendar, RFC 5545)")
    @Nullable
    Path ics;

    @Mixin
    TarpOptions tarps = new TarpOptions();

    public DueCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        if (days < 0 || days > 3660) {
            throw new Failure(Exit.USAGE, "--days " + days + ": look 0 to 3660 days ahead.");
        }
        ReadBook book = ReadBook.open(around, options);
        LocalDate day = book.dayOr("--on", on);
        Due due = Due.of(
                new Asked(Asking.may(book, day), Moments.of(around, book, day), day.plusDays(days), tarps.weeks()));
        DueView view = DueView.of(book, due);
        if (ics != null) {
            calendar(book, due, around.folder().resolve(ics));
        }
        return new Output(around, options).print(view, DueView.table(view.items()), out -> print(book, due));
    }

    private void calendar(ReadBook book, Due due, Path file) {
        DueCalendar calendar = DueCalendar.of(book, due, around.clock().instant());
        around.err()
                .println("Calendar of " + calendar.events() + " days written to "
                        + FreeFile.write(file, calendar.text()));
        calendar.remarks().forEach(around.err()::println);
    }

    private void print(ReadBook book, Due due) {
        book.banner().forEach(around.out()::println);
        around.out().println("Due on " + due.on() + " and to " + due.to());
        if (due.all().isEmpty()) {
            around.out().println("Nothing, as far as the book says.");
            return;
        }
        for (DueItem.Kind kind : DueItem.Kind.values()) {
            List<DueItem> here = due.of(kind);
            if (!here.isEmpty()) {
                around.out().println();
                around.out().println(kind.words());
                here.forEach(item -> print(item, due.on()));
            }
        }
        around.out().println();
        lines(
                "",
                "Where the book is silent nothing is said, which is not leave; the certifier and the label have the last word."
                        + " 'bedledger' goes before each command, words in capitals are for you to fill in.");
    }

    private void print(DueItem item, LocalDate on) {
        String day = item.day() == null ? "" : item.day() + (item.overdue(on) ? "  PAST  " : "  ");
        hanging(day + Words.capital(item.says()) + ".");
        boolean told = item.why().contains("[");
        if (!item.why().isEmpty()) {
            lines("      ", item.why());
        }
        if (!told) {
            String numbers = PickWords.numbers(item.entries());
            lines("      ", numbers + (numbers.isEmpty() ? "" : "; ") + item.basis());
        }
        lines("      ", "> " + item.command());
    }

    private void hanging(String text) {
        List<String> lines = TextTable.wrapped(text, WIDTH - 4);
        for (int at = 0; at < lines.size(); at++) {
            around.out().println((at == 0 ? "  " : "    ") + lines.get(at));
        }
    }

    private void lines(String indent, String text) {
        TextTable.wrapped(text, WIDTH - indent.length())
                .forEach(line -> around.out().println(indent + line));
    }
}
