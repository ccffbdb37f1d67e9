package bedledger.cli.report;

import bedledger.cli.read.Output;
import bedledger.cli.read.ReleaseFigure;
import bedledger.language.BedId;
import bedledger.projections.nitrogen.Following;
import bedledger.projections.nitrogen.Release;
import bedledger.projections.nitrogen.Verdict;
import bedledger.projections.returned.Sum;
import bedledger.projections.trends.Ground;
import bedledger.projections.trends.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The tables behind the nitrogen charts, and the same as data. */
final class ReleaseTables {
    private record Column(String title, String data, ReleaseFigure figure) {}

    private static final Column IN_IT = new Column("in it", "nitrogen", ReleaseFigure.NITROGEN);
    private static final Column FREED = new Column("set free by the day (s)", "freed", ReleaseFigure.FREED);
    private static final Column LINE = new Column("PNW 636 (p)", "pnw_636", ReleaseFigure.COVER_CROP_LINE);
    private static final Column AMENDMENTS = new Column("RB209 (r)", "rb209", ReleaseFigure.AMENDMENTS);
    private static final Column END = new Column("in the end", "in_the_end", ReleaseFigure.IN_THE_END);
    private static final Column LEAKY =
            new Column("set free while bare or mulched", "on_leaky_days", ReleaseFigure.ON_LEAKY_DAYS);
    private static final Column TARPED = new Column("set free under a tarp", "under_tarp", ReleaseFigure.UNDER_TARP);
    private static final Column NEXT = new Column(
            "to the end of the next crop (n)", "to_the_end_of_the_next_crop", ReleaseFigure.TO_THE_NEXT_CROP);
    private static final List<Column> ALL = List.of(IN_IT, FREED, NEXT, LINE, AMENDMENTS, END, LEAKY, TARPED);

    private final SeasonsAsked asked;
    private final Releases releases;
    private final Signed signed;

    ReleaseTables(SeasonsAsked asked, Releases releases) {
        this.asked = asked;
        this.releases = releases;
        this.signed = new Signed(releases.unit);
    }

    private Cell cell(BedId bed, Season season, Column column) {
        Sum sum = releases.sum(bed, season, column.figure());
        return signed.cell(sum, releases.perSquareMetre(bed, season, sum));
    }

    Table freed() {
        List<String> columns = List.of(
                "season", IN_IT.title(), FREED.title(), NEXT.title(), LINE.title(), AMENDMENTS.title(), "entries");
        return byBed(
                "table-release",
                "Nitrogen of what went back in each season, in " + releases.unit.unit()
                        + ": best (low to high); below 0 is locked up; † no range is known for some coefficient in it",
                columns,
                (bed, season) -> Row.of(
                        Cell.whole(season.name()).asHeader(),
                        cell(bed, season, IN_IT),
                        cell(bed, season, FREED),
                        cell(bed, season, NEXT),
                        cell(bed, season, LINE),
                        cell(bed, season, AMENDMENTS),
                        Cell.of(releases.total(bed, season)
                                .map(total -> SeasonsAsked.entries(total.entries()))
                                .orElse(""))));
    }

    Table uncaught() {
        return byBed(
                "table-uncaught",
                "Days with nothing growing, and nitrogen set free on such days, in " + releases.unit.unit(),
                List.of(
                        "season",
                        "days bare",
                        "days under a mulch",
                        "days under a tarp",
                        LEAKY.title(),
                        TARPED.title(),
                        END.title()),
                (bed, season) -> {
                    Map<Ground, Long> days = asked.trends().days(bed, season);
                    return Row.of(
                            Cell.whole(season.name()).asHeader(),
                            Cell.number(Long.toString(days.getOrDefault(Ground.BARE, 0L))),
                            Cell.number(Long.toString(days.getOrDefault(Ground.MULCH, 0L))),
                            Cell.number(Long.toString(days.getOrDefault(Ground.TARP, 0L))),
                            cell(bed, season, LEAKY),
                            cell(bed, season, TARPED),
                            cell(bed, season, END));
                });
    }

    private interface RowOf {
        Row of(BedId bed, Season season);
    }

    private Table byBed(String id, String caption, List<String> columns, RowOf rows) {
        return Table.grouped(
                        id,
                        caption,
                        "Nothing went back.",
                        columns,
                        asked.beds().stream()
                                .map(bed -> new Table.Group(
                                        "Bed " + bed,
                                        columns.size(),
                                        asked.seasons().stream()
                                                .map(season -> rows.of(bed, season))
                                                .toList()))
                                .toList())
                .numbersIn(1, Math.min(columns.size(), 7));
    }

    /** One row for each crop that followed on residue, once for all of it. */
    Table nextCrops() {
        List<String> columns =
                List.of("planted", "next crop", "after", "before it was planted", "while it stood", "what went back");
        List<Table.Group> groups = asked.beds().stream()
                .map(bed -> new Table.Group("Bed " + bed, columns.size(), next(bed)))
                .filter(group -> group.rows().iterator().hasNext())
                .toList();
        return Table.grouped(
                        "table-next-crops",
                        "What residue set free before and while the next crop stood, in " + releases.unit.unit()
                                + "; it feeds or robs only where the whole range lies on one side of nothing",
                        "No crop followed on residue.",
                        columns,
                        groups)
                .numbersIn(3, 5);
    }

    private List<Row> next(BedId bed) {
        Map<LocalDate, List<Release>> byCrop = new LinkedHashMap<>();
        releases.nitrogen.releases().stream()
                .filter(each -> each.bed().equals(bed) && !each.isAmendment())
                .forEach(each -> each.following()
                        .ifPresent(next -> byCrop.computeIfAbsent(next.planted(), planted -> new ArrayList<>())
                                .add(each)));
        return byCrop.values().stream().map(this::next).toList();
    }

    private Row next(List<Release> some) {
        Following next = some.get(0).following().orElseThrow();
        Sum before = Sum.of(some.stream()
                .map(each -> each.following().orElseThrow().before())
                .toList());
        Sum during = Sum.of(some.stream()
                .map(each -> each.following().orElseThrow().during())
                .toList());
        double area = some.get(0).squareMetres();
        return Row.of(
                Cell.whole(next.planted().toString()).asHeader(),
                Cell.of(next.crop() + (next.cover() ? " (cover crop)" : "")),
                Cell.of(some.stream()
                        .map(each -> each.piece().what())
                        .distinct()
                        .collect(Collectors.joining(", "))),
                signed.cell(before, PhosphorusBlocks.over(before, area)),
                signed.cell(during, PhosphorusBlocks.over(during, area)),
                Cell.of(during.known().map(Verdict::of).map(Verdict::words).orElse("not known")
                        + (during.isComplete() ? "" : ", as far as known")
                        + (next.ended() ? "" : ", so far")));
    }

    Output.Table data() {
        List<String> header = new ArrayList<>(List.of("bed", "season", "square_metres", "unit"));
        ALL.forEach(column -> {
            header.addAll(Signed.three(column.data()));
            header.add(column.data() + "_unknown_pieces");
        });
        header.addAll(List.of("days_bare", "days_mulch", "days_tarp", "next_crops", "entries"));
        List<List<String>> rows = new ArrayList<>();
        asked.beds().forEach(bed -> asked.seasons().forEach(season -> rows.add(row(bed, season))));
        return new Output.Table(header, rows);
    }

    private List<String> row(BedId bed, Season season) {
        List<String> row = new ArrayList<>(List.of(
                bed.name(),
                season.name(),
                Double.toString(asked.trends().inputs().of(bed, season).squareMetres()),
                releases.unit.unit()));
        for (Column column : ALL) {
            Sum sum = releases.sum(bed, season, column.figure());
            row.addAll(signed.data(releases.perSquareMetre(bed, season, sum)));
            row.add(Integer.toString(sum.unknown()));
        }
        Map<Ground, Long> days = asked.trends().days(bed, season);
        List.of(Ground.BARE, Ground.MULCH, Ground.TARP)
                .forEach(ground -> row.add(Long.toString(days.getOrDefault(ground, 0L))));
        row.add(releases.total(bed, season)
                .map(total -> String.join(" ", total.nextCrops()))
                .orElse(""));
        row.add(releases.total(bed, season)
                .map(total -> SeasonsAsked.entries(total.entries()))
                .orElse(""));
        return row;
    }
}
