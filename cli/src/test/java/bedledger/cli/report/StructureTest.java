package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** What WCAG 2.2 asks of a static page, so far as its structure shows it; the success criterion beside each. */
class StructureTest {
    private static final Page PAGE = Desktop.withTheDemo().report("farm", "--on", "2025-12-31");

    @Test
    void saysItsLanguageAndTitle() { // 3.1.1, 2.4.2
        assertThat(PAGE.root().getAttribute("lang")).isEqualTo("en");
        assertThat(PAGE.all("title"))
                .singleElement()
                .satisfies(title -> assertThat(Page.text(title)).contains("Hollow Lane Farm", "2025-12-31"));
    }

    @Test
    void headingsStepDownOneAtATimeFromOneH1() { // 1.3.1, 2.4.6
        List<Integer> levels = PAGE.everything()
                .filter(element -> element.getTagName().matches("h[1-6]"))
                .map(element -> Integer.parseInt(element.getTagName().substring(1)))
                .toList();
        assertThat(levels.get(0)).isEqualTo(1);
        assertThat(levels.stream().filter(level -> level == 1)).hasSize(1);
        for (int at = 1; at < levels.size(); at++) {
            assertThat(levels.get(at)).as("heading %d", at).isLessThanOrEqualTo(levels.get(at - 1) + 1);
        }
    }

    @Test
    void noHeadingIsEmpty() {
        assertThat(PAGE.everything()
                        .filter(element -> element.getTagName().matches("h[1-6]"))
                        .map(Page::text))
                .doesNotContain("");
    }

    @Test
    void idsAreUnique() {
        List<String> ids = PAGE.everything()
                .map(element -> element.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
        assertThat(ids).doesNotHaveDuplicates().hasSizeGreaterThan(150);
    }

    @Test
    void everyLinkLeadsSomewhereWithinThePage() {
        Set<String> ids = PAGE.everything()
                .map(element -> "#" + element.getAttribute("id"))
                .collect(Collectors.toSet());
        List<String> links =
                PAGE.all("a").stream().map(link -> link.getAttribute("href")).toList();
        assertThat(links).hasSizeGreaterThan(300);
        assertThat(ids).containsAll(new HashSet<>(links));
    }

    @Test
    void noLinkIsWithoutText() { // 2.4.4
        assertThat(PAGE.all("a").stream().map(Page::text)).doesNotContain("");
    }

    @Test
    void beginsWithASkipLinkToTheMainLandmark() { // 2.4.1
        Element first = PAGE.all("a").get(0);
        assertThat(first.getAttribute("href")).isEqualTo("#main");
        assertThat(PAGE.byId("main").getTagName()).isEqualTo("main");
    }

    @Test
    void hasEachLandmarkOnceAndNothingOutsideThem() { // 1.3.1
        for (String landmark : List.of("header", "nav", "main", "footer")) {
            assertThat(PAGE.all(landmark)).as(landmark).hasSize(1);
        }
        assertThat(PAGE.all("table"))
                .allSatisfy(table -> assertThat(
                                Page.above(table, parent -> parent.getTagName().equals("main")))
                        .isPresent());
    }

    @Test
    void everyTableHasACaptionAndScopedHeadings() { // 1.3.1
        assertThat(PAGE.all("table")).hasSizeGreaterThan(40).allSatisfy(table -> {
            assertThat(Page.all(table, "caption"))
                    .singleElement()
                    .satisfies(caption -> assertThat(Page.text(caption)).isNotEmpty());
            assertThat(Page.all(table, "th")).isNotEmpty().allSatisfy(heading -> {
                assertThat(heading.getAttribute("scope")).isIn("col", "row", "rowgroup");
                assertThat(Page.text(heading)).isNotEmpty();
            });
        });
    }

    @Test
    void everyRowBeginsWithItsHeading() { // 1.3.1: a row's heading speaks for the cells after it
        assertThat(PAGE.all("tr").stream().filter(row -> !Page.hasClass(row, "notes")))
                .allSatisfy(row ->
                        assertThat(Page.all(row, "*").get(0).getTagName()).isEqualTo("th"));
    }

    @Test
    void everyRowIsAsWideAsItsTable() {
        assertThat(PAGE.all("table")).allSatisfy(table -> {
            int columns = Page.all(Page.all(table, "thead").get(0), "th").size();
            assertThat(Page.all(table, "tr"))
                    .allSatisfy(row -> assertThat(width(row)).isEqualTo(columns));
        });
    }

    private static int width(Element row) {
        return Page.all(row, "*").stream()
                .filter(cell -> cell.getTagName().matches("t[hd]"))
                .mapToInt(cell ->
                        cell.getAttribute("colspan").isEmpty() ? 1 : Integer.parseInt(cell.getAttribute("colspan")))
                .sum();
    }

    @Test
    void wideTablesScrollInAFocusableRegionWithALabel() { // 1.4.10, 2.1.1, 4.1.2
        List<Element> wide = PAGE.all("table").stream()
                .filter(table -> Page.all(Page.all(table, "thead").get(0), "th").size() > 3)
                .toList();
        assertThat(wide).hasSizeGreaterThan(30).allSatisfy(table -> {
            Element region = (Element) table.getParentNode();
            assertThat(region.getAttribute("tabindex")).isEqualTo("0");
            assertThat(region.getAttribute("role")).isEqualTo("region");
            assertThat(PAGE.byId(region.getAttribute("aria-labelledby")).getTagName())
                    .isEqualTo("caption");
        });
    }

    @Test
    void everyOutcomeIsSaidInWordsBesideItsSymbol() { // 1.4.1, 1.1.1
        List<Element> verdicts = PAGE.all("p").stream()
                .filter(paragraph -> Page.hasClass(paragraph, "verdict"))
                .toList();
        assertThat(verdicts).hasSizeGreaterThan(20).allSatisfy(verdict -> {
            assertThat(Page.all(verdict, "strong").get(0).getTextContent()).isIn("met", "ask", "incomplete", "not met");
            assertThat(Page.all(verdict, "span").get(0).getAttribute("aria-hidden"))
                    .isEqualTo("true");
        });
    }

    @Test
    void whatIsNoLongerInForceIsStruckThroughAndSaidInWords() { // 1.4.1
        assertThat(PAGE.all("tr").stream()
                        .filter(row -> Page.hasClass(row, "void"))
                        .filter(row -> !row.getAttribute("id").startsWith("entry-")))
                .isNotEmpty()
                .allSatisfy(row -> {
                    assertThat(Page.all(row, "del")).isNotEmpty();
                    assertThat(Page.text(row)).containsAnyOf("Replaced", "Struck", "Without effect");
                });
    }

    @Test
    void standsAloneWithoutScriptsAndRequests() {
        assertThat(PAGE.all("script")).isEmpty();
        assertThat(PAGE.all("link")).isEmpty();
        assertThat(PAGE.all("img")).isEmpty();
        assertThat(PAGE.everything().filter(element -> element.hasAttribute("src")))
                .isEmpty();
        assertThat(PAGE.style()).doesNotContain("url(", "@import", "@font-face");
        assertThat(PAGE.everything()
                        .flatMap(element -> java.util.stream.IntStream.range(
                                        0, element.getAttributes().getLength())
                                .mapToObj(at -> element.getAttributes().item(at).getNodeName())))
                .noneMatch(Pattern.compile("on[a-z]+").asMatchPredicate());
    }

    @Test
    void isSetForPrint() {
        assertThat(PAGE.style())
                .contains("@media print", "thead { display: table-header-group; }", "break-inside: avoid")
                .contains("counter(page)", "counter(pages)")
                .contains("PRACTICE", "Hollow", "checkpoint");
    }
}
