package bedledger.cli.report;

import bedledger.language.BookKeeping;
import bedledger.language.Correction;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.projections.history.FactWords;
import bedledger.projections.history.HeadWords;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The record itself: corrections and strikes, how late it was written, what stands nowhere else, and the register of all entries. */
record RecordPart(Asked asked, EntryTables tables, LeafHashes leaves) {
    private static final int LATEST_LISTED = 50;

    private List<Entry> written() {
        return asked.farm().written();
    }

    Table corrections() {
        return Table.of(
                "table-corrections",
                "Corrections and strikes, in the order written",
                "Nothing was corrected or struck.",
                List.of("written at", "by", "answers", "what it had said", "what it says now", "why", "entry"),
                written().stream()
                        .filter(entry -> entry.head().corrects() != null)
                        .map(this::correction)
                        .toList());
    }

    private Row correction(Entry entry) {
        Correction corrects = entry.head().corrects();
        long number = corrects == null ? 0 : corrects.number();
        String before = number >= 1 && number <= written().size()
                ? FactWords.of(written().get((int) number - 1).fact())
                : "";
        boolean strike = entry.fact() instanceof BookKeeping.Struck;
        boolean idle = asked.farm().standing().idle().contains(entry);
        return Row.of(
                Cell.whole(leaves.moment(entry)).asHeader(),
                Cell.of(entry.writtenBy().name()),
                Cell.of(asked.links().entry(number)),
                Cell.of(before),
                Cell.of((strike ? "struck: it no longer counts" : FactWords.of(entry.fact()))
                        + (idle ? " (without effect: the entry it answers was no longer in force)" : "")),
                Cell.of(Fate.reason(entry)),
                Cell.of(asked.links().entry(entry.number())));
    }

    /** Lag of the entries as first written; a correction's would say when the mistake was seen. */
    private List<Entry> firstWritten() {
        return written().stream()
                .filter(entry -> entry.head().corrects() == null)
                .sorted(Comparator.comparingLong(tables.cells()::lag).reversed().thenComparing(Entry::number))
                .toList();
    }

    String lag() {
        List<Entry> latestFirst = firstWritten();
        if (latestFirst.isEmpty()) {
            return "No entry is on record.";
        }
        long[] lags =
                latestFirst.stream().mapToLong(tables.cells()::lag).sorted().toArray();
        double median = (lags[(lags.length - 1) / 2] + lags[lags.length / 2]) / 2.0;
        String middle = median == Math.rint(median) ? AuditCells.days((long) median) : median + " days";
        String count = lags.length == 1
                ? "1 entry was written as a new one. "
                : lags.length + " entries were written as new ones. ";
        return count + "From the day of the work to the day of writing, the median is "
                + middle + " and the largest is " + AuditCells.days(lags[lags.length - 1]) + ". From "
                + AuditCells.days(tables.cells().lateFrom())
                + " on it stands in bold, to be found more easily; no rule sets that number.";
    }

    Table late() {
        List<Entry> late = firstWritten().stream()
                .filter(entry -> tables.cells().lag(entry) > 0)
                .toList();
        return EntryTables.table(
                "table-late",
                late.size() > LATEST_LISTED
                        ? "Written on a later day than the work: the " + LATEST_LISTED + " with the largest lag of "
                                + late.size() + "; the register has the lag of every entry"
                        : "Written on a later day than the work, the largest lag first",
                "Every entry was written on the day of its work.",
                AuditCells.COLUMNS,
                late.stream().limit(LATEST_LISTED).map(tables.cells()::row).toList());
    }

    /** Entries that no other part shows; so a kind of act that is new here is never left out. */
    Table others() {
        Set<Class<? extends Fact>> shown = new HashSet<>();
        Stream.of(
                        LandPart.KINDS,
                        SeedPart.KINDS,
                        InputsPart.KINDS,
                        LotsPart.KINDS,
                        SalesPart.KINDS,
                        OversightPart.KINDS)
                .forEach(shown::addAll);
        return tables.mixed(
                "table-others",
                "Weather, sign-offs, own values, documents and whatever else stands in no part above",
                "There is no other entry.",
                asked.done().stream()
                        .filter(entry -> !shown.contains(entry.fact().getClass()))
                        .filter(entry -> entry.fact().places().stream()
                                .noneMatch(asked.links().shown()::contains))
                        .toList());
    }

    Table register() {
        Iterable<Row> rows = this::rows;
        return Table.over(
                "table-register",
                "Every entry up to the last one this report knows, in the order written; times in "
                        + asked.book().opened().timeZone(),
                "There is no entry.",
                List.of("entry", "written at, by", "work of (lag)", "what it says", "what became of it", "leaf hash"),
                !written().isEmpty(),
                rows);
    }

    private Iterator<Row> rows() {
        return written().stream().map(this::entry).iterator();
    }

    private Row entry(Entry entry) {
        AuditCells cells = tables.cells();
        long lag = cells.lag(entry);
        Row row = Row.of(
                Cell.whole("#" + entry.number()).asHeader(),
                Cell.of(Phrase.whole(leaves.moment(entry) + ",").plus(" " + entry.writtenBy())),
                Cell.of(Phrase.whole(entry.head().doneOn().toString()).plus(cells.lagged(lag))),
                Cell.of(said(entry)),
                cells.corrected(entry),
                Cell.of(Phrase.code(leaves.of(entry.number()))).styled("hash"));
        boolean counts = asked.fate().isInForce(entry) || entry.fact() instanceof BookKeeping.Struck;
        return (counts ? row : row.styled("void")).anchored(Links.anchor(entry.number()));
    }

    private List<Phrase> said(Entry entry) {
        return List.of(tables.cells().parts().whole(entry.fact()), Phrase.of(HeadWords.of(entry)));
    }
}
