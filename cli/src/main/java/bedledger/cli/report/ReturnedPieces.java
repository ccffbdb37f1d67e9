package bedledger.cli.report;

import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Evidence;
import bedledger.projections.returned.Matter;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.SourceKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The pieces of each bed, season by season, with sums of shoots, roots and what was brought apart. */
final class ReturnedPieces {
    private static final List<String> COLUMNS = List.of(
            "source", "date", "dry, low", "dry, best", "dry, high", "carbon", "nitrogen", "C:N", "evidence", "entries");

    private final Asked asked;
    private final Masses masses;
    private final Map<BedId, List<Return>> byBed = new HashMap<>();

    ReturnedPieces(Asked asked, Masses masses) {
        this.asked = asked;
        this.masses = masses;
        asked.returned()
                .pieces()
                .forEach(piece -> piece.beds()
                        .forEach(share -> byBed.computeIfAbsent(share.bed(), bed -> new ArrayList<>())
                                .add(piece)));
    }

    Table of(BedId bed) {
        Map<Integer, List<Return>> seasons = new TreeMap<>();
        byBed.getOrDefault(bed, List.of())
                .forEach(piece -> seasons.computeIfAbsent(piece.day().getYear(), year -> new ArrayList<>())
                        .add(piece));
        List<Table.Group> groups = new ArrayList<>();
        seasons.forEach(
                (year, pieces) -> groups.add(new Table.Group("Season " + year, COLUMNS.size(), rows(bed, pieces))));
        return Table.grouped(
                "pieces-" + bed.name(),
                "Bed " + bed + ": returned, piece by piece, in " + masses.unit(),
                "Nothing went back to it, as far as the book says.",
                COLUMNS,
                groups);
    }

    private List<Row> rows(BedId bed, List<Return> pieces) {
        List<Row> rows = new ArrayList<>(pieces.stream()
                .flatMap(piece -> Stream.of(row(bed, piece), notes(piece)))
                .toList());
        sum(bed, pieces, "Shoots", SourceKind::isShoots).ifPresent(rows::add);
        sum(bed, pieces, "Roots", SourceKind::isRoots).ifPresent(rows::add);
        sum(bed, pieces, "Brought", kind -> !kind.isShoots() && !kind.isRoots()).ifPresent(rows::add);
        return rows;
    }

    private Row row(BedId bed, Return piece) {
        Matter here = piece.on(bed);
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.of(piece.what() + ", " + piece.kind().words()).asHeader(),
                Cell.whole(piece.day().toString())));
        cells.addAll(masses.cells(here.dry()));
        cells.add(Cell.of(here.carbon().map(masses::words).orElse("not known")));
        cells.add(Cell.of(here.nitrogen().map(masses::words).orElse("not known")));
        cells.add(Cell.of(Masses.ratio(here.carbonToNitrogen())));
        cells.add(Cell.of(piece.evidence().words()));
        cells.add(Cell.of(asked.links().entries(piece.entries())));
        return Row.of(cells);
    }

    /** Method and remarks, in a row of their own under the figures. */
    private Row notes(Return piece) {
        List<String> said = new ArrayList<>(List.of(piece.method()));
        said.addAll(piece.words());
        return Row.of(Cell.across(COLUMNS.size(), asked.links().linked(said))).styled("notes");
    }

    /** The sum of one source's pieces; guesses from a typical yield are left out, as in the totals. */
    private Optional<Row> sum(BedId bed, List<Return> pieces, String title, Predicate<SourceKind> source) {
        List<Return> all =
                pieces.stream().filter(piece -> source.test(piece.kind())).toList();
        List<Return> counted = all.stream()
                .filter(piece -> piece.evidence() != Evidence.TYPICAL)
                .toList();
        Optional<Estimate> known = ReturnedPart.sum(counted, bed);
        if (known.isEmpty()) {
            return Optional.empty();
        }
        long unknown = counted.stream().filter(piece -> !piece.isKnown()).count();
        List<Cell> cells = new ArrayList<>(List.of(Cell.of(title + " together").asHeader(), Cell.of("")));
        cells.addAll(masses.cells(known));
        cells.addAll(List.of(Cell.of(""), Cell.of(""), Cell.of("")));
        int guessed = all.size() - counted.size();
        cells.add(Cell.of((unknown == 0 ? "" : "incomplete: not known for " + unknown + " of " + counted.size())
                + (unknown == 0 || guessed == 0 ? "" : "; ")
                + (guessed == 0 ? "" : guessed + " guessed and left out")));
        cells.add(Cell.of(asked.links()
                .entries(counted.stream()
                        .flatMap(piece -> piece.entries().stream())
                        .distinct()
                        .sorted()
                        .toList())));
        return Optional.of(Row.of(cells).styled("sum"));
    }
}
