package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;

/** The agronomist's report in a real browser; skipped where there is no Chromium. */
class SeasonsBrowserTest {
    @TempDir
    static Path profile;

    @SuppressWarnings("NullAway.Init") // null only where every test is skipped
    private static ChromeDriver browser;

    @BeforeAll
    static void startTheBrowser() {
        if (BrowserTest.isHere()) {
            browser = BrowserTest.started(profile);
        } else {
            System.err.println(BrowserTest.MISSING);
        }
    }

    @BeforeEach
    void openTheReport() {
        assumeTrue(BrowserTest.isHere(), BrowserTest.MISSING);
        browser.get(FourSeasons.file("seasons.html").toUri().toString());
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.quit();
        }
    }

    @ParameterizedTest(name = "at {0} px")
    @ValueSource(ints = {1280, 320})
    void axeFindsNothing(int pixels) {
        BrowserTest.width(browser, pixels);
        assertThat(BrowserTest.violations(browser)).isEmpty();
    }

    @ParameterizedTest(name = "at {0} px")
    @ValueSource(ints = {1280, 640, 320}) // 640: a desk's width at 200 %
    void thePageItselfNeverScrollsSideways(int pixels) {
        BrowserTest.width(browser, pixels);
        assertThat((Long) browser.executeScript("return document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(pixels);
    }

    @ParameterizedTest(name = "on {0}")
    @ValueSource(strings = {"screen", "print"})
    void everyDrawingIsSeenWhole(String medium) {
        BrowserTest.width(browser, 1280);
        browser.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", medium));
        List<WebElement> drawings = browser.findElements(By.tagName("svg"));
        assertThat(drawings).hasSizeGreaterThan(30).allSatisfy(drawing -> {
            String[] box =
                    Objects.requireNonNull(drawing.getDomAttribute("viewBox")).split(" ", -1);
            assertThat(drawing.getRect().getWidth()).isEqualTo(Integer.parseInt(box[2]));
            assertThat(drawing.getRect().getHeight()).isEqualTo(Integer.parseInt(box[3]));
        });
        browser.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
    }
}
