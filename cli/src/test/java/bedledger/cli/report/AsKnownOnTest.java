package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The same book before and after a figure was put right on 2025-07-11. */
class AsKnownOnTest {
    private final Page before =
            Desktop.withTheDemo().report("farm", "--on", "2025-07-10", "--as-known-on", "2025-07-10");
    private final Page after = Desktop.withTheDemo().report("farm", "--on", "2025-07-10");

    @Test
    void figuresAreThoseOfThatDay() {
        assertThat(Page.text(before.byId("lot-2025-CAB-0703")))
                .contains("310 lb")
                .doesNotContain("130 lb");
        assertThat(Page.text(after.byId("lot-2025-CAB-0703")))
                .contains("130 lb")
                .doesNotContain("310 lb");
        assertThat(Page.text(before.rows("table-returned-bed", "K1").get(0)))
                .isNotEqualTo(Page.text(after.rows("table-returned-bed", "K1").get(0)));
    }

    @Test
    void nothingWrittenLaterIsInIt() {
        assertThat(before.text()).doesNotContain("the slip says 130").doesNotContain("id=\"entry-61\"");
        assertThat(Page.text(before.all("header").get(0)))
                .contains("2025-07-10: nothing written after that day counts");
        assertThat(after.text()).contains("id=\"entry-61\"");
    }

    @Test
    void workOfALaterDayIsInTheRegisterOnly() {
        assertThat(Page.text(after.byId("entry-92"))).contains("kohlrabi");
        assertThat(after.rows("timeline-K1", "kohlrabi")).isEmpty();
    }
}
