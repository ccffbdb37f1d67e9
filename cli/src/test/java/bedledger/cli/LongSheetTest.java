package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets far longer than a season's go in as short ones do: whole, once, and with a word on how far they are. */
class LongSheetTest {
    private static final LocalDate FIRST = LocalDate.of(2005, 1, 1);

    @TempDir
    Path folder;

    @Test
    void takesFiveThousandRows() {
        takes(5_000);
    }

    /** In the profile for slow tests; give it the heap it is to be content with. */
    @Test
    @Tag("slow")
    void takesAHundredThousandRows() {
        takes(100_000);
    }

    private void takes(int rows) {
        Desk desk = Desk.withPracticeBook(folder);
        desk.lay("beds.csv", beds());
        desk.run("import beds.csv --book farm").done();
        desk.lay("long.csv", sheet(rows));
        Said said = desk.run("import long.csv --book farm").done();
        assertThat(said.out()).startsWith("Wrote " + rows + " acts");
        assertThat(desk.entries("farm")).hasSize(8 + rows);
        if (rows >= 10_000) {
            assertThat(said.err()).contains("Read 10000 of " + rows + " acts", "Written 10000 of " + rows + " acts");
        }
        assertThat(desk.run("import long.csv --book farm").done().out())
                .startsWith("Nothing to write; " + rows + " are in the book already.");
        assertThat(desk.run("verify --book farm").done().out()).contains("Everything agrees.");
        desk.lay("long.csv", sheet(rows) + "2025-01-01,untarp,L1,\n");
        desk.run("import long.csv --book farm")
                .refused(
                        Exit.REFUSED,
                        "1 row refused",
                        rows + " in the book already",
                        "row " + (rows + 2),
                        "no tarp lies on it");
        assertThat(desk.entries("farm")).hasSize(8 + rows);
    }

    private static String beds() {
        return """
                date,did,field,beds,gross,length,width
                2004-12-30,register-field,Long,,1ha,,
                2004-12-30,lay-out,Long,L1..L200,,20m,0.75m
                """;
    }

    /** Beds flailed, weeded and harrowed in turn, fourteen acts a day. */
    private static String sheet(int rows) {
        StringBuilder sheet = new StringBuilder("date,did,beds,note\n");
        String[] acts = {"flail", "weed", "harrow", "broadfork"};
        for (int row = 0; row < rows; row++) {
            sheet.append(FIRST.plusDays(row / 14))
                    .append(',')
                    .append(acts[row % acts.length])
                    .append(",L")
                    .append(row % 200 + 1)
                    .append(",row ")
                    .append(row)
                    .append('\n');
        }
        return sheet.toString();
    }
}
