package bedledger.cli.due;

import bedledger.cli.Surroundings;
import bedledger.cli.due.DueView.ItemView;
import bedledger.cli.read.Asking;
import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.cli.read.ReadOptions;
import bedledger.cli.read.TextTable;
import bedledger.projections.due.Asked;
import bedledger.projections.due.Due;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code bedledger today}: the day on one screen. */
@Command(
        name = "bedledger today",
        sortOptions = false,
        description = "The day on one screen: what is due or may not be done today and tomorrow, what was done, what"
                + " lies under tarps.",
        footer = {"", "Example: bedledger today --on yesterday"})
public final class TodayCommand implements Callable<Integer> {
    private static final DateTimeFormatter FULL = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);
    private static final int WIDTH = 80;
    private final Surroundings around;

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(names = "--on", paramLabel = "DAY", description = "the day asked about (today if left out)")
    @Nullable
    String on;

    @Mixin
    TarpOptions tarps = new TarpOptions();

    public TodayCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        ReadBook book = ReadBook.open(around, options);
        LocalDate day = book.dayOr("--on", on);
        Asked asked = new Asked(Asking.may(book, day), Moments.of(around, book, day), day.plusDays(1), tarps.weeks());
        TodayView view = TodayView.of(book, asked, Due.of(asked));
        return new Output(around, options).print(view, view.table(), out -> print(book, day, view));
    }

    private void print(ReadBook book, LocalDate day, TodayView view) {
        book.banner().forEach(around.out()::println);
        around.out().println(FULL.format(day));
        if (view.isEmpty()) {
            around.out().println("Nothing due, nothing done, nothing under a tarp, as far as the book says.");
            return;
        }
        part("Not yet", items(view, "not-yet"));
        part("To do", items(view, "do"));
        part("To look at", items(view, "look"));
        part("Free from today", items(view, "free"));
        part("Done", done(view));
        part("Under tarp", underTarp(view));
        around.out().println();
        around.out().println("Why, and the command for each: bedledger due --on " + day);
    }

    private static List<String> items(TodayView view, String kind) {
        return view.items().stream()
                .filter(item -> item.kind().equals(kind))
                .filter(item -> view.underTarp().stream().noneMatch(item.says()::startsWith))
                .map(TodayCommand::words)
                .toList();
    }

    private static String words(ItemView item) {
        return (item.overdue() ? "PAST " + item.day() + ": " : "") + item.says();
    }

    private static List<String> done(TodayView view) {
        List<String> words = new java.util.ArrayList<>(view.done().stream()
                .map(act ->
                        "#" + act.entry() + "  " + act.words() + (act.more().isEmpty() ? "" : " (" + act.more() + ")"))
                .toList());
        if (!view.writtenLate().isEmpty()) {
            words.add("written of earlier days: "
                    + view.writtenLate().stream().map(number -> "#" + number).collect(Collectors.joining(" ")));
        }
        return words;
    }

    /** What is to be looked at is said here, not twice. */
    private static List<String> underTarp(TodayView view) {
        return view.underTarp().stream()
                .map(lying -> view.items().stream()
                        .map(ItemView::says)
                        .filter(says -> says.startsWith(lying))
                        .findFirst()
                        .map(says -> says + ": time to look")
                        .orElse(lying))
                .toList();
    }

    private void part(String title, List<String> words) {
        if (!words.isEmpty()) {
            around.out().println();
            around.out().println(title);
            words.forEach(this::line);
        }
    }

    private void line(String text) {
        List<String> lines = TextTable.wrapped(text, WIDTH - 4);
        for (int at = 0; at < lines.size(); at++) {
            around.out().println((at == 0 ? "  " : "    ") + lines.get(at));
        }
    }
}
