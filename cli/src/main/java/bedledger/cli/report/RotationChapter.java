package bedledger.cli.report;

import bedledger.cli.read.Output;
import bedledger.language.BedId;
import bedledger.projections.trends.Rotation;
import bedledger.projections.trends.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What stood where, with the letter of its family. */
final class RotationChapter {
    private final SeasonsAsked asked;
    private final Rotation rotation;

    RotationChapter(SeasonsAsked asked) {
        this.asked = asked;
        this.rotation = asked.trends().rotation();
    }

    Chapter chapter() {
        return Chapter.of(
                "rotation",
                "Rotation",
                List.of(
                        Block.text(
                                "What stood in each bed on some day of the season, in the order of planting; a crop that"
                                        + " stood over the turn of the year is in both. Cover crops are in brackets. "
                                        + key()),
                        Block.table(table())),
                new Chapter.DataFile("rotation.csv", data()));
    }

    private String key() {
        String letters = rotation.key().stream()
                .map(family -> family.letter() + " " + family.name())
                .collect(Collectors.joining(", "));
        return letters.isEmpty()
                ? "Nothing was planted."
                : "Families: " + letters + "; ? a crop the tables do not know.";
    }

    private Table table() {
        List<String> columns = new ArrayList<>(List.of("bed"));
        asked.seasons().forEach(season -> columns.add(season.name()));
        List<Row> rows = new ArrayList<>();
        for (BedId bed : asked.beds()) {
            List<Cell> cells = new ArrayList<>(List.of(Cell.whole(bed.name()).asHeader()));
            asked.seasons().forEach(season -> cells.add(cell(bed, season)));
            rows.add(Row.of(cells));
        }
        return Table.of(
                "table-rotation",
                "Crops by bed and season, with the letters of their families",
                "There is no bed.",
                columns,
                rows);
    }

    private Cell cell(BedId bed, Season season) {
        List<Phrase> lines = new ArrayList<>();
        for (Rotation.Stood stood : rotation.in(bed, season)) {
            boolean cover = stood.cropping().cover();
            lines.add(Phrase.strong(letters(stood)).plus(cover ? " (" + stood.plain() + ")" : " " + stood.plain()));
        }
        return Cell.of(lines.isEmpty() ? List.of(Phrase.of("–")) : lines);
    }

    private static String letters(Rotation.Stood stood) {
        return stood.families().isEmpty()
                ? "?"
                : stood.families().stream().map(Rotation.Family::letter).collect(Collectors.joining("+"));
    }

    private Output.Table data() {
        List<List<String>> rows = new ArrayList<>();
        for (BedId bed : asked.beds()) {
            for (Season season : asked.seasons()) {
                rotation.in(bed, season)
                        .forEach(stood -> rows.add(List.of(
                                bed.name(),
                                season.name(),
                                stood.plain(),
                                stood.cropping().cover() ? "cover crop" : "crop",
                                stood.families().stream()
                                        .map(Rotation.Family::name)
                                        .collect(Collectors.joining("; ")),
                                stood.cropping().since().toString(),
                                stood.cropping().ended().map(Object::toString).orElse(""),
                                Long.toString(stood.cropping().planted()))));
            }
        }
        return new Output.Table(
                List.of("bed", "season", "crop", "kind", "families", "planted", "ended", "entry"), rows);
    }
}
