package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

/** The report read as an inspector reads it: what is missing first, then findings, then one record after another, down to a sale. */
class InspectorTest {
    private static final String BOOK = """
            register-field North --gross 0.05ha --on 2025-02-10 --written 2025-02-10
            lay-out N1 N2 --field North --length 20m --width 0.75m --on 2025-02-10
            found N1 N2 --nothing --on 2025-02-10
            declare-land North --none-since 2015-01-01 --evidence "owner's letter" --on 2025-02-10
            count leek --quantity 0kg --on 2025-02-10
            receive-seed LK-1 --crop leek --quantity 20g --supplier "Hill Seeds" --organic yes --on 2025-02-12 --written 2025-02-12
            build-pile H1 --method windrow --ingredients "horse manure, straw" --carbon-to-nitrogen 28 --on 2025-03-01 --written 2025-03-01
            spread N1 --pile H1 --per-bed 60kg --on 2025-04-01 --written 2025-04-20
            sow N1 --crop leek --seed-lot LK-1 --quantity 5g --on 2025-04-10 --written 2025-04-20
            harvest N1 --crop leek --quantity 30.5kg --lot LEEK-A --on 2025-09-20 --written 2025-09-20
            harvest N1 --crop leek --quantity 20kg --lot LEEK-B --on 2025-09-27 --written 2025-09-27
            sell LEEK-A=32kg LEEK-B=8kg --as organic --buyer "corner shop" --invoice 77 --on 2025-09-28 --written 2025-09-28
            donate LEEK-B=2.5kg --to "school kitchen" --on 2025-09-29 --written 2025-09-29
            count leek --quantity 7.5kg --on 2025-09-30 --written 2025-09-30
            sell LEEK-B=1kg --as organic --buyer "corner shop" --invoice 78 --on 2025-10-02 --written 2025-10-02
            """;

    @TempDir
    Path folder;

    private Desktop desk;
    private Page page;

    @BeforeEach
    void writeTheBook() {
        desk = new Desktop(folder);
        desk.run("new", "farm", "--farm", "Ash Corner", "--practice", "--written", "2025-02-10T18:00");
        desk.typed(BOOK, "did", "-", "--book", "farm");
        page = desk.report("farm", "--on", "2025-12-31");
    }

    @Test
    void beginsWithWhatIsNotHere() {
        assertThat(page.all("h2").stream().map(heading -> heading.getAttribute("id")))
                .containsSubsequence(
                        "gaps",
                        "summary",
                        "due",
                        "land",
                        "seed",
                        "inputs",
                        "beds",
                        "harvest",
                        "lots",
                        "storage",
                        "sales",
                        "balance",
                        "trace",
                        "oversight",
                        "training",
                        "corrections",
                        "lag",
                        "seal",
                        "register");
    }

    @Test
    void everyGapStandsWithTheCommandThatAnswersIt() {
        List<Element> rows = page.rows("table-gaps", "bedledger ");
        long told = desk.run("gaps", "--on", "2025-12-31", "--csv", "--book", "farm")
                        .lines()
                        .count()
                - 1;
        assertThat(rows).hasSize((int) told).hasSizeGreaterThan(5);
        assertThat(page.rows("table-gaps", "harvest containers", "bedledger did clean"))
                .hasSize(1);
    }

    @Test
    void aFindingStandsInFullOnceAtItsPlaceAndIsLinkedFromTheBedItBearsOn() {
        assertThat(page.all("li").stream()
                        .filter(item -> item.getAttribute("id").startsWith("finding-")
                                && Page.text(item).contains("pile H1")
                                && Page.text(item).contains("compost-process")))
                .hasSize(1);
        Element bed = (Element) page.byId("bed-N1").getParentNode();
        assertThat(Page.text(bed)).contains("compost-process, pile H1");
        assertThat(Page.text((Element) page.byId("bed-N2").getParentNode())).doesNotContain("pile H1");
    }

    @Test
    void whatMayNotBePickedYetStandsWithItsDayAndReasons() {
        desk.typed("till N1 --depth 10cm --on 2025-04-02", "did", "-", "--book", "farm");
        // 7 CFR 205.203(c)(1)(ii): 2025-04-02 + 120 days
        assertThat(desk.report("farm", "--on", "2025-06-01").rows("table-due", "2025-07-31", "N1", "205.203(c)(1)"))
                .singleElement()
                .satisfies(row -> assertThat(Page.linksToAnEntry(row)).isTrue());
        assertThat(Page.text((Element)
                        desk.report("farm", "--on", "2025-08-01").byId("due").getParentNode()))
                .contains("Nothing, as far as the book says.");
    }

    /** 30.5 − 32 = −1.5 of one lot and 20 − 8 − 2.5 = 9.5 of the other, before the sale of October. */
    @Test
    void whatIsLeftByLotIsHeldAgainstTheCount() {
        assertThat(Page.text((Element) page.byId("balance").getParentNode()))
                .contains(
                        "By lot: 8.0 kg is left on paper in all lots together, and 7.5 kg was counted on 2025-09-30.");
    }

    @Test
    void tracesSalesAsOrganicBeforeOthers() {
        for (String day : List.of("10-03", "10-04", "10-05")) {
            desk.typed(
                    "sell LEEK-B=1kg --as not-organic --buyer neighbour --on 2025-" + day + " --written 2025-" + day,
                    "did",
                    "-",
                    "--book",
                    "farm");
        }
        assertThat(desk.report("farm", "--on", "2025-12-31").all("h3").stream()
                        .filter(heading -> heading.getAttribute("id").startsWith("trace-"))
                        .map(Page::text)
                        .limit(2))
                .containsExactly("invoice 78", "invoice 77");
    }

    @Test
    void theBalanceOfACropIsLaidOutWithTheEntriesBehindEachLine() {
        // 0 + 50.5 − 40 − 2.5 = 8.0 should be there; 7.5 counted; 0.5 short, 0.99 % of 50.5
        assertThat(page.rows("balance-1", "+ harvested", "50.5"))
                .singleElement()
                .satisfies(row -> assertThat(Page.linksToAnEntry(row)).isTrue());
        assertThat(page.rows("balance-1", "− sold", "40")).hasSize(1);
        assertThat(page.rows("balance-1", "= should be there", "8.0")).hasSize(1);
        assertThat(page.rows("balance-1", "difference", "−0.5", "short, 0.99 % of 50.5 kg"))
                .hasSize(1);
        assertThat(page.rows("table-balances", "leek", "50.5 kg", "2025/LEEK-A"))
                .hasSize(1);
    }

    @Test
    void aLotSoldBeyondWhatItHeldStandsOut() {
        assertThat(page.rows("balance-1-lots", "2025/LEEK-A", "−1.5 kg", "more went out than it held"))
                .hasSize(1);
    }

    @Test
    void whatMovedAfterTheLastCountIsSaidAndNotCounted() {
        Element balance = (Element) page.byId("balance").getParentNode();
        assertThat(Page.text(balance))
                .contains(
                        "To 2025-12-31 incomplete: the store was not counted after 2025-09-30; what came in or went out since, #16, is not in it.");
    }

    @Test
    void theNewestSalesAreTracedBackToSeedPileAndLand() {
        List<Element> sales = page.all("h3").stream()
                .filter(heading -> heading.getAttribute("id").startsWith("trace-"))
                .toList();
        assertThat(sales.stream().map(Page::text)).containsExactly("invoice 78", "invoice 77");
        String trace = Page.text((Element) page.byId("trace").getParentNode());
        assertThat(trace)
                .contains("2025/LEEK-B", "bed N1", "seed lot LK-1", "pile H1", "field North", "owner's letter");
    }

    @Test
    void aSeedLotLeadsForwardToEveryOutlet() {
        assertThat(page.rows("table-seed-used", "LK-1", "2025/LEEK-A", "invoice 77", "2025/LEEK-B", "given away"))
                .hasSize(1);
    }

    @Test
    void lagIsBoldFromTheDaysThatWereSet() {
        assertThat(lags(page)).isNotEmpty().allMatch(lag -> lag.equals("(10 days)") || lag.equals("(19 days)"));
        assertThat(lags(desk.report("farm", "--on", "2025-12-31", "--late-from", "15")))
                .containsOnly("(19 days)");
    }

    private static List<String> lags(Page page) {
        return page.all("strong").stream()
                .map(Page::text)
                .filter(text -> text.matches("\\([0-9]+ days?\\)"))
                .toList();
    }
}
