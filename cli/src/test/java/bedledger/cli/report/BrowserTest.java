package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** The report in a real browser, at a desk's width and at the narrowest that WCAG asks for; skipped where there is no Chromium. */
class BrowserTest {
    private static final Path BROWSER = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
    private static final List<String> WCAG =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");
    private static final int SECONDS_ON_A_BUSY_MACHINE = 300;
    /** Without these Chromium looks for its maker's hosts. */
    private static final List<String> QUIET = List.of(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    /** Whether an element stands in the window once the page has come to rest. */
    private static final String SETTLED = "const [row, done] = arguments; setTimeout(() => {"
            + " const top = row.getBoundingClientRect().top; done(top >= 0 && top < window.innerHeight); }, 500)";

    static final String MISSING = "The report was not looked at in a browser: there is no " + BROWSER + " with "
            + DRIVER + ". On Debian: apt-get install chromium chromium-driver";

    @TempDir
    static Path profile;

    private static final Page REPORT = Desktop.withTheDemo().report("farm", "--on", "2025-12-31");

    @SuppressWarnings("NullAway.Init") // null only where every test is skipped
    private static ChromeDriver browser;

    @BeforeAll
    static void startTheBrowser() {
        if (isHere()) {
            browser = started(profile);
        } else {
            System.err.println(MISSING);
        }
    }

    static ChromeDriver started(Path profile) {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(BROWSER.toFile());
        options.addArguments(QUIET);
        options.addArguments("--user-data-dir=" + profile);
        ChromeDriverService driver = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER.toFile())
                .build();
        return new ChromeDriver(driver, options);
    }

    static boolean isHere() {
        return Files.isExecutable(BROWSER) && Files.isExecutable(DRIVER);
    }

    /** Test by test, so that each is counted as skipped. */
    @BeforeEach
    void openTheReport() {
        assumeTrue(isHere(), MISSING);
        browser.get(REPORT.file().toUri().toString());
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.quit();
        }
    }

    private static void width(int pixels) {
        width(browser, pixels);
    }

    static void width(ChromeDriver browser, int pixels) {
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", pixels, "height", 900, "deviceScaleFactor", 1, "mobile", false));
        assertThat(browser.executeScript("return window.innerWidth")).isEqualTo((long) pixels);
    }

    @ParameterizedTest(name = "at {0} px")
    @ValueSource(ints = {1280, 320})
    void axeFindsNothing(int pixels) {
        width(pixels);
        assertThat(violations(browser)).isEmpty();
    }

    /** What axe finds in the page that is open, in words. */
    static List<String> violations(ChromeDriver browser) {
        AxeRunOptions violations = new AxeRunOptions();
        violations.setResultTypes(List.of("violations"));
        AxeBuilder axe = new AxeBuilder().withOptions(violations).withTags(WCAG);
        axe.setTimeout(SECONDS_ON_A_BUSY_MACHINE);
        Results results = axe.analyze(browser);
        assertThat(results.isErrored()).as("%s", results.getErrorMessage()).isFalse();
        assertThat(results.getPasses().stream().map(Rule::getId))
                .contains(
                        "color-contrast", "target-size", "html-has-lang", "landmark-unique", "region", "heading-order");
        return results.getViolations().stream().map(BrowserTest::words).toList();
    }

    @Test
    void axeWouldFindAMissingLanguage() {
        browser.executeScript("document.documentElement.removeAttribute('lang')");
        Results results =
                new AxeBuilder().withOnlyRules(List.of("html-has-lang")).analyze(browser);
        assertThat(results.getViolations().stream().map(Rule::getId)).containsExactly("html-has-lang");
    }

    private static String words(Rule rule) {
        return rule.getId() + ": " + rule.getHelp() + " "
                + rule.getNodes().stream().limit(3).map(node -> node.getHtml()).toList();
    }

    @ParameterizedTest(name = "at {0} px")
    @ValueSource(ints = {1280, 640, 320}) // 640: a desk's width at 200 %
    void thePageItselfNeverScrollsSideways(int pixels) {
        width(pixels);
        assertThat((Long) browser.executeScript("return document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(pixels);
    }

    @ParameterizedTest(name = "at {0} px")
    @ValueSource(ints = {1280, 320})
    void theFirstTabShowsTheSkipLinkWithItsFocus(int pixels) {
        width(pixels);
        browser.switchTo().activeElement().sendKeys(Keys.TAB);
        WebElement focused = browser.switchTo().activeElement();
        assertThat(focused.getText()).isEqualTo("To the report");
        assertThat(focused.getRect().getX()).isNotNegative();
        assertThat(focused.getCssValue("outline-style")).isEqualTo("solid");
        assertThat(focused.getCssValue("outline-width")).isEqualTo("3px");
    }

    @ParameterizedTest(name = "at {0} px")
    @ValueSource(ints = {1280, 320})
    void anEntryLinkBringsItsRowIntoView(int pixels) {
        width(pixels);
        browser.executeScript("document.querySelector('#timeline-K1 a[href=\"#entry-61\"]').click()");
        WebElement row = browser.findElement(By.id("entry-61"));
        assertThat(browser.executeAsyncScript(SETTLED, row)).isEqualTo(true);
        assertThat(row.getText()).contains("Corrects #59");
    }

    @ParameterizedTest(name = "at {0} px")
    @ValueSource(ints = {1280, 320})
    void loadsNothingElse(int pixels) {
        width(pixels);
        assertThat(browser.executeScript("return performance.getEntriesByType('resource').length"))
                .isEqualTo(0L);
    }
}
