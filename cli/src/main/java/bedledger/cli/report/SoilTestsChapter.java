package bedledger.cli.report;

import bedledger.cli.chart.Points;
import bedledger.cli.read.Output;
import bedledger.language.BedId;
import bedledger.language.BedWork;
import bedledger.projections.trends.SampledSoil;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Soil tests as they were found: raw points, flags where two are hard to compare, and no line drawn through them. */
final class SoilTestsChapter {
    private static final int SMALL = 285;
    private static final int HIGH = 220;
    private final SeasonsAsked asked;
    private final List<SampledSoil> tests;

    SoilTestsChapter(SeasonsAsked asked) {
        this.asked = asked;
        this.tests = asked.trends().tests();
    }

    Chapter chapter() {
        return Chapter.of(
                "soil-tests",
                "Soil tests",
                tests.isEmpty() ? List.of(Block.text("No soil test is on record, so there is no chart.")) : blocks(),
                new Chapter.DataFile("soil-tests.csv", data()));
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.text(
                "Each point is one sample as the laboratory reported it; samples of the very same beds stand in one"
                        + " chart. Each laboratory and method has a shape of its own. No line is drawn through them, and no error bar:"
                        + " how well a laboratory repeats itself is not on record. Letters mark what was not as the time before: L the"
                        + " laboratory, M the method, D the depth, T the time of year (more than 45 days apart, judgement); small letters"
                        + " where it is not on record for both. Two points that differ so are not a trend."));
        List<Picture> pictures = pictures();
        if (!pictures.isEmpty()) {
            blocks.add(Block.pictures(pictures));
        }
        blocks.add(Block.table(table()));
        return blocks;
    }

    /** One chart for each set of beds that was sampled together, carbon and matter apart. */
    private List<Picture> pictures() {
        Map<String, List<SampledSoil>> groups = new LinkedHashMap<>();
        for (SampledSoil test : tests) {
            if (test.percent() != null) {
                groups.computeIfAbsent(
                                beds(test) + (test.hasCarbon() ? " carbon" : " matter"), name -> new ArrayList<>())
                        .add(test);
            }
        }
        double most = tests.stream()
                .map(SampledSoil::percent)
                .mapToDouble(each -> each == null ? 0 : each)
                .max()
                .orElse(0);
        List<Picture> pictures = new ArrayList<>();
        groups.values().forEach(group -> pictures.add(picture(group, pictures.size() + 1, most)));
        return pictures;
    }

    private Picture picture(List<SampledSoil> group, int part, double most) {
        String what = group.get(0).hasCarbon() ? "organic carbon" : "organic matter";
        List<String> ways = group.stream().map(SoilTestsChapter::way).distinct().toList();
        List<Points.Point> points = group.stream()
                .map(test ->
                        new Points.Point(test.day(), value(test), ways.indexOf(way(test)), value(test) + flags(test)))
                .toList();
        String said = group.stream()
                .map(test -> test.day() + " " + value(test) + " %")
                .collect(Collectors.joining("; "));
        Points chart = new Points(
                "chart-soil-tests-" + part,
                "Soil tests of " + beds(group.get(0)) + ": " + what,
                said + ". The table below has the laboratory, method and depth of each.",
                SMALL,
                HIGH,
                asked.strips(),
                points,
                most,
                "%");
        return new Picture(chart, beds(group.get(0)) + ", " + what + ": " + shapes(ways));
    }

    private static double value(SampledSoil test) {
        Double percent = test.percent();
        return percent == null ? 0 : percent;
    }

    private static String shapes(List<String> ways) {
        String[] names = {"●", "□", "▲", "◇"};
        List<String> said = new ArrayList<>();
        for (int at = 0; at < ways.size(); at++) {
            said.add(names[at % names.length] + " " + ways.get(at));
        }
        return String.join(", ", said);
    }

    private static String way(SampledSoil test) {
        return recorded(test.found().laboratory()) + ", "
                + recorded(test.found().carbonMethod());
    }

    private static String recorded(@Nullable Object value) {
        return value == null ? "not recorded" : value.toString();
    }

    private static String flags(SampledSoil test) {
        String letters = test.changed().stream().map(SoilTestsChapter::letter).collect(Collectors.joining());
        return letters.isEmpty() ? "" : " " + letters;
    }

    private static String letter(SampledSoil.Change change) {
        return switch (change) {
            case LABORATORY -> "L";
            case METHOD -> "M";
            case DEPTH -> "D";
            case TIME_OF_YEAR -> "T";
            case LABORATORY_UNKNOWN -> "l";
            case METHOD_UNKNOWN -> "m";
            case DEPTH_UNKNOWN -> "d";
        };
    }

    private static String beds(SampledSoil test) {
        return test.beds().stream().map(BedId::name).collect(Collectors.joining(" "));
    }

    private Table table() {
        return Table.of(
                "table-soil-tests",
                "Soil tests as reported, and what was not as the time before of the same beds",
                "No soil test is on record.",
                List.of(
                        "day",
                        "beds",
                        "carbon",
                        "matter",
                        "method",
                        "depth",
                        "density",
                        "clay",
                        "pH",
                        "laboratory",
                        "not as before",
                        "entry"),
                tests.stream().map(this::row).toList());
    }

    private Row row(SampledSoil test) {
        BedWork.SoilSampled found = test.found();
        return Row.of(
                Cell.whole(test.day().toString()).asHeader(),
                Cell.of(beds(test)),
                Cell.number(text(found.organicCarbon())),
                Cell.number(text(found.organicMatter())),
                Cell.of(recorded(found.carbonMethod())),
                Cell.of(depth(found)),
                Cell.number(text(found.bulkDensity())),
                Cell.number(text(found.clay())),
                Cell.number(text(found.ph())),
                Cell.of(recorded(found.laboratory())),
                Cell.of(test.changed().stream().map(SampledSoil.Change::words).collect(Collectors.joining("; "))),
                Cell.whole("#" + test.entry().number()));
    }

    private static String text(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }

    private static String depth(BedWork.SoilSampled found) {
        return found.fromDepth() == null || found.toDepth() == null
                ? "not recorded"
                : found.fromDepth() + " to " + found.toDepth();
    }

    private Output.Table data() {
        return new Output.Table(
                List.of(
                        "day",
                        "beds",
                        "organic_carbon",
                        "organic_matter",
                        "carbon_method",
                        "matter_factor",
                        "from_depth",
                        "to_depth",
                        "bulk_density",
                        "stones",
                        "clay",
                        "ph",
                        "laboratory",
                        "not_as_before",
                        "entry"),
                tests.stream()
                        .map(test -> List.of(
                                test.day().toString(),
                                beds(test),
                                text(test.found().organicCarbon()),
                                text(test.found().organicMatter()),
                                text(test.found().carbonMethod()),
                                text(test.found().matterFactor()),
                                text(test.found().fromDepth()),
                                text(test.found().toDepth()),
                                text(test.found().bulkDensity()),
                                text(test.found().stones()),
                                text(test.found().clay()),
                                text(test.found().ph()),
                                text(test.found().laboratory()),
                                test.changed().stream()
                                        .map(SampledSoil.Change::words)
                                        .collect(Collectors.joining("; ")),
                                Long.toString(test.entry().number())))
                        .toList());
    }
}
