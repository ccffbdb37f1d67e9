package bedledger.cli.report;

import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.history.Cropping;
import bedledger.projections.returned.Left;
import bedledger.projections.returned.Measure;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.Total;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/** Organic matter that went back to the soil: totals, then piece by piece for each bed, and what the figures rest on. */
record ReturnedPart(Asked asked, Masses masses, ReturnedPieces pieces, CoefficientsPart coefficients) {
    static ReturnedPart of(Asked asked) {
        Masses masses = Masses.of(asked.book());
        return new ReturnedPart(
                asked,
                masses,
                new ReturnedPieces(asked, masses),
                new CoefficientsPart(asked.tables(), asked.returned()));
    }

    static String anchor(BedId bed) {
        return "returned-" + bed.name();
    }

    String unit() {
        return masses.unit();
    }

    String rule() {
        return Estimate.RULE;
    }

    Table byBed() {
        return totals(
                "table-returned-bed", "by bed", "bed", asked.returned().totals().byBed());
    }

    Table bySeason() {
        return totals(
                "table-returned-season",
                "by season",
                "season",
                asked.returned().totals().bySeason());
    }

    private Table totals(String id, String how, String of, List<Total> totals) {
        return Table.of(
                id,
                "Returned up to " + asked.day() + ", " + how + ", in " + masses.unit(),
                "Nothing went back to the soil, as far as the book says.",
                List.of(
                        of,
                        "dry, low",
                        "dry, best",
                        "dry, high",
                        "not known",
                        "carbon",
                        "nitrogen",
                        "phosphorus",
                        "C:N",
                        "entries"),
                totals.stream().map(this::total).toList());
    }

    private Row total(Total total) {
        List<Cell> cells = new ArrayList<>(List.of(Cell.of(name(total)).asHeader()));
        cells.addAll(masses.cells(total.get(Measure.DRY).known()));
        int unknown = total.get(Measure.DRY).unknown();
        cells.addAll(List.of(
                Cell.of(
                        unknown == 0
                                ? ""
                                : unknown + " of " + total.get(Measure.DRY).pieces() + " pieces"),
                Cell.of(masses.words(total.get(Measure.CARBON))),
                Cell.of(masses.words(total.get(Measure.NITROGEN))),
                Cell.of(masses.words(total.get(Measure.PHOSPHORUS))),
                Cell.of(Masses.ratio(total.carbonToNitrogen())),
                Cell.of(asked.links().entries(total.entries()))));
        return Row.of(cells);
    }

    private static String name(Total total) {
        String typical = total.typicalLeftOut() == 0
                ? ""
                : "; " + total.typicalLeftOut() + " guessed from what is typical left out";
        return total.of() + (total.sharedByArea() ? " (partly shared by area)" : "") + typical;
    }

    /** Bed by bed, made one by one as they are written. */
    Iterable<BedReturned> beds() {
        return this::bedIterator;
    }

    private Iterator<BedReturned> bedIterator() {
        return asked.beds().rows().stream()
                .map(row -> new BedReturned(anchor(row.bed()), row.bed().name(), pieces.of(row.bed())))
                .iterator();
    }

    /** One bed's pieces, season by season. */
    record BedReturned(String anchor, String name, Table pieces) {}

    Table left() {
        return Table.of(
                "table-left",
                "What quadrats cut after shredding found still there, dry, in " + masses.unit(),
                "No quadrats were cut after shredding.",
                List.of("bed", "date", "low", "best", "high", "what is to be said of it", "entry"),
                asked.returned().left().stream().map(this::left).toList());
    }

    private Row left(Left left) {
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.of(asked.links().place(left.bed())).asHeader(),
                Cell.whole(left.entry().head().doneOn().toString())));
        cells.addAll(masses.cells(left.dry()));
        cells.add(Cell.of(asked.links().linked(left.words())));
        cells.add(Cell.of(asked.links().entry(left.entry().number())));
        return Row.of(cells);
    }

    boolean hasStanding() {
        return !asked.returned().standing().isEmpty();
    }

    boolean hasNotCounted() {
        return !asked.returned().notCounted().isEmpty();
    }

    List<Phrase> standing() {
        return asked.returned().standing().stream().map(this::standing).toList();
    }

    private Phrase standing(Cropping cropping) {
        return Phrase.of(cropping.crop() + " in ")
                .plus(asked.links().place(cropping.bed()))
                .plus(", planted " + cropping.since() + " ")
                .plus(asked.links().entry(cropping.planted()));
    }

    List<Phrase> notCounted() {
        return asked.returned().notCounted().stream()
                .map(not -> asked.links()
                        .entry(not.entry().number())
                        .plus(" on ")
                        .plus(asked.links().place(not.bed()))
                        .plus(": ")
                        .plus(asked.links().linked(not.why())))
                .toList();
    }

    static Optional<Estimate> sum(List<Return> pieces, BedId bed) {
        return pieces.stream().flatMap(piece -> piece.on(bed).dry().stream()).reduce(Estimate::plus);
    }
}
