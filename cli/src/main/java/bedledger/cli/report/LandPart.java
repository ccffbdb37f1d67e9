package bedledger.cli.report;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Land;
import bedledger.language.Step;
import bedledger.projections.history.BedList;
import java.util.List;
import java.util.Locale;

/** Fields, beds with their sizes, what was on the land before, neighbours, incidents. */
record LandPart(Asked asked, EntryTables tables) {
    /** The kinds shown here. */
    static final List<Class<? extends Fact>> KINDS = List.of(
            Land.FieldRegistered.class,
            Land.LandUseDeclared.class,
            Land.NeighbourDeclared.class,
            Land.IncidentReported.class,
            Land.BedLaidOut.class,
            Land.BedRemeasured.class,
            Land.BedSplit.class,
            Land.BedRenamed.class,
            Land.BedRetired.class,
            Land.Found.class);

    Table fields() {
        return tables.ofKind("table-fields", "Fields", "No field is on record.", Land.FieldRegistered.class);
    }

    Table uses() {
        return tables.ofKind(
                "table-uses",
                "What was put on the land before, as declared, and on what evidence",
                "Nothing is declared of the land's use before this record.",
                Land.LandUseDeclared.class);
    }

    Table neighbours() {
        return tables.ofKind(
                "table-neighbours",
                "What lies beside the fields, and the buffers",
                "No neighbour and no buffer is on record.",
                Land.NeighbourDeclared.class);
    }

    Table incidents() {
        return tables.ofKind(
                "table-incidents",
                "Drift, flood, animals, prohibited substances",
                "No incident is on record.",
                Land.IncidentReported.class);
    }

    Table beds() {
        return Table.of(
                "table-beds",
                "Beds on " + asked.day(),
                "There is no bed on this day.",
                List.of("bed", "field", "length × width", "area, m²", "entries"),
                asked.beds().rows().stream().map(this::bed).toList());
    }

    private Row bed(BedList.Row row) {
        BedState state = row.state();
        return Row.of(
                Cell.of(asked.links().place(row.bed())).asHeader(),
                Cell.of(String.valueOf(state.field())),
                Cell.whole(state.length() + " × " + state.width()),
                Cell.number(String.format(Locale.ROOT, "%.2f", state.squareMetres())),
                Cell.of(asked.links().entries(outlines(row.bed()))));
    }

    /** The entries that gave a bed its place and size. */
    private List<Long> outlines(BedId bed) {
        return asked.farm().bed(bed).steps().stream()
                .filter(Step::fits)
                .map(Step::entry)
                .filter(entry -> !entry.head().doneOn().isAfter(asked.day()))
                .filter(LandPart::outlines)
                .map(Entry::number)
                .toList();
    }

    static boolean outlines(Entry entry) {
        return entry.fact() instanceof Land.BedLaidOut
                || entry.fact() instanceof Land.BedRemeasured
                || entry.fact() instanceof Land.BedSplit;
    }

    Table changes() {
        return tables.mixed(
                "table-bed-changes",
                "Beds laid out, measured again, split, renamed, retired, and what was found on them",
                "No bed is on record.",
                asked.ofKinds(List.of(
                        Land.BedLaidOut.class,
                        Land.BedRemeasured.class,
                        Land.BedSplit.class,
                        Land.BedRenamed.class,
                        Land.BedRetired.class,
                        Land.Found.class)));
    }
}
