package bedledger.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Text that would be markup, style or script, or that turns the direction of reading, stays text. */
class HostileTextTest {
    private static final String FARM = "<script>alert('farm')</script> & \"Söhne\" } @import url(x); {{title}}";
    private static final String NOTE =
            "</style></p><img src=x onerror=alert(1)> &lt; #1 {{title}} ]]> <!-- \u202Ereversed\u202C \uD83E\uDD55";

    @TempDir
    Path folder;

    private Page page() {
        Desktop desk = new Desktop(folder);
        desk.run("new", "farm", "--farm", FARM, "--practice", "--written", "2025-02-10T18:00");
        desk.typed(
                "register-field North --gross 0.05ha --on 2025-02-10 --written 2025-02-10\n"
                        + "lay-out N1 --field North --length 20m --width 0.75m --on 2025-02-10\n"
                        + "found N1 --nothing --on 2025-02-10 --note \"" + NOTE + "\"\n"
                        + "list-material \"Meal <b>13</b> & 'co'\" --maker \"<i>\" --on 2025-02-10\n",
                "did",
                "-",
                "--book",
                "farm");
        return desk.report("farm", "--on", "2025-12-31");
    }

    @Test
    void staysText() {
        Page page = page();
        assertThat(page.all("script")).isEmpty();
        assertThat(page.all("img")).isEmpty();
        assertThat(page.all("b")).isEmpty();
        assertThat(page.all("i")).isEmpty();
        assertThat(page.all("style")).hasSize(1);
        assertThat(page.style()).doesNotContain("<", "url(", "@import");
        assertThat(Page.text(page.all("h1").get(0))).isEqualTo("Audit report of " + FARM);
        assertThat(Page.text(page.rows("timeline-N1", "Note:").get(0)))
                .contains("</style></p><img src=x onerror=alert(1)> &lt; #1 {{title}} ]]> <!-- ", "\uD83E\uDD55");
        assertThat(page.rows("table-materials", "Meal <b>13</b> & 'co'")).hasSize(1);
    }

    @Test
    void turningCharactersAreSpeltOut() {
        Page page = page();
        assertThat(page.text()).doesNotContain("\u202E").doesNotContain("\u202C");
        assertThat(Page.text(page.rows("timeline-N1", "Note:").get(0))).contains("[U+202E]reversed[U+202C]");
    }

    @Test
    void whatXmlCannotHoldIsReplaced() {
        assertThat(Templates.escaped("a\u0000b\u0007c\uFFFEd\uD800e")).isEqualTo("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe");
    }

    @Test
    void noTemplateFillsInAnythingUnescaped() throws Exception {
        for (String name : java.util.List.of(
                "report", "table", "lines", "phrase", "runs", "finding", "met", "branches", "finding-lines", "style")) {
            try (var in = Templates.class.getResourceAsStream(name + ".mustache")) {
                assertThat(in).as(name).isNotNull();
                assertThat(new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8))
                        .doesNotContain("{{{", "{{&");
            }
        }
    }
}
