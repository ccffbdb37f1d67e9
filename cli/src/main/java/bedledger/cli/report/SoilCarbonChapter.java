package bedledger.cli.report;

import bedledger.cli.chart.Key;
import bedledger.cli.chart.RangeMark;
import bedledger.cli.chart.Ranges;
import bedledger.cli.chart.Swatch;
import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.soil.BedSoil;
import bedledger.projections.soil.Profile;
import bedledger.projections.soil.Sampling;
import bedledger.projections.soil.Soil;
import bedledger.projections.soil.SoilBalance;
import bedledger.projections.soil.SoilOptions;
import bedledger.projections.tables.Parameters;
import java.awt.Color;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Soil carbon: what was sampled, whether any change could be told, and what two published balances make of it. */
final class SoilCarbonChapter {
    private static final int WIDE = 600;
    private static final int HIGH = 250;
    private static final int LEAST_WIDE = 285;
    private static final int ONE_SAMPLING = 95;
    private static final Swatch SAMPLED = new Swatch("", "sampled", new Color(0x1d1b18), Swatch.Pattern.SOLID);
    private static final Swatch AMG = new Swatch("a", "AMGv2, estimated", new Color(0x8a3c00), Swatch.Pattern.HATCHED);
    private static final Swatch ICBM = new Swatch("i", "ICBM, estimated", new Color(0x004c80), Swatch.Pattern.DOTTED);

    private final Soil soil;
    private final SoilTables tables;

    SoilCarbonChapter(SeasonsAsked asked) {
        this.soil = Soil.of(
                asked.book().farm(),
                asked.trends().returned(),
                asked.weather(),
                asked.options(),
                SoilOptions.DEFAULT,
                asked.beds()::contains);
        this.tables = new SoilTables(soil, places());
    }

    /** Beds that were always sampled together stand together: their samples are the same. */
    private Map<List<Sampling>, List<BedSoil>> places() {
        Map<List<Sampling>, List<BedSoil>> places = new LinkedHashMap<>();
        soil.beds().stream()
                .filter(bed -> !bed.samplings().isEmpty())
                .forEach(bed -> places.computeIfAbsent(bed.samplings(), each -> new ArrayList<>())
                        .add(bed));
        return places;
    }

    Chapter chapter() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.text(
                "Carbon of the fine earth in t/ha, whatever the book's units. Nothing here is evidence that carbon"
                        + " rose or fell unless the samples differ by more than could be told from chance and were taken and tested the"
                        + " same way; whether they do is said bed by bed below."));
        List<String> gaps = incomplete();
        if (!gaps.isEmpty()) {
            blocks.add(Block.points(gaps));
        }
        blocks.add(Block.heading("As sampled, over the same mass of fine earth"));
        if (!tables.places().isEmpty()) {
            blocks.add(Block.text(sampledWords()));
        }
        pictures().ifPresent(blocks::add);
        blocks.add(Block.table(tables.samplings()));
        if (!tables.places().isEmpty()) {
            blocks.add(Block.points(told()));
        }
        blocks.add(Block.heading("Two published balances"));
        blocks.add(Block.text(balanceWords()));
        balances().ifPresent(blocks::addAll);
        blocks.add(Block.table(tables.balances()));
        assumed().ifPresent(blocks::add);
        return new Chapter(
                "soil-carbon",
                "Soil carbon: stock, and what balances make of it",
                blocks,
                List.of(
                        new Chapter.DataFile("soil-stock.csv", tables.stockData()),
                        new Chapter.DataFile("soil-balance.csv", tables.balanceData())),
                coefficients());
    }

    private static String sampledWords() {
        double bemmelen = Parameters.of("soil-carbon").value("matter", "van Bemmelen");
        return String.format(
                Locale.ROOT,
                "A dot is one day's sampling, as the laboratory reported it; a line through it is the 95 %% interval of samples"
                        + " sent in apart. A dot without a line is a single sample: how much chance is in it is not known, and it"
                        + " does not mean that there is none. All dots of a chart are over the same mass of fine earth, the most"
                        + " that every sampling reached. Where a laboratory gave organic matter and not its factor, carbon is"
                        + " matter over 1.9 (1.4 to 2.5; Pribyl 2010); by the old convention of van Bemmelen it would be matter"
                        + " over %.3f, which for most soils says too much carbon.",
                bemmelen);
    }

    private String balanceWords() {
        return "How far the stock would move from the last sampling in " + soil.years()
                + " years if every year were like the"
                + " mean of those on record. A box reaches from low to high about the line of no change: the share of returned"
                + " carbon that becomes humus differs two- to threefold between AMG, Guzman et al. 2014 and ICBM, and a box holds"
                + " all of them. A box that reaches above and below the line tells neither. AMGv2 is Clivot et al. 2019; ICBM is"
                + " Andren & Katterer 1997, in whose r water and warmth are one judged figure. All humus is taken to stay in the depth sampled last. Neither was fitted on permanent"
                + " vegetable beds. They are estimates, not findings.";
    }

    private Optional<Block> pictures() {
        List<Picture> pictures = new ArrayList<>();
        tables.places().forEach((samplings, beds) -> {
            EquivalentStock stocks = EquivalentStock.of(samplings);
            if (!stocks.stocks().isEmpty()) {
                pictures.add(picture(stocks, names(beds), pictures.size() + 1));
            }
        });
        return pictures.isEmpty() ? Optional.empty() : Optional.of(Block.pictures(pictures));
    }

    private Picture picture(EquivalentStock stocks, String beds, int part) {
        List<Ranges.Group> groups = new ArrayList<>();
        stocks.stocks()
                .forEach((sampling, stock) -> groups.add(new Ranges.Group(
                        sampling.day().toString(), List.of(RangeMark.of(SAMPLED, true, stock, 1, false)))));
        String caption = beds + ": t C/ha over " + Math.round(stocks.reference().orElseThrow()) + " t/ha of fine earth";
        Ranges chart = new Ranges(
                "chart-soil-stock-" + part,
                "Carbon stock as sampled, " + beds,
                "In t C/ha over equal mass: "
                        + stocks.stocks().entrySet().stream()
                                .map(each -> each.getKey().day() + " " + SoilTables.band(each.getValue()))
                                .collect(Collectors.joining("; "))
                        + ".",
                Math.max(LEAST_WIDE, Math.min(WIDE, 60 + ONE_SAMPLING * groups.size())),
                HIGH,
                groups,
                Ranges.Scale.of(groups),
                "t C/ha",
                best -> String.format(Locale.ROOT, "%.1f", best));
        return new Picture(chart, caption);
    }

    static String names(List<BedSoil> beds) {
        return beds.stream().map(BedSoil::bed).map(BedId::name).collect(Collectors.joining(" "));
    }

    private List<String> told() {
        List<String> said = new ArrayList<>();
        tables.places().forEach((samplings, beds) -> {
            BedSoil one = beds.get(0);
            said.add(names(beds) + ": "
                    + one.change()
                            .map(change -> change.words()
                                    + (change.leastDetectable().isPresent()
                                            ? ""
                                            : " What could be detected is not known."))
                            .orElse("sampled once: no change can be told."));
            one.equivalent()
                    .filter(each -> !each.reachesDepth())
                    .ifPresent(each -> said.add(names(beds)
                            + ": the last samples do not reach the mass of the first ones; sample a layer deeper, so that"
                            + " the whole depth can be compared."));
            if (samplings.stream()
                            .flatMap(each -> each.profile().stream())
                            .mapToDouble(Profile::depth)
                            .distinct()
                            .count()
                    > 1) {
                said.add(names(beds)
                        + ": not all sampled to one depth. A deeper sample is cut by proportion, as if its carbon were the same"
                        + " all the way down; soil is mostly richer at the top, so a shallower sampling seems to hold more than"
                        + " it does.");
            }
            samplings.stream().flatMap(each -> each.words().stream()).forEach(said::add);
        });
        return said;
    }

    private Optional<List<Block>> balances() {
        List<Ranges.Group> groups = soil.beds().stream()
                .map(bed -> new Ranges.Group(bed.bed().name(), marks(bed)))
                .toList();
        if (groups.stream().allMatch(group -> group.marks().isEmpty())) {
            return Optional.empty();
        }
        String title = "Change of the carbon stock in " + soil.years() + " years by two balances";
        Ranges chart = new Ranges(
                "chart-soil-balance",
                title,
                "In t C/ha from the last sampling. The table below has every figure.",
                WIDE,
                HIGH,
                groups,
                Ranges.Scale.of(groups),
                "t C/ha",
                best -> "");
        return Optional.of(List.of(
                Block.picture(new Picture(new Key("key-soil-balance", "Key: balances", List.of(AMG, ICBM), 2), "")),
                Block.picture(
                        new Picture(chart, title + ", t C/ha; the line at 0 is the stock of the last sampling"))));
    }

    private static List<RangeMark> marks(BedSoil bed) {
        List<RangeMark> marks = new ArrayList<>();
        boolean incomplete = bed.unknownPieces() > 0;
        List<Swatch> swatches = List.of(AMG, ICBM);
        for (int at = 0; at < swatches.size(); at++) {
            Swatch swatch = swatches.get(at);
            SoilTables.change(bed, bed.balances().get(at))
                    .ifPresent(each -> marks.add(RangeMark.of(swatch, false, each, 1, incomplete)));
        }
        return marks;
    }

    /** What cannot be worked out, and what to enter; once for all beds of which it holds. */
    private List<String> incomplete() {
        Map<String, Set<String>> gaps = new LinkedHashMap<>();
        for (BedSoil bed : soil.beds()) {
            bed.missing()
                    .forEach(gap -> gaps.computeIfAbsent(
                                    gap.startsWith("a soil sample")
                                            ? gap + "; enter it: bedledger did sample-soil"
                                            : gap,
                                    each -> new LinkedHashSet<>())
                            .add(bed.bed().name()));
            bed.balances().get(0).missing().stream()
                    .filter(gap -> !gap.contains("judgement"))
                    .filter(gap -> !bed.missing().contains(gap))
                    .forEach(gap -> gaps.computeIfAbsent(gap, each -> new LinkedHashSet<>())
                            .add(bed.bed().name()));
        }
        return gaps.entrySet().stream()
                .map(gap -> "Incomplete (" + String.join(" ", gap.getValue()) + "): "
                        + gap.getKey().replaceAll(", or give --[a-z-]+", ""))
                .toList();
    }

    /** What the balances take for granted. */
    private Optional<Block> assumed() {
        NavigableSet<String> said = new TreeSet<>();
        for (BedSoil bed : soil.beds()) {
            for (SoilBalance balance : bed.balances().subList(0, 2)) {
                balance.missing().stream()
                        .filter(gap -> gap.contains("judgement"))
                        .forEach(said::add);
            }
        }
        Map<String, List<String>> sites = new LinkedHashMap<>();
        soil.beds()
                .forEach(bed -> bed.words()
                        .forEach(word -> sites.computeIfAbsent(word, each -> new ArrayList<>())
                                .add(bed.bed().name())));
        List<String> points = new ArrayList<>();
        sites.forEach((word, beds) -> points.add("Used (" + String.join(" ", beds) + "): " + word));
        said.forEach(word -> points.add("Assumed: " + word));
        return points.isEmpty() ? Optional.empty() : Optional.of(Block.points(points));
    }

    private List<CoefficientLine> coefficients() {
        NavigableSet<String> causes = new TreeSet<>();
        Set<String> sets = new LinkedHashSet<>();
        if (!tables.places().isEmpty()) {
            sets.addAll(List.of("matter", "detection"));
        }
        for (BedSoil bed : soil.beds()) {
            for (int at = 0; at < 2; at++) {
                SoilBalance balance = bed.balances().get(at);
                String set = at == 0 ? "AMGv2" : "ICBM";
                balance.formed().map(Estimate::deviations).ifPresent(each -> causes.addAll(each.keySet()));
                balance.after().map(Estimate::deviations).ifPresent(each -> {
                    causes.addAll(each.keySet());
                    sets.add(set);
                });
            }
        }
        List<CoefficientLine> lines = new ArrayList<>(Behind.sets("soil-carbon", sets));
        lines.addAll(Behind.moved("soil-carbon", causes));
        lines.addAll(Behind.moved("humified-share", causes));
        return lines.stream().distinct().toList();
    }
}
