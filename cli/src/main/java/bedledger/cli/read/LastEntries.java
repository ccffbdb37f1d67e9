package bedledger.cli.read;

import bedledger.cli.Surroundings;
import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.projections.history.FactWords;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The entries last written, for whoever looks for a number or a lot's name. */
final class LastEntries {
    private static final int MANY = 20;
    private final Surroundings around;
    private final ReadOptions options;

    LastEntries(Surroundings around, ReadOptions options) {
        this.around = around;
        this.options = options;
    }

    /** What {@code entry --json} prints without a number. */
    record View(boolean practice, String farm, List<Row> entries) {}

    /** One entry; {@code status} as in force, replaced, struck. */
    record Row(
            long entry,
            String doneOn,
            String words,
            String status,
            @Nullable Long answeredBy) {}

    int print(ReadBook book) {
        List<Entry> written = book.farm().written();
        List<Row> rows = written.subList(Math.max(0, written.size() - MANY), written.size()).stream()
                .map(entry -> row(book, entry))
                .toList();
        Output.Table table = new Output.Table(
                List.of("entry", "done_on", "words", "status"),
                rows.stream()
                        .map(row -> List.of(Long.toString(row.entry()), row.doneOn(), row.words(), row.status()))
                        .toList());
        return new Output(around, options)
                .print(new View(book.opened().practice(), book.opened().farm(), rows), table, out -> show(book, rows));
    }

    private static Row row(ReadBook book, Entry entry) {
        Entry answer = book.farm().standing().answerTo(entry);
        String status =
                answer == null ? "in force" : answer.fact() instanceof BookKeeping.Struck ? "struck" : "replaced";
        return new Row(
                entry.number(),
                entry.head().doneOn().toString(),
                FactWords.of(entry.fact()),
                status,
                answer == null ? null : answer.number());
    }

    private void show(ReadBook book, List<Row> rows) {
        book.banner().forEach(around.out()::println);
        TextTable table = new TextTable("#", "done on", "what");
        rows.forEach(row -> table.row(
                row.entry(),
                row.doneOn(),
                row.words() + (row.answeredBy() == null ? "" : " — " + row.status() + " by #" + row.answeredBy())));
        table.lines().forEach(around.out()::println);
    }
}
