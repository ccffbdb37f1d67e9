package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Help never opens a store, fits a terminal of 80 columns, and is there for every command. */
class HelpTest {
    /** A screen of 24 lines, but for a soil sample and a seed receipt, which ask for more. */
    private static final int MANY_LINES = 36;

    @TempDir
    Path folder;

    private Desk desk;

    /** In this folder lies a book of which every file is damaged. */
    @BeforeEach
    void damagedBook() {
        desk = new Desk(folder)
                .lay("bedledger.book", "not a book\n")
                .lay("journal.jsonl", "{\"broken\n")
                .lay("checkpoints.txt", "nothing\n")
                .lay("store/book.mv.db", "no database");
    }

    static Stream<String> commands() {
        return Commands.ALL.stream().map(Command::name);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("commands")
    void helpsWithEveryCommandWithoutOpeningTheBook(String command) {
        Sealed before = Sealed.of(folder);
        for (String help : new String[] {" --help", " -h"}) {
            Said said = desk.run(command + help).done();
            assertThat(said.out()).contains("Usage: bedledger " + command);
            assertThat(said.err()).isEmpty();
            said.fits();
        }
        assertThat(Sealed.of(folder)).isEqualTo(before);
    }

    @Test
    void namesEveryCommandAndEveryExitCode() {
        for (String words : new String[] {"", "--help", "-h", "help"}) {
            Said said = desk.run(words).done();
            said.fits();
            commands().forEach(command -> assertThat(said.out()).contains("  " + command + " "));
            assertThat(said.out()).contains("65  ", "66  ", "74  ", "75  ");
        }
    }

    @Test
    void listsEveryActInEightyColumns() {
        Said said = desk.run("did --help").done();
        said.fits();
        bedledger.language.Acts.words().forEach(word -> assertThat(said.out()).contains("\n  " + word + " "));
        assertThat(desk.run("did").done().out()).isEqualTo(said.out());
        desk.run("did flip --help").done().fits();
    }

    static Stream<String> acts() {
        return bedledger.language.Acts.words().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("acts")
    void explainsAnActOnOneScreen(String act) {
        Said said = desk.run("did " + act + " --help").done();
        said.fits();
        assertThat(said.err()).isEmpty();
        assertThat(said.out()).startsWith("Usage: bedledger did " + act).contains("Example: ");
        assertThat(said.out().lines()).as(said.out()).hasSizeLessThanOrEqualTo(MANY_LINES);
    }

    @Test
    void tellsItsVersionWithoutOpeningTheBook() {
        assertThat(desk.run("--version").done().out()).matches("bedledger [0-9.]+\\R");
        assertThat(desk.run("beds --version").done().out()).matches("bedledger [0-9.]+\\R");
    }

    @Test
    void everyOtherCommandSaysWhatIsWrongWithTheBook() {
        for (String command : new String[] {"beds", "check", "verify", "did flail N1", "strike 2 --why x"}) {
            desk.run(command).refused(Exit.NO_INPUT, "cannot be used as a book", "from your backup");
        }
    }
}
