package bedledger.ledger.entry;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.ledger.json.CanonicalJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every payload ever released can still be read, and none changed its spelling under its revision.
 *
 * <p>One line of canonical JSON for each kind and revision, {@code golden/NAME.REVISION.json}, all fields filled. For a new kind or
 * revision run {@code mvn -pl shared/ledger -am test -Dtest=GoldenTest -Dgolden=write}: it writes what is not there yet, never over
 * what is.
 */
class GoldenTest {
    private static final Path FOLDER = Path.of("src/test/resources/golden");

    static Stream<String> revisions() {
        return Acts.all().stream()
                .flatMap(kind ->
                        IntStream.rangeClosed(1, kind.revision()).mapToObj(revision -> kind.name() + "." + revision));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("revisions")
    void isStillSpelledAsItWasReleased(String revision) throws IOException {
        ActKind kind = kind(revision);
        Path file = FOLDER.resolve(revision + ".json");
        boolean current = revision.equals(kind.name() + "." + kind.revision());
        String filled = line(new Deed(Filled.plainHead(), Filled.fact(kind)));
        if (current && !Files.exists(file) && "write".equals(System.getProperty("golden"))) {
            Files.writeString(file, filled);
        }
        assertThat(file)
                .as("Every kind and revision has its golden file. This one is new: make it with -Dgolden=write")
                .exists();
        if (current) {
            assertThat(Files.readString(file))
                    .as(
                            "The JSON of '%s' changed. Raise its revision, add an upcaster, and leave this file as it is",
                            revision)
                    .isEqualTo(filled);
        }
    }

    @Test
    void canAllBeRead() throws IOException {
        List<String> files = files();
        assertThat(files).hasSizeGreaterThan(50);
        for (String file : files) {
            String text = Files.readString(FOLDER.resolve(file));
            byte[] payload = text.stripTrailing().getBytes(UTF_8);
            assertThat(CanonicalJson.isCanonical(payload)).as(file).isTrue();
            ActKind kind = kind(file);
            Deed read = DeedCodec.read(kind.name(), revision(file), CanonicalJson.readStrict(payload));
            if (revision(file) == kind.revision()) {
                assertThat(line(read)).as(file).isEqualTo(text);
            }
        }
    }

    @Test
    void hasTheHeadInFull() throws IOException {
        Path file = FOLDER.resolve("head").resolve("full.json");
        String filled = line(new Deed(Filled.fullHead(), Filled.fact(kind("record.struck.1"))));
        if (!Files.exists(file) && "write".equals(System.getProperty("golden"))) {
            Files.writeString(file, filled);
        }
        assertThat(Files.readString(file))
                .as("The JSON of the head changed, which changes every kind: raise all their revisions")
                .isEqualTo(filled);
    }

    private static List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    private static ActKind kind(String file) {
        String name = file.replaceFirst("\\.[0-9]+(\\.json)?$", "");
        return Acts.byName(name).orElseThrow(() -> new AssertionError("no kind '" + name + "' for " + file));
    }

    private static int revision(String file) {
        return Integer.parseInt(file.replaceFirst(".*\\.([0-9]+)\\.json$", "$1"));
    }

    private static String line(Deed deed) {
        return new String(CanonicalJson.write(DeedCodec.write(deed)), UTF_8) + "\n";
    }
}
