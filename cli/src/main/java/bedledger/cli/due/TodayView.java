package bedledger.cli.due;

import bedledger.cli.due.DueView.ItemView;
import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.projections.due.Asked;
import bedledger.projections.due.Due;
import bedledger.projections.due.Tarps;
import bedledger.projections.history.BookZone;
import bedledger.projections.history.FactWords;
import bedledger.projections.history.HeadWords;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What {@code today --json} prints.
 *
 * @param items what is due or not to be done on the day and the day after
 * @param done what is in force and was done on the day
 * @param writtenLate the numbers of entries written on the day, of work done earlier
 * @param underTarp what lies under tarps, a sentence for each
 */
record TodayView(
        boolean practice,
        String farm,
        String on,
        @Nullable String asKnownOn,
        List<ItemView> items,
        List<DoneView> done,
        List<Long> writtenLate,
        List<String> underTarp) {

    /** One act done on the day. */
    record DoneView(long entry, String words, String more) {}

    static TodayView of(ReadBook book, Asked asked, Due due) {
        LocalDate day = due.on();
        BookZone zone = BookZone.of(book.farm());
        List<Entry> work = book.farm().inForce().stream()
                .filter(entry -> !(entry.fact() instanceof BookKeeping.BookOpened))
                .toList();
        return new TodayView(
                book.opened().practice(),
                book.opened().farm(),
                day.toString(),
                book.asKnownOn() == null ? null : book.asKnownOn().toString(),
                due.all().stream().map(item -> ItemView.of(item, due)).toList(),
                work.stream()
                        .filter(entry -> entry.head().doneOn().equals(day))
                        .map(entry -> new DoneView(entry.number(), FactWords.of(entry.fact()), HeadWords.of(entry)))
                        .toList(),
                work.stream()
                        .filter(entry -> zone.writtenOn(entry).equals(day)
                                && entry.head().doneOn().isBefore(day))
                        .map(Entry::number)
                        .sorted()
                        .toList(),
                Tarps.lying(asked).stream()
                        .map(lying -> lying.words(day) + "; " + lying.lookWords())
                        .toList());
    }

    boolean isEmpty() {
        return items.isEmpty() && done.isEmpty() && writtenLate.isEmpty() && underTarp.isEmpty();
    }

    Output.Table table() {
        Stream<List<String>> due = items.stream()
                .map(item -> List.of(
                        item.kind(),
                        item.day() == null ? "" : item.day(),
                        item.says(),
                        item.command(),
                        String.join(
                                " ",
                                item.entries().stream().map(String::valueOf).toList())));
        Stream<List<String>> acts =
                done.stream().map(act -> List.of("done", on, act.words(), "", Long.toString(act.entry())));
        Stream<List<String>> tarps = underTarp.stream().map(words -> List.of("under-tarp", on, words, "", ""));
        return new Output.Table(
                List.of("kind", "day", "says", "command", "entries"),
                Stream.of(due, acts, tarps).flatMap(rows -> rows).toList());
    }
}
