package bedledger.cli.report;

import bedledger.cli.read.Asking;
import bedledger.language.Words;
import bedledger.projections.due.Due;
import bedledger.projections.due.DueItem;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What is due on the day of the report, and what may not be picked or planted yet. */
record DuePart(Asked asked, Optional<Due> due) {
    private static final int DAYS_AHEAD = 28;

    static DuePart of(Asked asked) {
        return new DuePart(
                asked,
                asked.rules()
                        .map(book -> Due.of(bedledger.projections.due.Asked.of(
                                Asking.may(asked.book(), asked.day()), DAYS_AHEAD))));
    }

    String on() {
        return asked.day().toString();
    }

    String to() {
        return asked.day().plusDays(DAYS_AHEAD).toString();
    }

    Table table() {
        List<String> columns = List.of("day", "what, and why");
        return Table.grouped(
                "table-due",
                "Due on " + on() + " and to " + to(),
                "Nothing, as far as the book says.",
                columns,
                Arrays.stream(DueItem.Kind.values())
                        .filter(kind -> !of(kind).isEmpty())
                        .map(kind -> new Table.Group(
                                kind.words(),
                                columns.size(),
                                of(kind).stream().map(this::row).toList()))
                        .toList());
    }

    private List<DueItem> of(DueItem.Kind kind) {
        return due.map(found -> found.of(kind)).orElse(List.of());
    }

    private Row row(DueItem item) {
        String day = item.day() == null ? "no end in sight" : item.day().toString();
        return Row.of(
                Cell.of(Phrase.whole(day).plus(item.overdue(asked.day()) ? " (past)" : ""))
                        .asHeader(),
                Cell.of(List.of(Phrase.of(Words.capital(item.says()) + "."), why(item))));
    }

    private Phrase why(DueItem item) {
        Phrase basis = item.entries().isEmpty()
                ? Phrase.of(item.basis())
                : asked.links().entries(item.entries()).plus("; " + item.basis());
        boolean told = item.why().contains("[");
        Phrase reasons = asked.links().linked(item.why());
        return told ? reasons : item.why().isEmpty() ? basis : reasons.plus(" ").plus(basis);
    }
}
