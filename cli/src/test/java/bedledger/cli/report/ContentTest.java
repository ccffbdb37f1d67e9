package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.ledger.journal.Journal;
import bedledger.ledger.tree.Merkle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** What an inspector finds in the report of the demo's season, and how every line of it leads to the entries behind it. */
class ContentTest {
    private static final Desktop DESK = Desktop.withTheDemo();
    private static final Page PAGE = DESK.report("farm", "--on", "2025-12-31");

    @Test
    void neverSaysCompliantAndSaysWhoDecides() {
        assertThat(PAGE.text().toLowerCase(Locale.ROOT)).doesNotContain("complian");
        assertThat(Page.text(PAGE.all("header").get(0))).contains("It helps you judge; the certifier decides.");
    }

    @Test
    void aPracticeBookSaysSoAboveBelowAndInTheMarginOfEveryPrintedPage() {
        assertThat(Page.text(PAGE.all("title").get(0))).startsWith("PRACTICE");
        assertThat(Page.text(PAGE.all("header").get(0))).startsWith("PRACTICE book");
        assertThat(Page.text(PAGE.all("footer").get(0))).startsWith("PRACTICE book");
        assertThat(PAGE.style()).containsPattern("@top-center \\{ content: \"PRACTICE");
    }

    @Test
    void saysWhatTheSealProvesAndWhatItDoesNot() {
        assertThat(Page.text(PAGE.all("main").get(0)))
                .contains("they agree", "94 of the 94 entries of this report lie under a signed checkpoint")
                .contains("A change made without the book's key no longer agrees with the signed checkpoints")
                .contains("Nothing before anybody else held a checkpoint is proved");
        assertThat(Page.text(PAGE.all("pre").get(0))).contains("hollow-lane-farm/", " 94 ", "—");
    }

    @Test
    void theRegisterHasEveryEntryWithTheLeafHashOfItsLine() {
        List<String> leaves = new ArrayList<>();
        Journal.read(
                DESK.folder().resolve("farm/journal.jsonl"),
                0,
                (offset, line) -> leaves.add(Merkle.leaf(line).base64()));
        assertThat(leaves).hasSize(94);
        for (int number = 1; number <= leaves.size(); number++) {
            assertThat(Page.text(PAGE.byId("entry-" + number)))
                    .startsWith("#" + number + " ")
                    .endsWith(leaves.get(number - 1));
        }
    }

    @Test
    void aCorrectedHarvestStandsReplacedAndCorrectedInItsBed() {
        assertThat(PAGE.rows("timeline-K1", "310 lb"))
                .singleElement()
                .satisfies(row -> assertThat(Page.text(row))
                        .contains(
                                "2025-07-03",
                                "harvest",
                                "Replaced by #61 on 2025-07-11: the slip says 130, not 310",
                                "#59"));
        assertThat(PAGE.rows("timeline-K1", "130 lb"))
                .singleElement()
                .satisfies(row -> assertThat(Page.text(row)).contains("2025-07-11 (8 days)", "Corrects #59", "#61"));
    }

    @Test
    void correctionsSayWhoWhenAndWhy() {
        assertThat(PAGE.rows("table-corrections", "#61"))
                .singleElement()
                .satisfies(row -> assertThat(Page.text(row))
                        .contains(
                                "2025-07-11 20:00", "owner", "#59", "310 lb", "130 lb", "the slip says 130, not 310"));
    }

    @Test
    void aLotSaysWhereItWentAndWhatIsLeftOnPaper() {
        // 240 harvested − 95 sold − 20 given away − 15 lost + 5 taken back = 115
        assertThat(Page.text(PAGE.byId("lot-2025-BEE-0828")))
                .contains("95 lb as organic, invoice 214", "20 lb given away", "15 lb lost, culled", "5 lb", "115 lb");
        // 190 harvested − 150 − 45 sold
        assertThat(Page.text(PAGE.byId("lot-2025-BEE-0818"))).contains("−5 lb", "lot-oversold");
    }

    @Test
    void anInvoiceShowsItsLotsAndWhatCameBack() {
        assertThat(PAGE.rows("table-invoices", "214"))
                .hasSize(2)
                .first()
                .satisfies(row -> assertThat(Page.text(row))
                        .contains("2025/BEE-0818 150 lb", "2025/BEE-0828 95 lb", "school kitchen"));
        assertThat(PAGE.rows("table-invoices", "214", "came back", "one crate soft"))
                .hasSize(1);
    }

    @Test
    void aPileShowsEachReadingOnItsDayAndEachTurn() {
        assertThat(PAGE.rows("heat-W1", "2025-03-04", "133 F", "#33")).hasSize(1);
        assertThat(PAGE.rows("heat-W1", "2025-03-19", "134 F", "#33")).hasSize(1);
        assertThat(PAGE.rows("heat-W1", "turn pile")).hasSize(5);
        assertThat(PAGE.rows("heat-W2", "turn pile")).hasSize(3);
    }

    @Test
    void lagIsAPlainFigure() {
        assertThat(Page.text(PAGE.all("main").get(0)))
                .contains("the median is 0 days and the largest is 25 days", "93 entries were written as new ones");
        assertThat(Page.text(PAGE.rows("table-late", "2025-07-15").get(0))).contains("2025-08-09 (25 days)");
    }

    @Test
    void seedLeadsToWhereItWasSown() {
        assertThat(Page.text(PAGE.rows("table-seed-used", "CB-4").get(0))).contains("2025-04-20 transplant K1 K2 #37");
        assertThat(PAGE.byId("seed-CB-4").getTagName()).isEqualTo("tr");
    }

    @Test
    void returnedIsShownWithLowBestAndHighSourcesApartAndTheRule() {
        assertThat(PAGE.rows("pieces-K1", "Shoots together")).hasSize(1);
        assertThat(PAGE.rows("pieces-K1", "Roots together")).hasSize(1);
        assertThat(PAGE.rows("pieces-K3", "Brought together")).hasSize(1);
        assertThat(PAGE.rows("pieces-K1", "Season 2025")).hasSize(1);
        assertThat(Page.text(PAGE.all("main").get(0))).contains("How low and high are found");
        assertThat(PAGE.rows("table-coefficients", "cabbage", "harvest index")).hasSize(1);
    }

    @Test
    void aBandThatLeavesOutACoefficientWithoutARangeIsMarked() {
        assertThat(Page.text(PAGE.rows("table-returned-bed", "K4").get(0))).contains("†");
        assertThat(Page.text(PAGE.all("main").get(0))).contains("† marks a figure with a band that leaves out");
    }

    @Test
    void remarksSpeakInTheUnitOfTheBook() {
        assertThat(Page.text(PAGE.byId("pieces-K1")))
                .contains("172 lb fresh harvested")
                .doesNotContain(" kg");
        assertThat(Page.text(PAGE.byId("pieces-G2")))
                .contains("38 lb fresh = 6.84 lb")
                .doesNotContain(" kg ");
        assertThat(Page.text(PAGE.byId("table-left"))).contains(" lb ").doesNotContain(" kg ");
    }

    @Test
    void everyStateSentenceLeadsToAnEntry() {
        List<Element> sentences = PAGE.all("section").stream()
                .filter(section -> Page.hasClass(section, "bed"))
                .flatMap(bed -> Page.all(Page.all(bed, "ul").get(0), "li").stream())
                .toList();
        assertThat(sentences).hasSizeGreaterThan(15).allMatch(Page::linksToAnEntry);
    }

    @Test
    void everyFindingLeadsToItsEntries() {
        List<Element> findings = PAGE.all("li").stream()
                .filter(item -> item.getAttribute("id").startsWith("finding-"))
                .toList();
        assertThat(findings).hasSizeGreaterThan(25).allMatch(Page::linksToAnEntry);
    }

    @Test
    void everyFigureLeadsToItsEntries() {
        for (String table : List.of("table-returned-bed", "table-returned-season", "table-left", "table-lots")) {
            assertThat(PAGE.rows(table).stream().skip(1)).as(table).isNotEmpty().allMatch(Page::linksToAnEntry);
        }
        assertThat(PAGE.all("table").stream()
                        .filter(table -> table.getAttribute("id").matches("(timeline|flips|heat|heap)-.*"))
                        .flatMap(table -> Page.all(Page.all(table, "tbody").get(0), "tr").stream()))
                .hasSizeGreaterThan(100)
                .allMatch(Page::linksToAnEntry);
    }

    @Test
    void noEntryInForceStandsOnlyInTheRegister() {
        for (int number = 1; number <= 94; number++) {
            String link = "#entry-" + number;
            assertThat(PAGE.all("a").stream()
                            .filter(anchor -> anchor.getAttribute("href").equals(link))
                            .filter(anchor -> Page.above(
                                            anchor,
                                            table -> table.getAttribute("id").equals("table-register"))
                                    .isEmpty()))
                    .as("links to entry %d from outside the register", number)
                    .isNotEmpty();
        }
    }
}
