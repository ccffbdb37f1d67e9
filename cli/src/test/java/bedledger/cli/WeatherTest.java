package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Weather files go into the book whole or not at all, and what lies there is said as it is. */
class WeatherTest {
    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void practiceBook() {
        desk = Desk.withPracticeBook(folder);
    }

    private Path kept(String name) {
        return desk.file("farm/weather/" + name);
    }

    @Test
    void addsAFileOfDays() {
        desk.lay("Station.csv", "date,min_c,max_c,rain_mm\n2025-07-01,12,24,0\n2025-07-03,13,25,\n");
        Said said = desk.run("weather --add Station.csv --book farm").done();
        assertThat(said.out())
                .isEqualTo("Added weather/station.csv: 2 days, 2025-07-01 to 2025-07-03, 1 missing, 1\nwithout rain\n");
        assertThat(desk.run("weather --book farm --from 2025-07-01 --to 2025-07-03 --csv")
                        .done()
                        .out())
                .contains("2025-07-01,12.0,24.0,0.0,CSV file,CSV file")
                .contains("2025-07-03,13.0,25.0,,CSV file,")
                .doesNotContain("2025-07-02");
    }

    @Test
    void normalsKeepTheirName() {
        desk.lay("climate.csv", Weathers.NORMALS);
        desk.run("weather --add climate.csv --book farm").done();
        assertThat(kept("normals.csv")).exists();
        assertThat(kept("climate.csv")).doesNotExist();
    }

    @Test
    void refusesAWrongFileByLineAndKeepsNothing() {
        desk.lay("station.csv", "date,min_c,max_c\n2025-07-01,12,24\n2025-07-02,30,20\nyesterday,1,2\n");
        Said said = desk.run("weather --add station.csv --book farm");
        assertThat(said.exit()).isEqualTo(Exit.REFUSED);
        assertThat(said.err()).contains("station.csv, line 3", "station.csv, line 4", "yesterday");
        assertThat(kept("station.csv")).doesNotExist();
    }

    @Test
    void doesNotReplaceUnlessTold() throws Exception {
        desk.lay("station.csv", "date,min_c,max_c\n2025-07-01,12,24\n");
        desk.run("weather --add station.csv --book farm").done();
        desk.lay("station.csv", "date,min_c,max_c\n2025-07-01,12,26\n");
        assertThat(desk.run("weather --add station.csv --book farm").exit()).isEqualTo(Exit.REFUSED);
        assertThat(Files.readString(kept("station.csv"))).contains("24");
        desk.run("weather --add station.csv --replace --book farm").done();
        assertThat(Files.readString(kept("station.csv"))).contains("26");
    }

    @Test
    void refusesANameThatLeadsElsewhere() {
        desk.lay("a b.csv", "date,min_c,max_c\n2025-07-01,12,24\n");
        assertThat(desk.run("weather", "--add", "a b.csv", "--book", "farm").exit())
                .isEqualTo(Exit.REFUSED);
        assertThat(desk.run("weather --add nowhere.csv --book farm").exit()).isEqualTo(Exit.NO_INPUT);
    }

    @Test
    void fileThatWasSpoiltInThePlaceIsLeftOutAndSaid() {
        desk.lay("farm/weather/bad.csv", "day,temperature\n1,2\n");
        desk.lay("farm/weather/normals.csv", Weathers.NORMALS);
        assertThat(desk.run("weather --book farm").done().out()).contains("weather/bad.csv is left out");
        assertThat(desk.run("ready --book farm").done().err()).contains("Careful: weather/bad.csv is left out");
    }

    @Test
    void weatherIsNoPartOfTheSealedLog() throws Exception {
        byte[] before = Files.readAllBytes(desk.file("farm/journal.jsonl"));
        desk.lay("normals.csv", Weathers.NORMALS);
        desk.run("weather --add normals.csv --book farm").done();
        assertThat(desk.file("farm/journal.jsonl")).hasBinaryContent(before);
        assertThat(desk.run("verify --book farm").exit()).isEqualTo(Exit.OK);
    }

    @Test
    void nothingMeasuredAfterTheDayOfKnowingCounts() {
        desk.lay("station.csv", "date,min_c,max_c\n2025-07-01,12,24\n2025-07-02,13,25\n");
        desk.run("weather --add station.csv --book farm").done();
        assertThat(desk.run("weather --book farm --as-known-on 2025-07-01 --from 2025-07-01 --to 2025-07-02 --csv")
                        .out())
                .contains("2025-07-01,")
                .doesNotContain("2025-07-02,");
    }
}
