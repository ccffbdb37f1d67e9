package bedledger.cli.report;

import bedledger.cli.chart.Key;
import bedledger.cli.chart.RangeMark;
import bedledger.cli.chart.Ranges;
import bedledger.cli.chart.Strip;
import bedledger.cli.chart.Swatch;
import bedledger.projections.breakdown.BedBreakdown;
import bedledger.projections.breakdown.Breakdown;
import bedledger.projections.breakdown.FarmRate;
import bedledger.projections.breakdown.Practice;
import bedledger.projections.breakdown.ReadyDate;
import bedledger.projections.breakdown.Use;
import bedledger.projections.returned.Measure;
import java.awt.Color;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is left of the residue on the beds that wait, when they are ready, and the farm's own rates. */
final class BreakdownChapter {
    private static final int WIDE = 600;
    private static final int HIGH = 230;
    private static final int PERCENT = 100;
    private static final Swatch LEFT =
            new Swatch("l", "left, of what went in", new Color(0x00634a), Swatch.Pattern.HATCHED);
    private static final Swatch COVER =
            new Swatch("c", "share of the bed covered", new Color(0x8a6d00), Swatch.Pattern.DOTTED);
    private static final Swatch MODEL =
            new Swatch("m", "by the model, earliest to latest", new Color(0x00634a), Swatch.Pattern.HATCHED);
    private static final Swatch CUSTOM =
            new Swatch("p", "by common practice of tarping", new Color(0x8a6d00), Swatch.Pattern.DOTTED);

    private final SeasonsAsked asked;
    private final Breakdown breakdown;
    private final List<BedBreakdown> waiting;
    private final BreakdownTables tables;

    BreakdownChapter(SeasonsAsked asked) {
        this.asked = asked;
        this.breakdown = Breakdown.of(
                asked.book().farm(),
                asked.tables(),
                asked.weather(),
                asked.day(),
                Optional.empty(),
                asked.book().massUnit());
        this.waiting = breakdown.waiting().stream()
                .filter(bed -> asked.beds().contains(bed.bed()))
                .toList();
        this.tables = new BreakdownTables(asked, breakdown, waiting);
    }

    Chapter chapter() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.text("Beds under a tarp, or left empty by a crop, on " + asked.day()
                + ". Everything here is an estimate; the grower's own look at the bed decides. Mass falls by decomposition days"
                + " (form of USDA-ARS WEPS; temperature after Stroo et al. 1989). Which rate a vegetable is given, and from what"
                + " cover on a bed is ready, is judgement. " + Practice.TRIAL));
        if (waiting.isEmpty()) {
            blocks.add(Block.text("No bed lies under a tarp or empty after a crop, so there is no chart."));
        } else {
            incomplete().ifPresent(blocks::add);
            left().ifPresent(blocks::addAll);
            blocks.add(Block.table(tables.left()));
            blocks.add(Block.heading("When they are ready"));
            dates().ifPresent(blocks::addAll);
            blocks.add(Block.table(tables.dates()));
            blocks.add(Block.text(ReadyDate.METHOD));
        }
        blocks.add(Block.heading("The farm's own rates"));
        blocks.add(Block.text(
                breakdown.rates().isEmpty()
                        ? "Incomplete: no look at a tarped bed or quadrat of decaying residue is on record, so the rates are"
                                + " those of the table. Note what you see when you lift a tarp: bedledger did check-tarp."
                        : FarmRate.METHOD + "."));
        blocks.add(Block.table(tables.rates()));
        return new Chapter(
                "breakdown",
                "What is left of residue, and when beds are ready",
                blocks,
                List.of(
                        new Chapter.DataFile("breakdown.csv", tables.data()),
                        new Chapter.DataFile("own-rates.csv", tables.rateData())),
                coefficients());
    }

    private Optional<Block> incomplete() {
        Map<String, List<String>> gaps = new LinkedHashMap<>();
        waiting.forEach(bed -> bed.missing()
                .forEach(gap -> gaps.computeIfAbsent(gap, each -> new ArrayList<>())
                        .add(bed.bed().name())));
        return gaps.isEmpty()
                ? Optional.empty()
                : Optional.of(Block.points(gaps.entrySet().stream()
                        .map(gap -> "Incomplete (" + String.join(" ", gap.getValue()) + "): " + gap.getKey())
                        .toList()));
    }

    private Optional<List<Block>> left() {
        List<Ranges.Group> groups = waiting.stream()
                .map(bed -> new Ranges.Group(bed.bed().name(), marks(bed)))
                .toList();
        if (groups.stream().allMatch(group -> group.marks().isEmpty())) {
            return Optional.empty();
        }
        String title = "Residue left on the beds that wait, " + asked.day();
        Signed signed = new Signed(asked.perArea(Measure.DRY));
        Ranges chart = new Ranges(
                "chart-breakdown-left",
                title,
                "In per cent: "
                        + groups.stream()
                                .map(group -> group.label() + ": "
                                        + (group.marks().isEmpty() ? "not known" : signed.words(group.marks())))
                                .collect(Collectors.joining("; "))
                        + ".",
                WIDE,
                HIGH,
                groups,
                Ranges.Scale.of(groups),
                "%",
                best -> Long.toString(Math.round(best)));
        return Optional.of(List.of(
                Block.picture(
                        new Picture(new Key("key-breakdown-left", "Key: residue left", List.of(LEFT, COVER), 2), "")),
                Block.picture(new Picture(chart, title + ", in per cent"))));
    }

    private static List<RangeMark> marks(BedBreakdown bed) {
        return Stream.concat(
                        bed.share().stream().map(each -> RangeMark.of(LEFT, false, each, PERCENT, !bed.isComplete())),
                        bed.cover().stream().map(each -> RangeMark.of(COVER, false, each, PERCENT, !bed.isComplete())))
                .toList();
    }

    /** A line for the model and one for practice; a window that stays open reaches to the edge. */
    private Optional<List<Block>> dates() {
        List<BedBreakdown> dated = waiting.stream()
                .filter(bed -> bed.ready(Use.FINE_SEED).isPresent())
                .toList();
        if (dated.isEmpty()) {
            return Optional.empty();
        }
        LocalDate from = dated.stream()
                .flatMap(BreakdownChapter::days)
                .min(LocalDate::compareTo)
                .orElse(asked.day())
                .withDayOfMonth(1);
        LocalDate to = dated.stream()
                .flatMap(BreakdownChapter::days)
                .max(LocalDate::compareTo)
                .orElse(asked.day())
                .plusMonths(1);
        List<String> rows = new ArrayList<>();
        List<Strip.Span> spans = new ArrayList<>();
        List<Strip.Stroke> strokes = new ArrayList<>();
        for (BedBreakdown bed : dated) {
            ReadyDate date = bed.ready(Use.FINE_SEED).orElseThrow();
            int row = rows.size();
            rows.add(bed.bed() + " model");
            spans.add(new Strip.Span(row, date.earliest(), date.latest().orElse(to), MODEL));
            date.likely().ifPresent(day -> strokes.add(new Strip.Stroke(row, day, 1, 1, true)));
            bed.practice().flatMap(Practice::from).ifPresent(first -> {
                rows.add(bed.bed() + " practice");
                spans.add(new Strip.Span(
                        row + 1, first, bed.practice().flatMap(Practice::to).orElse(to), CUSTOM));
            });
        }
        String title = "When the beds that wait are ready for fine seed";
        Strip strip = new Strip(
                "chart-breakdown-dates",
                title,
                dated.stream()
                                .map(bed -> bed.bed() + " "
                                        + bed.ready(Use.FINE_SEED).orElseThrow().words())
                                .collect(Collectors.joining("; "))
                        + ". The table below has the other uses and common practice.",
                WIDE,
                rows,
                months(from, to),
                spans,
                strokes,
                false);
        return Optional.of(
                List.of(
                        Block.picture(new Picture(
                                new Key("key-breakdown-dates", "Key: ready dates", List.of(MODEL, CUSTOM), 2), "")),
                        Block.picture(
                                new Picture(
                                        strip,
                                        title
                                                + ": the thick stroke is the likely day; a window that reaches the right edge has no known end"))));
    }

    private static Stream<LocalDate> days(BedBreakdown bed) {
        ReadyDate date = bed.ready(Use.FINE_SEED).orElseThrow();
        return Stream.of(
                        Stream.of(date.earliest(), bed.on()),
                        date.likely().stream(),
                        date.latest().stream(),
                        bed.practice().flatMap(Practice::from).stream(),
                        bed.practice().flatMap(Practice::to).stream())
                .flatMap(each -> each);
    }

    /** Marks of the scale: months where they are few, else quarters. */
    private static List<Strip.Season> months(LocalDate from, LocalDate to) {
        long all = java.time.temporal.ChronoUnit.MONTHS.between(from, to) + 1;
        int step = all > 16 ? 6 : all > 8 ? 3 : 1;
        List<Strip.Season> marks = new ArrayList<>();
        for (LocalDate at = from; !at.isAfter(to); at = at.plusMonths(step)) {
            LocalDate end = at.plusMonths(step).minusDays(1);
            marks.add(new Strip.Season(at.toString().substring(0, 7), at, end.isAfter(to) ? to : end));
        }
        return marks;
    }

    private List<CoefficientLine> coefficients() {
        return waiting.stream()
                .flatMap(bed -> bed.parameters().stream())
                .map(CoefficientLine::of)
                .distinct()
                .toList();
    }
}
