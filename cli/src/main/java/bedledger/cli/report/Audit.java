package bedledger.cli.report;

import bedledger.cli.paper.Paper;
import bedledger.projections.trace.Graph;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.io.Writer;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The whole report, its parts in the order an inspector reads. */
record Audit(
        TitlePart title,
        GapsPart gaps,
        HerePart here,
        FindingsPart findings,
        DuePart due,
        LandPart land,
        SeedPart seed,
        InputsPart inputs,
        BedParts beds,
        PlantingPart planting,
        HarvestPart harvest,
        LotsPart lots,
        SalesPart sales,
        BalancePart balances,
        TracePart traces,
        OversightPart oversight,
        ReturnedPart returned,
        RecordPart record) {

    /**
     * Prepares the report.
     *
     * @param lateFrom the days of lag from which it is set in bold
     */
    static Audit of(Asked asked, Seal seal, LeafHashes leaves, Instant made, int lateFrom) {
        AuditCells cells = new AuditCells(asked, lateFrom);
        EntryTables tables = new EntryTables(asked, cells);
        Graph graph = Graph.of(asked.farm(), asked.day());
        FindingLines lines = new FindingLines(asked.findings());
        return new Audit(
                new TitlePart(asked, seal, made),
                GapsPart.of(asked),
                new HerePart(asked),
                new FindingsPart(asked, lines),
                DuePart.of(asked),
                new LandPart(asked, tables),
                new SeedPart(asked, tables, new Forward(asked, graph)),
                new InputsPart(asked, tables, lines),
                new BedParts(asked, cells, lines),
                new PlantingPart(asked, cells),
                new HarvestPart(asked, tables),
                new LotsPart(asked, tables, lines),
                new SalesPart(asked, tables),
                new BalancePart(asked),
                new TracePart(asked, graph),
                new OversightPart(asked, tables),
                ReturnedPart.of(asked),
                new RecordPart(asked, tables, leaves));
    }

    /** From here on the lag is set in bold, where nothing else is asked for; a judgement, no rule sets it. */
    static final int LATE_FROM = 7;

    /** Links to the beds, above the sections about them. */
    List<Phrase> bedIndex() {
        List<Phrase> index = new ArrayList<>();
        Asked asked = title.asked();
        asked.beds().rows().forEach(row -> index.add(asked.links().place(row.bed())));
        return index;
    }

    void write(Writer out) throws IOException {
        Templates.ALL.report().execute(out, this).flush();
    }

    /** The same as a tagged PDF. */
    void writePaper(Paper.Kept kept, OutputStream out) throws IOException {
        writePaper(kept, Paper.Packing.DEFLATED, out);
    }

    void writePaper(Paper.Kept kept, Paper.Packing packing, OutputStream out) throws IOException {
        StringWriter page = new StringWriter();
        write(page);
        StringWriter css = new StringWriter();
        Templates.ALL.compile("paper.mustache").execute(css, this).flush();
        new Paper(page.toString(), css.toString(), List.of()).write(kept, packing, title.version(), title.made(), out);
    }
}
