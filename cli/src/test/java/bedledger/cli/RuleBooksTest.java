package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RuleBooksTest {
    private final Desk desk;

    RuleBooksTest(@TempDir Path folder) {
        desk = new Desk(folder);
    }

    @Test
    void bothBooksArePrintedAndOneIfOneIsAskedFor() {
        assertThat(desk.run("rules").done().out())
                .contains("Rule book us,", "Rule book eu,", "land-three-years", "livestock-nitrogen");
        assertThat(desk.run("rules --rules eu").done().out())
                .contains("Rule book eu,", "livestock-nitrogen")
                .doesNotContain("Rule book us,");
    }

    @Test
    void aBookIsJudgedByItsOwnRulesUnlessOthersAreAskedFor() {
        desk.run("new farm --farm \"Ash Corner\" --rules eu --practice").done();

        assertThat(desk.run("check --book farm").done().out()).contains("rule book eu");
        assertThat(desk.run("check --book farm --rules us").done().out()).contains("rule book us");
    }

    @Test
    void rulesThatThereAreNotAreRefused() {
        desk.run("rules --rules uk").refused(Exit.REFUSED, "The rule book 'uk'", "choose one of us, eu");
    }
}
