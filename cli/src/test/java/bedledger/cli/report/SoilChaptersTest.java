package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedledger.cli.chart.Drawing;
import bedledger.cli.chart.RangeMark;
import bedledger.cli.chart.Ranges;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

/** The chapters on nitrogen, breakdown and soil carbon: nothing said that the samples do not bear, nothing left out in silence. */
class SoilChaptersTest {
    private static final Page PAGE = FourSeasons.page();

    private static String chapter(Page page, String id) {
        return Page.text((Element) page.byId(id).getParentNode());
    }

    private static List<NamedCsvRecord> csv(Path file) throws IOException {
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(file)) {
            return reader.stream().toList();
        }
    }

    private static double number(NamedCsvRecord line, String field) {
        return Double.parseDouble(line.getField(field));
    }

    @Test
    void nitrogenChartsShowWhatTheFileSays() throws IOException {
        Drawing drawing = FourSeasons.desk().seasons("heron", "2026-11-25").drawings().stream()
                .filter(each -> each.id().equals("chart-release-bed-L3"))
                .findFirst()
                .orElseThrow();
        List<NamedCsvRecord> lines = csv(FourSeasons.file("nitrogen-release.csv")).stream()
                .filter(line -> line.getField("bed").equals("L3"))
                .toList();
        assertThat(lines).hasSize(4).allSatisfy(line -> {
            Optional<RangeMark> mark = ((Ranges) drawing)
                    .group(line.getField("season")).orElseThrow().marks().stream()
                            .filter(each -> each.swatch().letter().equals("s"))
                            .findFirst();
            assertThat(mark).isPresent();
            assertThat(mark.get().best()).isCloseTo(number(line, "freed_best"), within(1e-9));
            assertThat(mark.get().low().orElseThrow()).isCloseTo(number(line, "freed_low"), within(1e-9));
        });
        assertThat(csv(FourSeasons.file("nitrogen-release.csv")))
                .as("some bed locks nitrogen up")
                .anySatisfy(line -> assertThat(line.getField("freed_low")).startsWith("-"));
    }

    @Test
    void theNewChaptersNameTheCoefficientsTheyRestOn() throws IOException {
        List<NamedCsvRecord> lines = csv(FourSeasons.file("coefficients.csv"));
        assertThat(lines.stream().map(line -> line.getField("table")))
                .contains("residue-turnover", "soil-carbon", "humified-share", "breakdown", "breakdown-groups");
        assertThat(lines.stream().map(line -> line.getField("coefficient"))).contains("van Bemmelen", "old decay");
        assertThat(Page.text(PAGE.byId("table-sources")))
                .contains("STICS v8", "Clivot et al. 2019", "Pribyl 2010")
                .doesNotContain("this farm's own measurement");
    }

    @Test
    void neverSaysThatCarbonRoseWhereChanceIsNotKnown() {
        assertThat(chapter(PAGE, "soil-carbon"))
                .contains("No change can be told", "Neither was fitted on permanent vegetable beds", "1.724")
                .doesNotContain("carbon rose:", "carbon fell:");
    }

    @Test
    void measuredIsADotAndEstimatedIsABox() {
        assertThat(Page.text(PAGE.byId("key-soil-balance")))
                .contains("AMGv2, estimated, hatched", "ICBM, estimated, dotted");
        Ranges stock = (Ranges) FourSeasons.desk().seasons("heron", "2026-11-25").drawings().stream()
                .filter(each -> each.id().equals("chart-soil-stock-1"))
                .findFirst()
                .orElseThrow();
        assertThat(stock.groups())
                .hasSize(4)
                .allSatisfy(group -> assertThat(group.marks())
                        .allMatch(RangeMark::measured)
                        .as("one sample, no interval")
                        .allMatch(mark -> mark.low().isEmpty()));
    }

    @Test
    void saysWhatIsMissingAndWhatToEnter(@TempDir Path folder) {
        Desktop desk = new Desktop(folder);
        desk.run("new", "bare", "--farm", "Ash Corner", "--practice", "--time-zone", "Europe/Dublin");
        desk.typed("""
                register-field North --gross 0.05ha --on 2025-03-01
                lay-out N1 --field North --length 20m --width 0.75m --on 2025-03-01
                found North --nothing --on 2025-03-01
                transplant N1 --crop broccoli --origin own --on 2025-05-01
                harvest N1 --crop broccoli --quantity 20kg --last --on 2025-07-20
                flail N1 --passes 1 --on 2025-07-21
                """, "did", "-", "--book", "bare");
        Page page = Page.read(FourSeasons.write(desk, "bare", "report").resolve("seasons.html"));
        assertThat(chapter(page, "nitrogen-release"))
                .contains(
                        "Incomplete (N1): when it is set free",
                        "bedledger weather --add",
                        "no soil test speaks of phosphorus");
        assertThat(chapter(page, "breakdown"))
                .contains("Incomplete (N1)", "no weather is known", "bedledger did check-tarp");
        assertThat(chapter(page, "soil-carbon"))
                .contains("Incomplete (N1): a soil sample", "bedledger did sample-soil")
                .doesNotContain("A dot is");
        assertThat(page.all("svg").stream().map(svg -> svg.getAttribute("id")))
                .noneMatch(id -> id.startsWith("chart-soil") || id.startsWith("chart-breakdown"));
    }

    /** By hand: 2 % over 20 cm at 1.30 is 52.0 t C/ha in 2600 t of earth; at 1.43 it is 57.2 in 2860 t, but again 52.0 in 2600 t. */
    @Test
    void packedSoilIsNotTakenForMoreCarbon(@TempDir Path folder) throws IOException {
        Desktop desk = sampled(folder, "2% 2% 2% 2% 2%", "1.3g/cm3", "2% 2% 2% 2% 2%", "1.43g/cm3");
        List<NamedCsvRecord> lines =
                csv(FourSeasons.write(desk, "plot", "report").resolve("soil-stock.csv"));
        assertThat(lines.stream().map(line -> number(line, "stock_to_depth_t_ha_best")))
                .satisfiesExactly(
                        first -> assertThat(first).isCloseTo(52.0, within(1e-9)),
                        later -> assertThat(later).isCloseTo(57.2, within(1e-9)));
        assertThat(lines.stream().map(line -> number(line, "stock_equal_mass_t_ha_best")))
                .allSatisfy(stock -> assertThat(stock).isCloseTo(52.0, within(1e-9)));
    }

    @Test
    void aRiseIsSaidOnlyOnceItPassesWhatCouldBeDetected(@TempDir Path small, @TempDir Path large) {
        Desktop less = sampled(small, "1.8% 1.9% 2% 2.1% 2.2%", "1.3g/cm3", "1.9% 2% 2.1% 2.2% 2.3%", "1.3g/cm3");
        assertThat(chapter(page(less), "soil-carbon"))
                .contains("No change can be told: the samples differ by +0.10 % C")
                .doesNotContain("carbon rose:");
        Desktop more = sampled(large, "1.8% 1.9% 2% 2.1% 2.2%", "1.3g/cm3", "2.8% 2.9% 3% 3.1% 3.2%", "1.3g/cm3");
        assertThat(chapter(page(more), "soil-carbon")).contains("Soil carbon rose: the samples differ by +1.00 % C");
    }

    private static Page page(Desktop desk) {
        return Page.read(FourSeasons.write(desk, "plot", "report").resolve("seasons.html"));
    }

    private static Desktop sampled(Path folder, String first, String firstDensity, String later, String laterDensity) {
        Desktop desk = new Desktop(folder);
        desk.run(
                "new",
                "plot",
                "--farm",
                "Ash Corner",
                "--practice",
                "--time-zone",
                "Europe/Dublin",
                "--written",
                "2021-03-01");
        StringBuilder acts = new StringBuilder("""
                register-field North --gross 0.05ha --on 2021-03-01
                lay-out N1 --field North --length 20m --width 0.75m --on 2021-03-01
                """);
        for (String percent : first.split(" ", -1)) {
            acts.append(sample(percent, firstDensity, "2021-03-10"));
        }
        for (String percent : later.split(" ", -1)) {
            acts.append(sample(percent, laterDensity, "2025-03-10"));
        }
        desk.typed(acts.toString(), "did", "-", "--written", "2025-11-25", "--book", "plot");
        return desk;
    }

    private static String sample(String percent, String density, String day) {
        return "sample-soil N1 --from-depth 0cm --to-depth 20cm --organic-carbon " + percent + " --bulk-density "
                + density + " --carbon-method combustion --laboratory \"Soil Works\" --on " + day + "\n";
    }
}
