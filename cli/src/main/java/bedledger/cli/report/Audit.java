package bedledger.cli.report;

import java.io.IOException;
import java.io.Writer;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The whole report, its parts in the order an inspector reads. */
record Audit(
        TitlePart title,
        FindingsPart findings,
        LandPart land,
        SeedPart seed,
        InputsPart inputs,
        BedParts beds,
        PlantingPart planting,
        LotsPart lots,
        SalesPart sales,
        OversightPart oversight,
        ReturnedPart returned,
        RecordPart record) {

    static Audit of(Asked asked, Seal seal, LeafHashes leaves, Instant made) {
        AuditCells cells = new AuditCells(asked);
        EntryTables tables = new EntryTables(asked, cells);
        FindingLines lines = new FindingLines(asked.findings());
        return new Audit(
                new TitlePart(asked, seal, made),
                new FindingsPart(asked, lines),
                new LandPart(asked, tables),
                new SeedPart(asked, tables),
                new InputsPart(asked, tables, lines),
                new BedParts(asked, cells, lines),
                new PlantingPart(asked, cells),
                new LotsPart(asked, tables, lines),
                new SalesPart(asked, tables),
                new OversightPart(asked, tables),
                ReturnedPart.of(asked),
                new RecordPart(asked, tables, leaves));
    }

    /** Links to the beds, above the sections about them. */
    List<Phrase> bedIndex() {
        List<Phrase> index = new ArrayList<>();
        Asked asked = title.asked();
        asked.beds().rows().forEach(row -> index.add(asked.links().place(row.bed())));
        return index;
    }

    void write(Writer out) throws IOException {
        new Templates().report().execute(out, this).flush();
    }
}
