package bedledger.cli.report;

import bedledger.cli.chart.Key;
import bedledger.cli.chart.Palette;
import bedledger.cli.chart.Strip;
import bedledger.cli.read.Output;
import bedledger.language.BedId;
import bedledger.projections.trends.CoverSpan;
import bedledger.projections.trends.Ground;
import bedledger.projections.trends.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/** What covered each bed, day by day. */
final class CoverChapter {
    private static final int WIDE = 600;
    /** More seasons than this in one strip, and a day is too thin to see. */
    private static final int SEASONS_IN_A_STRIP = 2;

    private final SeasonsAsked asked;

    CoverChapter(SeasonsAsked asked) {
        this.asked = asked;
    }

    Chapter chapter() {
        return Chapter.of(
                "cover",
                "Days under cover",
                List.of(
                        Block.text(
                                "What covered a bed at the end of each day. Where several things did, the first of crop, cover"
                                        + " crop, mulch, tarp counts. A crop counts from its planting, before it shades the ground, to"
                                        + " its end; bare means that the book has nothing on it, and residue left lying is not reckoned"
                                        + " as cover."),
                        Block.picture(new Picture(
                                new Key(
                                        "key-cover",
                                        "Key: what covered the beds",
                                        Arrays.stream(Ground.values())
                                                .map(Palette::of)
                                                .toList(),
                                        3),
                                "")),
                        Block.pictures(pictures()),
                        Block.table(table())),
                new Chapter.DataFile("days-under-cover.csv", days()),
                new Chapter.DataFile("cover-spans.csv", spans()));
    }

    private List<Picture> pictures() {
        return inParts(asked.strips(), (part, seasons) -> {
            Strip strip = new Strip(
                    "chart-cover-" + part,
                    "What covered the beds, " + years(seasons),
                    "A line for each bed along the days. The table below counts the days.",
                    WIDE,
                    asked.beds().stream().map(BedId::name).toList(),
                    seasons,
                    boxes(seasons),
                    List.of(),
                    false);
            return new Picture(strip, "What covered the beds, " + years(seasons));
        });
    }

    static List<Picture> inParts(List<Strip.Season> seasons, BiFunction<Integer, List<Strip.Season>, Picture> picture) {
        List<Picture> pictures = new ArrayList<>();
        for (int from = 0; from < seasons.size(); from += SEASONS_IN_A_STRIP) {
            int to = Math.min(seasons.size(), from + SEASONS_IN_A_STRIP);
            pictures.add(picture.apply(from / SEASONS_IN_A_STRIP + 1, seasons.subList(from, to)));
        }
        return pictures;
    }

    static String years(List<Strip.Season> seasons) {
        String first = seasons.get(0).name();
        String last = seasons.get(seasons.size() - 1).name();
        return first.equals(last) ? first : first + " and " + last;
    }

    private List<Strip.Span> boxes(List<Strip.Season> seasons) {
        var from = seasons.get(0).from();
        var to = seasons.get(seasons.size() - 1).to();
        return asked.trends().spans().stream()
                .filter(span -> !span.to().isBefore(from) && !span.from().isAfter(to))
                .map(span -> new Strip.Span(
                        asked.beds().indexOf(span.bed()),
                        span.from().isBefore(from) ? from : span.from(),
                        span.to().isAfter(to) ? to : span.to(),
                        Palette.of(span.ground())))
                .toList();
    }

    private Table table() {
        List<String> columns =
                List.of("season", "crop", "cover crop", "living cover", "mulch", "tarp", "bare", "days in all");
        return Table.grouped(
                        "table-cover",
                        "Days of each season by what covered the bed",
                        "There is no bed.",
                        columns,
                        asked.beds().stream()
                                .map(bed -> new Table.Group(
                                        "Bed " + bed,
                                        columns.size(),
                                        asked.seasons().stream()
                                                .map(season -> row(bed, season))
                                                .toList()))
                                .toList())
                .numbersIn(1, columns.size());
    }

    private Row row(BedId bed, Season season) {
        Map<Ground, Long> days = asked.trends().days(bed, season);
        return Row.of(
                Cell.whole(season.name()).asHeader(),
                number(days, Ground.CROP),
                number(days, Ground.COVER_CROP),
                Cell.number(Long.toString(sum(days, true))),
                number(days, Ground.MULCH),
                number(days, Ground.TARP),
                number(days, Ground.BARE),
                Cell.number(Long.toString(sum(days, false))));
    }

    private static Cell number(Map<Ground, Long> days, Ground ground) {
        return Cell.number(Long.toString(days.getOrDefault(ground, 0L)));
    }

    private static long sum(Map<Ground, Long> days, boolean living) {
        return days.entrySet().stream()
                .filter(each -> !living || each.getKey().isLiving())
                .mapToLong(Map.Entry::getValue)
                .sum();
    }

    private Output.Table days() {
        List<List<String>> rows = new ArrayList<>();
        for (BedId bed : asked.beds()) {
            for (Season season : asked.seasons()) {
                List<String> row = new ArrayList<>(List.of(bed.name(), season.name()));
                asked.trends().days(bed, season).values().forEach(each -> row.add(Long.toString(each)));
                rows.add(row);
            }
        }
        return new Output.Table(List.of("bed", "season", "crop", "cover_crop", "mulch", "tarp", "bare"), rows);
    }

    private Output.Table spans() {
        List<CoverSpan> spans = asked.trends().spans();
        return new Output.Table(
                List.of("bed", "from", "to", "ground"),
                spans.stream()
                        .map(span -> List.of(
                                span.bed().name(),
                                span.from().toString(),
                                span.to().toString(),
                                span.ground().words()))
                        .toList());
    }
}
