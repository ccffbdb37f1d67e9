package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the rules would say is said as an act is written, and never stops it. */
class ForewarnedTest {
    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void manuredBed() {
        desk = new Desk(folder);
        desk.run("new farm --farm \"Ash Corner\" --practice --written 2025-03-01")
                .done();
        desk.typed("""
                        register-field North --gross 0.05ha --on 2025-03-01 --written 2025-03-01
                        lay-out N1..N4 --field North --length 20m --width 0.75m --on 2025-03-01
                        build-pile W1 --method unmanaged --ingredients "sheep manure" --animal-material yes --on 2025-03-02 --written 2025-03-02
                        spread N1 --pile W1 --quantity 40kg --on 2025-04-01 --written 2025-04-01
                        split-bed N1 --into N1a,N1b --lengths 12m,8m --on 2025-04-02 --written 2025-04-02
                        till N1a N1b --on 2025-04-03 --written 2025-04-03
                        """, "did - --book farm").done();
    }

    private Said did(String act, String day) {
        return desk.run("did " + act + " --on " + day + " --written " + day + " --book farm")
                .done();
    }

    /** The pile and the bed it was split from lie behind the bed that is sown: 2025-04-03 + 120 days. */
    @Test
    void aSownBedIsAskedWithAllThatLiesBehindIt() {
        Said said = did("sow N1a --crop carrot", "2025-05-01");
        assertThat(said.out().replaceAll("\\s+", " "))
                .contains("Carrot in N1a cannot be cut as organic before 2025-08-01.", "Pile W1 shows no complete");
        said.fits();
    }

    @Test
    void otherActsAndFreeBedsHearNothing() {
        assertThat(did("sow N2 --crop carrot", "2025-05-01").out()).doesNotContain("cannot");
        assertThat(did("weed N1a", "2025-05-01").out()).doesNotContain("cannot");
    }

    @Test
    void aCorrectedPickIsHeldAgainstItsNewDay() {
        did("sow N1a --crop carrot", "2025-05-01");
        String pick = "harvest N1a --crop carrot --quantity 9kg --lot CA-1 --last";
        assertThat(did(pick, "2025-08-02").out()).doesNotContain("cannot");
        assertThat(desk.run("correct 9 --why slip --on 2025-07-31 --written 2025-08-03 --book farm")
                        .done()
                        .out())
                .contains("cannot be cut as organic before 2025-08-01");
    }

    @Test
    void aSaleIsToldBeforeTheInvoiceIsOutAndIsWrittenAllTheSame() {
        did("sow N1a --crop carrot", "2025-05-01");
        did("harvest N1a --crop carrot --quantity 9kg --lot CA-1 --last", "2025-07-31");
        Said said = did("sell CA-1=9kg --as organic --invoice 5", "2025-08-01");
        assertThat(said.out()).contains("#10", "Lot 2025/CA-1 as organic: not met.");
        said.fits();
    }
}
