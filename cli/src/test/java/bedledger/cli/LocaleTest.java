package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A computer set to Turkish (where I has no dot below) or German (where a comma stands in numbers) says and stores the same. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LocaleTest {
    private static final Locale BEFORE = Locale.getDefault();
    private final Path folder;
    private List<String> english;

    LocaleTest(@TempDir Path folder) {
        this.folder = folder;
        Locale.setDefault(Locale.ENGLISH);
        this.english = everything("en");
    }

    @BeforeEach
    @AfterEach
    void setBack() {
        Locale.setDefault(BEFORE);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"})
    void saysAndStoresTheSame(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        List<String> said = everything(tag);
        assertThat(said).filteredOn(text -> !english.contains(text)).isEmpty();
        assertThat(said).isEqualTo(english);
    }

    /** Everything the program says on the way through a season, and every line of its journal. */
    private List<String> everything(String name) {
        Desk desk = Season.quickly(folder.resolve(name));
        List<String> said = new ArrayList<>();
        for (String command : List.of(
                "beds --on 2025-07-13 --book farm",
                "BEDS",
                "bed k1 --book farm",
                "check --all --on 2025-12-31 --book farm",
                "returned --by piece --book farm",
                "returned --by crop --csv --book farm",
                "rules --tables --csv",
                "did --help",
                "did FLIP K1",
                "did flail K1 --PASSES 2 --book farm",
                "did sow K1 --crop RADISH --quantity 2OZ --on FRI --book farm",
                "did sow K2 --crop Chicory --quantity 1.5 Lb --on Yesterday --at 7:30 --book farm",
                "did harvest K1 --crop radish --quantity 12KG --on fri --weighed DIRTY --book farm",
                "did weather --min 30F --max 58f --rain 1.2IN --book farm",
                "did sow K1 --crop KIWI --quantity 2oz --book farm",
                "did finish k1 --crop radish --book farm")) {
            Said each = desk.run(command);
            said.add(command + " " + each.exit() + "\n" + each.out() + each.err());
        }
        desk.lay("s.csv", "DATE,DID,BEDS,CROP,QUANTITY,PLACE IN DAY\n2025-12-30,sow,K3,Dill,\"1,5g\",3\n");
        said.add(desk.run("import s.csv --decimal-comma --book farm").done().out());
        desk.entries("farm").forEach(entry -> said.add(Season.payload(entry)));
        return said.stream()
                .flatMap(text ->
                        text.replace(folder.resolve(name).toString(), "FOLDER").lines())
                .toList();
    }
}
