package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.cli.write.SaidWords;
import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.language.Ask;
import bedledger.language.BookKeeping;
import bedledger.language.Caution;
import bedledger.language.Fact;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kind of act can be said in one word, explains itself, and its example is taken as it stands. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ActWordsTest {
    /** Kinds that a command of their own writes. */
    private static final Set<Class<?>> BY_COMMAND =
            Set.of(BookKeeping.BookOpened.class, BookKeeping.Struck.class, BookKeeping.DocumentAttached.class);

    /** What must stand in the book before an example can be, where beds, materials, piles and lots alone do not do. */
    private static final Map<String, String> BEFORE = Map.ofEntries(
            Map.entry("harrow", "found N3 --tarp \"silage film\""),
            Map.entry("untarp", "found N3 --tarp \"silage film\""),
            Map.entry("check-tarp", "found N1 --tarp \"silage film\""),
            Map.entry("unmulch", "found N5 --mulch polyethylene"),
            Map.entry("pull-drip", "found N3 N4 --drip-lines 2"),
            Map.entry("uncover", "found N1 --row-cover"),
            Map.entry("stake", "found N5 --crop tomato"),
            Map.entry("finish", "found N5 --crop tomato"),
            Map.entry("end-cover", "found N2 --cover-crop \"rye and vetch\""),
            Map.entry("harvest", "found N1 --crop leek"),
            Map.entry("lay-out", "register-field North --gross 0.05ha"),
            Map.entry("pot-up", "sow-trays LE-0301 --crop leek"),
            Map.entry("transplant", "sow-trays BR-0310 --crop broccoli"),
            Map.entry(
                    "answer-condition",
                    "note-inspection --inspector \"R. Field\" --conditions \"C1 by 2026-03-01: file them\""),
            Map.entry("sample-result", "take-sample S-1 --beds N1"),
            Map.entry("build-pile", ""),
            Map.entry("register-field", ""));

    private final Desk desk;

    ActWordsTest(@TempDir Path folder) {
        desk = new Desk(folder);
    }

    @BeforeAll
    void booksBeforeTheExamples() {
        desk.run("new bare --farm \"Ash Corner\"").done();
        desk.run("new prepared --farm \"Ash Corner\"").done();
        desk.typed("""
                        register-field North --gross 0.05ha --on 2025-01-05
                        lay-out N1..N8 --field North --length 20m --width 0.75m --on 2025-01-05
                        list-material "Feather meal 13-0-0" --on 2025-01-05
                        list-material "Bt wettable powder" --on 2025-01-05
                        list-material "Own potting mix" --on 2025-01-05
                        list-material "Peat moss" --on 2025-01-05
                        list-material "Peracetic acid 5%" --on 2025-01-05
                        build-pile P1 --on 2025-01-05
                        found-lot 2025/PA-1012 --crop carrot --quantity 96kg --on 2025-09-01
                        found-lot 2025/PA-1019 --crop carrot --quantity 118kg --on 2025-09-08
                        """, "did - --book prepared").done();
    }

    static Stream<ActKind> kinds() {
        return Acts.all().stream().filter(kind -> !BY_COMMAND.contains(kind.type()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("words")
    void takesTheExampleAsItStands(String word) {
        ActKind kind = Acts.byWord(word).orElseThrow();
        boolean early = Set.of("register-field", "lay-out", "build-pile").contains(word);
        desk.copy(early ? "bare" : "prepared", "book-" + word);
        String lines = Stream.of(BEFORE.getOrDefault(word, ""), kind.example().substring("did ".length()))
                .filter(line -> !line.isEmpty())
                .reduce("", (all, line) -> all + line + "\n");
        Said said = desk.typed(lines, "did - --book book-" + word).done();
        assertThat(said.out()).contains("  " + word);
        assertThat(desk.entries("book-" + word))
                .last()
                .extracting(entry -> (Object) entry.fact().getClass())
                .isEqualTo(kind.type());
    }

    static Stream<String> words() {
        return kinds().map(ActKind::word);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("words")
    void explainsItselfWithExampleAndCaution(String word) {
        ActKind kind = Acts.byWord(word).orElseThrow();
        String help = desk.run("did " + word + " --help").done().fits().out();
        String flowing = help.replaceAll("\\s+", " ");
        assertThat(flowing)
                .contains("Usage: bedledger did " + word, kind.help(), "Example: bedledger " + kind.example());
        kind.asks().stream()
                .filter(ask -> !ask.bare())
                .map(Ask::option)
                .forEach(option -> assertThat(help).contains("--" + option));
        if (kind.caution() != Caution.NONE) {
            assertThat(flowing).contains("Caution: " + kind.caution().words());
        }
    }

    @Test
    void everyKindHasItsWordItsHelpAndItsExampleOrACommandOfItsOwn() {
        List<Class<?>> records = Arrays.stream(Fact.class.getPermittedSubclasses())
                .flatMap(topic -> Arrays.stream(topic.getPermittedSubclasses()))
                .toList();
        assertThat(records).hasSizeGreaterThan(50).hasSameSizeAs(Acts.all());
        for (Class<?> type : records) {
            ActKind kind = Acts.of(type.asSubclass(Fact.class));
            assertThat(kind.help()).as("help of %s", type).isNotBlank().endsWith(".");
            if (BY_COMMAND.contains(type)) {
                assertThat(kind.word())
                        .as("word of %s, which has a command", type)
                        .isEmpty();
            } else {
                assertThat(kind.word()).as("word of %s", type).matches("[a-z]+(-[a-z]+)*");
                assertThat(SaidWords.of(kind.example()))
                        .as("example of %s", type)
                        .startsWith("did", kind.word());
            }
        }
    }

    @Test
    void noTwoKindsShareAWordOrAStoredName() {
        assertThat(Acts.words()).doesNotHaveDuplicates().doesNotContain("flip");
        assertThat(Acts.all().stream().map(ActKind::name))
                .doesNotHaveDuplicates()
                .allMatch(name -> name.matches("[a-z]+\\.[a-z]+(-[a-z]+)*"));
    }
}
