package bedledger.cli.report;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.projections.history.BedAreas;
import bedledger.projections.history.BedHistory;
import bedledger.projections.history.BedList;
import bedledger.projections.history.Flip;
import bedledger.projections.history.Flips;
import bedledger.projections.history.HistoryLine;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/** Bed by bed: state, findings, timeline, flips; each made when it is written and let go afterwards. */
final class BedParts implements Iterable<BedParts.BedPart> {
    private static final List<String> FLIP =
            List.of("after", "ended", "next planting", "days", "what was done between", "hours recorded", "entries");

    private final Asked asked;
    private final AuditCells cells;
    private final FindingLines findings;
    private final BedAreas areas;

    BedParts(Asked asked, AuditCells cells, FindingLines findings) {
        this.asked = asked;
        this.cells = cells;
        this.findings = findings;
        this.areas = new BedAreas(asked.farm());
    }

    /** One bed. */
    record BedPart(
            String anchor,
            String name,
            String day,
            List<Phrase> state,
            Concerning findings,
            Concerning bearing,
            Table timeline,
            Table flips,
            String returned) {}

    @Override
    public Iterator<BedPart> iterator() {
        return asked.beds().rows().stream().map(this::bed).iterator();
    }

    private BedPart bed(BedList.Row row) {
        BedId bed = row.bed();
        BedHistory history = BedHistory.of(asked.farm(), bed, asked.day());
        return new BedPart(
                Links.anchor(bed),
                bed.name(),
                asked.day().toString(),
                new StateLines(asked, bed).of(history.sentences()),
                Concerning.of(findings.of(bed)),
                Concerning.of(findings.beside(bed, new Bearing(asked).on(bed, row.state()))),
                timeline(bed, history.lines()),
                flips(bed),
                "#" + ReturnedPart.anchor(bed));
    }

    private Table timeline(BedId bed, List<HistoryLine> lines) {
        List<String> columns = new ArrayList<>(AuditCells.COLUMNS);
        columns.set(columns.indexOf("where"), "also on");
        return EntryTables.table(
                "timeline-" + bed.name(),
                "Bed " + bed + ": everything done to it up to " + asked.day() + ", in the order of the work",
                "Nothing is recorded of this bed.",
                columns,
                lines.stream().map(line -> row(bed, line.entry())).toList());
    }

    private Row row(BedId bed, Entry entry) {
        Row row = cells.row(entry);
        List<Cell> own = new ArrayList<>(row.cells());
        List<BedId> others =
                BedAreas.beds(entry).stream().filter(one -> !one.equals(bed)).toList();
        own.set(AuditCells.COLUMNS.indexOf("where"), Cell.of(asked.links().places(others)));
        return new Row(row.anchor(), row.style(), own);
    }

    private Table flips(BedId bed) {
        return Table.of(
                "flips-" + bed.name(),
                "Bed " + bed + ": from a finished crop to the next planting",
                "No crop was finished in it, as far as the book says.",
                FLIP,
                Flips.of(asked.farm(), bed, areas, asked.day()).stream()
                        .map(this::flip)
                        .toList());
    }

    private Row flip(Flip flip) {
        List<Long> entries = new ArrayList<>(List.of(flip.end().number()));
        flip.steps().forEach(step -> entries.add(step.entry().number()));
        flip.next().ifPresent(next -> entries.add(next.number()));
        return Row.of(
                Cell.of(Phrase.joined(
                                flip.after().stream()
                                        .map(crop -> Phrase.of(crop.name()))
                                        .toList(),
                                ", "))
                        .asHeader(),
                Cell.whole(flip.from().toString()),
                Cell.of(flip.next()
                        .map(next -> Phrase.of(
                                        flip.nextCrop().map(Object::toString).orElse("planted") + ", ")
                                .plus(Phrase.whole(next.head().doneOn().toString())))
                        .orElse(Phrase.of("nothing planted since"))),
                Cell.number(flip.days().map(String::valueOf).orElse("–")),
                Cell.of(flip.steps().stream()
                        .map(step ->
                                FactParts.operation(step.entry().fact()) + " (+" + AuditCells.days(step.days()) + ")")
                        .reduce((one, two) -> one + ", " + two)
                        .orElse("nothing recorded")),
                Cell.of(flip.labourWords()),
                Cell.of(asked.links().entries(entries.stream().distinct().toList())));
    }
}
