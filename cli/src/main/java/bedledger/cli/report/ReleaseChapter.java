package bedledger.cli.report;

import bedledger.cli.chart.Key;
import bedledger.cli.chart.RangeMark;
import bedledger.cli.chart.Ranges;
import bedledger.cli.chart.Swatch;
import bedledger.cli.read.ReleaseFigure;
import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.nitrogen.Release;
import bedledger.projections.returned.Sum;
import bedledger.projections.trends.Season;
import java.awt.Color;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What the nitrogen of returned matter does: set free or locked up, for the next crop or for nobody; and phosphorus. */
final class ReleaseChapter {
    private static final int SMALL = 285;
    private static final int HIGH = 190;
    private static final Swatch BY_THE_DAY =
            new Swatch("s", "set free by the day asked (STICS)", new Color(0x00634a), Swatch.Pattern.HATCHED);
    private static final Swatch NEXT =
            new Swatch("n", "to the end of the next crop (STICS)", new Color(0x004c80), Swatch.Pattern.EMPTY);
    private static final Swatch LINE =
            new Swatch("p", "shoots, to the next crop (PNW 636)", new Color(0x7d3c63), Swatch.Pattern.DOTTED);
    private static final Swatch AMENDMENTS =
            new Swatch("r", "manure and compost (RB209)", new Color(0xd98f00), Swatch.Pattern.SOLID);

    private final SeasonsAsked asked;
    private final Releases releases;
    private final Signed signed;
    private final PhosphorusBlocks phosphorus;

    ReleaseChapter(SeasonsAsked asked) {
        this.asked = asked;
        this.releases = new Releases(asked);
        this.signed = new Signed(releases.unit);
        this.phosphorus = new PhosphorusBlocks(asked);
    }

    Chapter chapter() {
        ReleaseTables tables = new ReleaseTables(asked, releases);
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.text(intro()));
        blocks.add(Block.text("Temperatures: " + releases.nitrogen.weather() + "."));
        incomplete().ifPresent(blocks::add);
        if (!releases.nitrogen.releases().isEmpty()) {
            blocks.add(Block.heading("Set free or locked up"));
            blocks.add(Block.picture(new Picture(
                    new Key("key-release", "Key: nitrogen", List.of(BY_THE_DAY, NEXT, LINE, AMENDMENTS), 2), "")));
            blocks.add(Block.pictures(pictures()));
        }
        blocks.add(Block.table(tables.freed()));
        blocks.add(Block.heading("With nothing there to catch it"));
        blocks.add(
                Block.text(
                        "Days of the season on which nothing grew on the bed, and what of that season's returns was set"
                                + " free on such days within a year of its return; spans on which nitrogen is locked up are left out, and what one piece locks up is not set against what another sets free, so it is at most so"
                                + " much. Rain can"
                                + " carry nitrate away on bare and on mulched days; under a tarp it stands as nitrate until the tarp comes off."));
        blocks.add(Block.table(tables.uncaught()));
        autumn().ifPresent(blocks::add);
        blocks.add(Block.heading("Fed or robbed"));
        blocks.add(Block.table(tables.nextCrops()));
        blocks.addAll(phosphorus.blocks());
        return new Chapter(
                "nitrogen-release",
                "Nitrogen set free or locked up, and phosphorus",
                blocks,
                List.of(
                        new Chapter.DataFile("nitrogen-release.csv", tables.data()),
                        new Chapter.DataFile("phosphorus.csv", phosphorus.data())),
                coefficients());
    }

    private String intro() {
        return "In " + releases.unit.unit()
                + " of bed top, by the season in which it went back; below 0 is locked up by the"
                + " microbes that rot it. All of it is estimated: no figure of this chapter was measured. A box reaches from low"
                + " to high, the thick line in it is the best value; “?” over it means that a part is not known. Residues go through the"
                + " residue module of STICS v8; the line of PNW 636 stands beside it, made for cover crops and stretched to"
                + " vegetable leaves, for shoots and the next crop alone. Compare p with n, not with s. Of manure and compost"
                + " only the next crop's share is known (RB209). Neither way knows these beds: where they differ, the truth may"
                + " lie anywhere between. What the soil itself sets free is not in it, nor what is washed out: this is no balance.";
    }

    private List<Picture> pictures() {
        Map<BedId, List<Ranges.Group>> groups = new LinkedHashMap<>();
        asked.beds()
                .forEach(bed -> groups.put(
                        bed,
                        asked.seasons().stream()
                                .map(season -> new Ranges.Group(season.name(), marks(bed, season)))
                                .toList()));
        Ranges.Scale scale =
                Ranges.Scale.of(groups.values().stream().flatMap(List::stream).toList());
        List<Picture> pictures = new ArrayList<>();
        groups.forEach((bed, some) -> pictures.add(new Picture(
                new Ranges(
                        "chart-release-bed-" + bed.name(),
                        "Nitrogen set free or locked up on bed " + bed,
                        "In " + releases.unit.unit() + ": "
                                + some.stream()
                                        .map(group -> group.label() + ": "
                                                + (group.marks().isEmpty()
                                                        ? "nothing known"
                                                        : signed.words(group.marks())))
                                        .collect(Collectors.joining("; "))
                                + ".",
                        SMALL,
                        HIGH,
                        some,
                        scale,
                        releases.unit.unit(),
                        best -> ""),
                "Bed " + bed)));
        return pictures;
    }

    private List<RangeMark> marks(BedId bed, Season season) {
        List<RangeMark> marks = new ArrayList<>();
        mark(marks, bed, season, BY_THE_DAY, ReleaseFigure.FREED);
        mark(marks, bed, season, NEXT, ReleaseFigure.TO_THE_NEXT_CROP);
        mark(marks, bed, season, LINE, ReleaseFigure.COVER_CROP_LINE);
        mark(marks, bed, season, AMENDMENTS, ReleaseFigure.AMENDMENTS);
        return marks;
    }

    private void mark(List<RangeMark> marks, BedId bed, Season season, Swatch swatch, ReleaseFigure figure) {
        Sum sum = releases.sum(bed, season, figure);
        Optional<Estimate> known = releases.perSquareMetre(bed, season, sum);
        known.ifPresent(each -> marks.add(RangeMark.of(swatch, false, each, releases.unit.times(), !sum.isComplete())));
    }

    /** What is missing, once for each gap, with the beds and what to enter. */
    private Optional<Block> incomplete() {
        Map<String, NavigableSet<String>> gaps = new LinkedHashMap<>();
        for (Release release : releases.nitrogen.releases()) {
            release.missing()
                    .forEach(gap -> gaps.computeIfAbsent(words(release, gap), each -> new TreeSet<>())
                            .add(release.bed().name()));
        }
        phosphorus
                .missing()
                .forEach((gap, beds) ->
                        gaps.computeIfAbsent(gap, each -> new TreeSet<>()).addAll(beds));
        return gaps.isEmpty()
                ? Optional.empty()
                : Optional.of(Block.points(gaps.entrySet().stream()
                        .map(gap -> "Incomplete (" + String.join(" ", gap.getValue()) + "): " + gap.getKey())
                        .toList()));
    }

    private static String words(Release release, String gap) {
        if (gap.startsWith("when it comes")) {
            return "when it is set free, for no temperature is known for every day; enter weather: bedledger weather --add"
                    + " FILE";
        }
        if (gap.startsWith("which share")) {
            return release.piece().what() + ": " + gap;
        }
        return release.piece().what() + ", " + release.piece().kind().words() + ": " + gap
                + " is not known; weigh quadrats, have it analysed, or note your own value: bedledger did own-value";
    }

    private Optional<Block> autumn() {
        List<String> rich = releases.nitrogen.releases().stream()
                .filter(Release::highNitrogenInAutumn)
                .filter(each -> each.inTheEnd().filter(end -> end.best() > 0).isPresent())
                .map(each -> each.bed() + ", " + each.piece().what() + ", worked in "
                        + each.workedIn().orElseThrow()
                        + ": rich in nitrogen and nothing sown soon after, at risk of leaching over winter (Agneessens & De"
                        + " Neve 2014; from where on it is much is a judgement)")
                .distinct()
                .toList();
        return rich.isEmpty() ? Optional.empty() : Optional.of(Block.points(rich));
    }

    private List<CoefficientLine> coefficients() {
        NavigableSet<String> causes = new TreeSet<>(phosphorus.causes());
        releases.nitrogen
                .releases()
                .forEach(each -> each.otherWay()
                        .ifPresent(other ->
                                causes.addAll(other.kilograms().deviations().keySet())));
        List<CoefficientLine> lines = new ArrayList<>();
        if (releases.nitrogen.releases().stream().anyMatch(each -> !each.isAmendment())) {
            lines.addAll(Behind.all("residue-turnover"));
        }
        lines.addAll(Behind.moved("amendment-nitrogen", causes));
        lines.addAll(phosphorus.coefficients());
        return lines;
    }
}
