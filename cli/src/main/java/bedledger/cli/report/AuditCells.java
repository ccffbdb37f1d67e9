package bedledger.cli.report;

import bedledger.language.BookKeeping;
import bedledger.language.DocumentId;
import bedledger.language.Entry;
import bedledger.language.PersonId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The cells that every table of entries has: when, what, with what, who, on what paper, written when, what became of it, its number. */
final class AuditCells {
    static final List<String> COLUMNS = List.of(
            "date",
            "where",
            "operation",
            "what, how much",
            "input or lot",
            "who",
            "document",
            "written (lag)",
            "corrected?",
            "entry");
    private static final int SHORT_HASH = 12;

    private final Asked asked;
    private final int lateFrom;
    private final FactParts parts;
    private final Map<Long, List<Entry>> attached = new HashMap<>();

    /** @param lateFrom the days of lag from which it is set in bold */
    AuditCells(Asked asked, int lateFrom) {
        this.asked = asked;
        this.lateFrom = lateFrom;
        this.parts = new FactParts(asked.links());
        asked.farm()
                .ofKind(BookKeeping.DocumentAttached.class)
                .forEach(entry -> attached.computeIfAbsent(
                                ((BookKeeping.DocumentAttached) entry.fact()).entry(), number -> new ArrayList<>())
                        .add(entry));
    }

    FactParts parts() {
        return parts;
    }

    /** A row of {@link #COLUMNS}. */
    Row row(Entry entry) {
        return marked(
                entry,
                List.of(
                        date(entry),
                        Cell.of(parts.where(entry.fact())),
                        Cell.of(FactParts.operation(entry.fact())),
                        what(entry),
                        Cell.of(parts.input(entry.fact())),
                        who(entry),
                        documents(entry),
                        written(entry),
                        corrected(entry),
                        number(entry)));
    }

    /** A row as it is, or with its words struck through where the entry is no longer in force. */
    Row marked(Entry entry, List<Cell> cells) {
        if (asked.fate().isInForce(entry)) {
            return Row.of(cells);
        }
        List<Cell> marked = new ArrayList<>();
        cells.forEach(cell -> marked.add(cell.style().equals("fate") ? cell : cell.crossedOut()));
        return Row.of(marked).styled("void");
    }

    /** The day of the work, which names the row. */
    Cell date(Entry entry) {
        return Cell.whole(entry.head().doneOn().toString()).asHeader();
    }

    Cell what(Entry entry) {
        List<Phrase> lines = new ArrayList<>();
        lines.add(parts.what(entry.fact()));
        lines.addAll(FactParts.head(entry));
        return Cell.of(lines);
    }

    Cell who(Entry entry) {
        PersonId doer = entry.head().doneBy();
        String done = doer == null ? "not recorded" : doer.name();
        boolean same = entry.writtenBy().equals(doer);
        return Cell.of(same ? done : done + "; written by " + entry.writtenBy());
    }

    /** Papers that the fact names, and the files kept with the book. */
    Cell documents(Entry entry) {
        List<Phrase> lines = new ArrayList<>();
        lines.add(parts.papers(entry.fact()));
        lines.addAll(files(entry).lines());
        return Cell.of(lines);
    }

    Cell files(Entry entry) {
        List<Phrase> lines = new ArrayList<>();
        entry.head()
                .documents()
                .forEach(document -> lines.add(Phrase.of("file ").plus(hash(document))));
        for (Entry paper : attached.getOrDefault(entry.number(), List.of())) {
            BookKeeping.DocumentAttached fact = (BookKeeping.DocumentAttached) paper.fact();
            lines.add(Phrase.of(fact.fileName() + " ")
                    .plus(hash(fact.document()))
                    .plus(" ")
                    .plus(asked.links().entry(paper.number())));
        }
        return Cell.of(lines);
    }

    private static Phrase hash(DocumentId document) {
        return Phrase.code(document.sha256().substring(0, SHORT_HASH) + "…");
    }

    long lag(Entry entry) {
        return ChronoUnit.DAYS.between(entry.head().doneOn(), asked.zone().writtenOn(entry));
    }

    Cell written(Entry entry) {
        return Cell.of(Phrase.whole(asked.zone().writtenOn(entry).toString()).plus(lagged(lag(entry))));
    }

    /** " (3 days)"; nothing where it was written on the day of the work. */
    Phrase lagged(long lag) {
        String words = "(" + days(lag) + ")";
        return lag == 0
                ? Phrase.NONE
                : Phrase.of(" ").plus(lag >= lateFrom ? Phrase.strong(words) : Phrase.whole(words));
    }

    int lateFrom() {
        return lateFrom;
    }

    static String days(long days) {
        return days == 1 ? "1 day" : days + " days";
    }

    Cell corrected(Entry entry) {
        return Cell.of(asked.fate().lines(entry)).styled("fate");
    }

    Cell number(Entry entry) {
        return Cell.of(asked.links().entry(entry.number()));
    }
}
