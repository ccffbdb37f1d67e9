package bedledger.cli.report;

import bedledger.language.Entry;
import bedledger.language.Fertility;
import bedledger.language.PileId;
import bedledger.language.Temperature;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/** The log of a compost pile, day by day: readings, turns, and what else happened to it. */
final class PileLogTable {
    private static final class DayLine {
        final List<Phrase> readings = new ArrayList<>();
        final List<Phrase> events = new ArrayList<>();
        final List<Long> entries = new ArrayList<>();
    }

    private final NavigableMap<LocalDate, DayLine> days = new TreeMap<>();
    private final AuditCells cells;

    private PileLogTable(AuditCells cells) {
        this.cells = cells;
    }

    static Table of(Asked asked, AuditCells cells, PileId pile, List<Entry> entries) {
        PileLogTable log = new PileLogTable(cells);
        entries.forEach(log::take);
        List<Row> rows = new ArrayList<>();
        log.days
                .headMap(asked.day(), true)
                .forEach((day, line) -> rows.add(Row.of(
                        Cell.whole(day.toString()).asHeader(),
                        Cell.of(line.readings),
                        Cell.of(line.events),
                        Cell.of(asked.links().entries(line.entries)))));
        return Table.of(
                "heat-" + pile.name(),
                "Pile " + pile + ": log, the lowest reading of each day and the turns",
                "Nothing is recorded of this pile.",
                List.of("date", "reading", "what was done", "entries"),
                rows);
    }

    private void take(Entry entry) {
        LocalDate day = entry.head().doneOn();
        if (entry.fact() instanceof Fertility.PileRead read) {
            for (Temperature reading : read.readings()) {
                DayLine line = line(day, entry);
                line.readings.add(Phrase.of(reading.toString()));
                day = day.plusDays(1);
            }
            return;
        }
        Phrase what = cells.parts().what(entry.fact());
        Phrase said = Phrase.of(FactParts.operation(entry.fact()));
        line(day, entry)
                .events
                .add(
                        entry.fact() instanceof Fertility.Spread
                                ? said.plus(" on ").plus(cells.parts().where(entry.fact()))
                                : what.isEmpty() ? said : said.plus(": ").plus(what));
    }

    private DayLine line(LocalDate day, Entry entry) {
        DayLine line = days.computeIfAbsent(day, any -> new DayLine());
        line.entries.add(entry.number());
        return line;
    }
}
