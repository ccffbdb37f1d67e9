package bedledger.cli.due;

import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.language.Place;
import bedledger.projections.due.Due;
import bedledger.projections.due.DueItem;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What {@code due --json} prints. */
record DueView(
        boolean practice,
        String farm,
        String on,
        String to,
        @Nullable String asKnownOn,
        List<ItemView> items) {

    /** One item; {@code day} is missing where no end is in sight. */
    record ItemView(
            String kind,
            @Nullable String day,
            boolean overdue,
            String subject,
            List<String> places,
            String says,
            String why,
            List<Long> entries,
            String command,
            String basis) {
        static ItemView of(DueItem item, Due due) {
            return new ItemView(
                    item.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    item.day() == null ? null : item.day().toString(),
                    item.overdue(due.on()),
                    item.subject(),
                    item.places().stream().map(Place::toString).toList(),
                    item.says(),
                    item.why(),
                    item.entries(),
                    item.command(),
                    item.basis());
        }
    }

    static DueView of(ReadBook book, Due due) {
        return new DueView(
                book.opened().practice(),
                book.opened().farm(),
                due.on().toString(),
                due.to().toString(),
                book.asKnownOn() == null ? null : book.asKnownOn().toString(),
                due.all().stream().map(item -> ItemView.of(item, due)).toList());
    }

    static Output.Table table(List<ItemView> items) {
        return new Output.Table(
                List.of("kind", "day", "overdue", "subject", "says", "why", "entries", "command", "basis"),
                items.stream()
                        .map(item -> List.of(
                                item.kind(),
                                item.day() == null ? "" : item.day(),
                                item.overdue() ? "yes" : "no",
                                item.subject(),
                                item.says(),
                                item.why(),
                                item.entries().stream().map(String::valueOf).collect(Collectors.joining(" ")),
                                item.command(),
                                item.basis()))
                        .toList());
    }
}
