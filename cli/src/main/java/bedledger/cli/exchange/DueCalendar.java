package bedledger.cli.exchange;

import bedledger.cli.read.ReadBook;
import bedledger.language.Entry;
import bedledger.projections.due.Due;
import bedledger.projections.due.DueItem;
import bedledger.projections.due.PickWords;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is due, as a calendar.
 *
 * @param events how many days it holds
 * @param without how many things have no day, and so no place in a calendar
 */
public record DueCalendar(String text, int events, long without) {
    public static DueCalendar of(ReadBook book, Due due, Instant written) {
        List<ICalendar.Event> events = due.all().stream()
                .flatMap(item -> Stream.ofNullable(event(book, item)))
                .toList();
        String name =
                (book.opened().practice() ? "PRACTICE " : "") + book.opened().farm() + ": due";
        return new DueCalendar(
                ICalendar.text(name, written, events), events.size(), due.all().size() - events.size());
    }

    /** What whoever takes it should know. */
    public List<String> remarks() {
        return without == 0
                ? List.of()
                : List.of(without + (without == 1 ? " thing has" : " things have")
                        + " no day in sight and no place in a calendar; they are in: bedledger due");
    }

    private static ICalendar.@Nullable Event event(ReadBook book, DueItem item) {
        String practice = book.opened().practice() ? "PRACTICE: " : "";
        String why = item.why().isEmpty() ? item.says() + "." : item.why();
        return item.day() == null
                ? null
                : new ICalendar.Event(
                        uid(book, item),
                        item.day(),
                        practice + item.says(),
                        why + "\n" + (PickWords.numbers(item.entries()) + " " + item.basis()).strip()
                                + "\nbedledger "
                                + item.command());
    }

    /** Of the book, the kind, the subject and the entries: not of the day, which may change. */
    private static String uid(ReadBook book, DueItem item) {
        Entry first = book.farm().written().get(0);
        String of = first.act() + " " + item.kind() + " " + item.subject() + " "
                + item.entries().stream().map(String::valueOf).collect(Collectors.joining(" "));
        return UUID.nameUUIDFromBytes(of.getBytes(StandardCharsets.UTF_8)) + "@bedledger.invalid";
    }
}
