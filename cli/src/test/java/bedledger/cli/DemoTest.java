package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoTest {
    @Test
    void showsASeasonAndWritesNothingIntoABookThatIsThere(@TempDir Path folder) {
        Desk desk = new Desk(folder);
        Said said = desk.run("demo").done();
        assertThat(said.err()).isEmpty();
        assertThat(said.out())
                .contains("PRACTICE book — Hollow Lane Farm", "Bed K1 on 2025-12-31", "Returned by 2025-12-31")
                .contains("Findings on 2025-12-31", "Everything agrees.", "audit-2025-12-31.html");
        Sealed first = desk.sealed("bedledger-demo");
        assertThat(desk.run("demo").done().out()).contains("bedledger-demo-2");
        assertThat(desk.sealed("bedledger-demo")).isEqualTo(first);
    }
}
