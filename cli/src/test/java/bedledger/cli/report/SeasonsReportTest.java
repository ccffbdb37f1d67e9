package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.cli.chart.Drawing;
import bedledger.cli.chart.StackedBars;
import bedledger.cli.chart.Svg;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

/** The agronomist's report: what its charts say is what its tables and files say, and it can be read without seeing. */
class SeasonsReportTest {
    private static final Page PAGE = FourSeasons.page();
    private static final double HALF_A_HUNDREDTH = 0.005;

    private static List<Drawing> drawings() {
        return report().drawings();
    }

    private static SeasonsReport report() {
        return FourSeasons.desk().seasons("heron", "2026-11-25");
    }

    @Test
    void barsAddUpToTheTableBehindThem() {
        StackedBars chart = (StackedBars) drawings().stream()
                .filter(drawing -> drawing.id().equals("chart-dry-seasons"))
                .findFirst()
                .orElseThrow();
        List<Element> rows =
                Page.all(Page.all(PAGE.byId("table-dry-seasons"), "tbody").get(0), "tr");
        assertThat(rows).hasSize(4).allSatisfy(row -> {
            List<String> cells = Page.all(row, "*").stream()
                    .filter(cell -> cell.getTagName().matches("t[hd]"))
                    .map(Page::text)
                    .toList();
            double best = Double.parseDouble(cells.get(cells.size() - 3));
            double drawn = chart.bar(cells.get(0)).orElseThrow().total();
            assertThat(drawn).isPositive().isCloseTo(best, within(HALF_A_HUNDREDTH));
            double sources = cells.subList(1, cells.size() - 4).stream()
                    .filter(cell -> cell.matches("[0-9.]+"))
                    .mapToDouble(Double::parseDouble)
                    .sum();
            assertThat(sources).isCloseTo(drawn, within(10 * HALF_A_HUNDREDTH));
        });
    }

    @Test
    void filesHoldTheSameAsTheCharts() throws IOException {
        StackedBars chart = (StackedBars) drawings().stream()
                .filter(drawing -> drawing.id().equals("chart-dry-bed-L3"))
                .findFirst()
                .orElseThrow();
        List<NamedCsvRecord> lines = csv("returned-dry.csv").stream()
                .filter(line -> line.getField("of").equals("L3")
                        && line.getField("source").equals("all"))
                .toList();
        assertThat(lines).hasSize(4).allSatisfy(line -> {
            double kilograms = Double.parseDouble(line.getField("dry_kg_best"));
            double squareMetres = Double.parseDouble(line.getField("square_metres"));
            assertThat(chart.bar(line.getField("season")).orElseThrow().total())
                    .isCloseTo(kilograms / squareMetres * 10, within(1e-9));
        });
    }

    private static List<NamedCsvRecord> csv(String name) throws IOException {
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(FourSeasons.file(name))) {
            return reader.stream().toList();
        }
    }

    @Test
    void everyFileNamedInThePageIsThere() throws IOException {
        Set<String> named = PAGE.all("p").stream()
                .filter(paragraph -> Page.hasClass(paragraph, "files"))
                .flatMap(paragraph ->
                        Stream.of(Page.text(paragraph).replace("As data: ", "").split(", ")))
                .collect(Collectors.toSet());
        assertThat(named)
                .hasSizeGreaterThan(8)
                .allSatisfy(name -> assertThat(FourSeasons.file(name)).isNotEmptyFile());
        assertThat(csv("coefficients.csv"))
                .hasSizeGreaterThan(20)
                .allSatisfy(line -> assertThat(line.getField("source")).isNotEmpty());
    }

    @Test
    void everyDrawingNamesAndDescribesItself() { // WCAG 2.2, 1.1.1
        assertThat(PAGE.all("svg")).hasSizeGreaterThan(30).allSatisfy(svg -> {
            assertThat(svg.getAttribute("role")).isEqualTo("img");
            assertThat(Page.text(PAGE.byId(svg.getAttribute("aria-labelledby"))))
                    .isNotEmpty();
            assertThat(Page.text(PAGE.byId(svg.getAttribute("aria-describedby"))))
                    .isNotEmpty();
        });
    }

    @Test
    void wordsOfADrawingStayWords() {
        Element season = PAGE.byId("chart-dry-seasons");
        assertThat(Page.all(season, "text").stream().map(Page::text)).contains("2023", "2026", "t/ha", "a");
    }

    @Test
    void everyChapterWithAChartHasATable() {
        List<Element> charted = PAGE.all("section").stream()
                .filter(section -> !Page.all(section, "svg").isEmpty())
                .toList();
        assertThat(charted)
                .hasSizeGreaterThan(6)
                .allSatisfy(section -> assertThat(Page.all(section, "table")).isNotEmpty());
    }

    @Test
    void idsAreUnique() {
        List<String> ids = PAGE.everything()
                .map(element -> element.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
        assertThat(ids).doesNotHaveDuplicates().hasSizeGreaterThan(100);
        Set<String> anchors = new HashSet<>(ids.stream().map(id -> "#" + id).toList());
        assertThat(PAGE.all("a").stream().map(link -> link.getAttribute("href")))
                .isSubsetOf(anchors);
    }

    @Test
    void theSameBookGivesTheSameDrawings() {
        List<String> first = drawings().stream().map(Svg::of).toList();
        assertThat(drawings().stream().map(Svg::of).toList()).isEqualTo(first);
        assertThat(first).allSatisfy(svg -> assertThat(svg).doesNotContain("2026-11-25T", "Generated"));
    }

    @Test
    void estimatesAreHatchedAndWhatIsIncompleteIsMarked() {
        assertThat(Page.text(PAGE.byId("key-dry")))
                .contains("crop shoots, estimated, hatched", "compost, measured, solid");
        assertThat(PAGE.all("text").stream().map(Page::text)).anyMatch(text -> text.endsWith(" + ?"));
    }

    @Test
    void drawsNothingOfNothing(@TempDir Path folder) throws IOException {
        Desktop desk = new Desktop(folder);
        desk.run("new", "bare", "--farm", "Ash Corner", "--practice", "--time-zone", "Europe/Dublin");
        Page page = Page.read(FourSeasons.write(desk, "bare", "report").resolve("seasons.html"));
        assertThat(page.all("svg")).isEmpty();
        assertThat(Page.text(page.byId("main"))).contains("There is no bed in the book", "nothing to draw");
        assertThat(folder.resolve("report/seasons.pdf")).isNotEmptyFile();
    }

    @Test
    void saysWhereABedGotNothing(@TempDir Path folder) {
        Desktop desk = new Desktop(folder);
        desk.run("new", "bare", "--farm", "Ash Corner", "--practice", "--time-zone", "Europe/Dublin");
        desk.typed("""
                register-field North --gross 0.05ha --on 2025-03-01
                lay-out N1 --field North --length 20m --width 0.75m --on 2025-03-01
                """, "did", "-", "--book", "bare");
        Page page = Page.read(FourSeasons.write(desk, "bare", "report").resolve("seasons.html"));
        assertThat(page.all("svg").stream().map(svg -> svg.getAttribute("id")))
                .containsExactly("key-cover", "chart-cover-1");
        assertThat(Page.text(page.byId("main")))
                .contains(
                        "Nothing went back to the soil",
                        "No working of the soil is on record",
                        "No soil test is on record");
    }

    @Test
    void leavesAFolderThatIsThereAlone() throws IOException {
        Path first = FourSeasons.file("seasons.html");
        String before = Files.readString(first);
        FourSeasons.write(FourSeasons.desk(), "heron", "report");
        assertThat(Files.readString(first)).isEqualTo(before);
        assertThat(FourSeasons.desk().folder().resolve("report-2/seasons.html")).exists();
    }
}
