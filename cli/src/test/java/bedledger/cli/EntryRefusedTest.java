package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What cannot be is refused in words that help, with an exit code, and changes nothing. All cases share one book: none changes it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EntryRefusedTest {
    private final Desk desk;
    private final Sealed before;

    EntryRefusedTest(@TempDir Path folder) {
        desk = Desk.withPracticeBook(folder);
        desk.typed("""
                        sow N1 --crop leek --on 2025-04-10
                        harvest N1 --crop leek --quantity 20kg --lot LEE-0901 --on 2025-09-01
                        tarp N2 --material "silage film" --on 2025-09-02
                        receive-seed CA-1 --crop carrot --quantity 50g --on 2025-03-01
                        list-material "Feather meal 13-0-0" --on 2025-03-01
                        build-pile P1 --on 2025-03-01
                        harvest N1 --crop leek --quantity 21kg --lot LEE-0905 --on 2025-09-05
                        """, "did - --book farm").done();
        desk.run("correct 13 --why \"weighed again\" --quantity 22kg --book farm")
                .done();
        desk.run("new real --farm \"Real Farm\"").done();
        before = desk.sealed("farm");
    }

    @BeforeAll
    void theBookIsAsTheCasesTakeIt() {
        assertThat(desk.entries("farm")).hasSize(14);
    }

    /** A command, what it exits with, and what must stand in the words to the person. */
    record Case(String refuses, String command, int exit, List<String> words) {
        static Case of(String refuses, String command, String... words) {
            return new Case(refuses, command, Exit.REFUSED, List.of(words));
        }

        Case exits(int code) {
            return new Case(refuses, command, code, words);
        }

        @Override
        public String toString() {
            return "refuses " + refuses;
        }
    }

    static Stream<Case> cases() {
        return Stream.of(days(), places(), quantities(), whatCannotBe(), lots(), words(), corrections(), moments())
                .flatMap(cases -> cases);
    }

    private static Stream<Case> days() {
        return Stream.of(
                Case.of(
                        "a day to come",
                        "did flail N1 --on 2026-01-03",
                        "on '2026-01-03'",
                        "that day is to come; today is 2026-01-02",
                        "write it on the day, or check the year"),
                Case.of("a slip from a day to come", "did flail N1 --noted-on 2027-01-01", "noted-on '2027-01-01'"),
                Case.of(
                        "readings that reach into days to come",
                        "did read-pile P1 58 60 61 --from 2026-01-01",
                        "readings '3 days'",
                        "2026-01-03, which is to come"),
                Case.of("a day that is none", "did flail N1 --on 2025-02-30", "on '2025-02-30'", "it is not a day"),
                Case.of("a day too long ago", "did flail N1 --on 0202-07-01", "0202-07-01", "check the year"));
    }

    private static Stream<Case> places() {
        return Stream.of(
                Case.of("an unknown bed", "did flail N9", "beds 'N9'", "there is no such bed", "did you mean N1?"),
                Case.of(
                        "a bed before it was laid out",
                        "did flail N1 --on 2024-12-31",
                        "there is no such bed on 2024-12-31"),
                Case.of(
                        "an unknown field",
                        "did declare-land Nort --none-since 2015-01-01",
                        "field 'Nort'",
                        "there is no such field",
                        "did register-field"),
                Case.of(
                        "an unknown pile",
                        "did turn-pile P7",
                        "pile 'P7'",
                        "there is no such pile",
                        "did build-pile P7"),
                Case.of("a range that is none", "did flail N4..N1", "'N4..N1'", "this is no range of beds"));
    }

    private static Stream<Case> quantities() {
        String harvest = "did harvest N1 --crop leek --quantity ";
        return Stream.of(
                Case.of("a quantity without a unit", harvest + "12", "quantity '12'", "the unit is missing", "38.5kg"),
                Case.of("an unknown unit", harvest + "12kgs", "quantity '12kgs'", "there is no unit 'kgs'", "use kg"),
                Case.of("a decimal comma", harvest + "12,5kg", "quantity '12,5kg'", "comma", "write a decimal point"),
                Case.of("a quantity below zero", harvest + "-3kg", "quantity '-3", "cannot be below zero"),
                Case.of("an absurd quantity", harvest + "99999kg", "99999 kg", "more than any crop gives", "check"),
                Case.of("a quantity of another kind", harvest + "12m", "'12 m'", "not a weight, a volume or a count"),
                Case.of("a share above the whole", "did haul N1 --share 150%", "share '150 %'"),
                Case.of("an absurd number of passes", "did flail N1 --passes 300", "passes '300'", "1 to 20"),
                Case.of("absurd hours", "did flail N1 --minutes 9999", "minutes '9999'", "1 to 1440"),
                Case.of("a temperature no pile has", "did read-pile P1 580 --on 2025-03-02", "readings '580'"));
    }

    private static Stream<Case> whatCannotBe() {
        return Stream.of(
                Case.of(
                        "to lift a tarp that nobody laid",
                        "did untarp N1",
                        "bed 'N1'",
                        "no tarp lies on it",
                        "did found N1 --on DATE --tarp"),
                Case.of("a second tarp", "did tarp N2 --material jute", "a tarp lies on it already", "did untarp N2"),
                Case.of(
                        "a harvest of what is not there",
                        "did harvest N3 --crop kale --quantity 5kg",
                        "no kale stands in it",
                        "did found N3 --on DATE --crop \"kale\""),
                Case.of("to pull drip lines nobody laid", "did pull-drip N1", "no drip lines lie on it"),
                Case.of("to take off mulch nobody laid", "did unmulch N1", "no such mulch lies on it"),
                Case.of("to end a cover crop that is not there", "did end-cover N1 --how mown", "no cover crop stands"),
                Case.of("a bed laid out twice", "did lay-out N1 --field North --length 9m --width 1m", "already"));
    }

    private static Stream<Case> lots() {
        return Stream.of(
                Case.of(
                        "a lot's name twice in a harvest year",
                        "did harvest N1 --crop leek --quantity 5kg --lot LEE-0901 --on 2025-09-20",
                        "lot '2025/LEE-0901'",
                        "is there already, of 2025",
                        "give it another name"),
                Case.of(
                        "to sell a lot that was never harvested",
                        "did sell LEE-9999=3kg --as organic --on 2025-10-01",
                        "lot '2025/LEE-9999'",
                        "no such lot was harvested",
                        "did found-lot"),
                Case.of(
                        "to sell a lot before its harvest",
                        "did sell LEE-0901=3kg --as organic --on 2025-08-31",
                        "no such lot was harvested by that day"),
                Case.of(
                        "a sale that does not say how much",
                        "did sell LEE-0901 --as organic --on 2025-09-03",
                        "how much"));
    }

    private static Stream<Case> words() {
        return Stream.of(
                Case.of(
                        "an unknown crop",
                        "did sow N3 --crop carot",
                        "crop 'carot'",
                        "did you mean carrot",
                        "did add-crop"),
                Case.of(
                        "an unknown material",
                        "did spread N3 --material \"Fether meal 13-0-0\" --quantity 5kg",
                        "no material of that name is listed",
                        "did you mean Feather meal 13-0-0?"),
                Case.of(
                        "an own value of what no table has",
                        "did own-value brocoli --coefficient residue-dry-shar --value 0.1 --how oven",
                        "of 'brocoli'",
                        "did you mean broccoli",
                        "coefficient 'residue-dry-shar'",
                        "did you mean residue-dry-share?"),
                Case.of(
                        "an own value that cannot be",
                        "did own-value broccoli --coefficient residue-dry-share --value 14 --how oven",
                        "value '14'",
                        "kg dry per kg fresh"),
                Case.of("a choice that is none", "did end-cover N1 --how mowed", "how 'mowed'", "choose mown, tilled"),
                Case.of("an unknown act", "did flial N1", "There is no act 'flial'", "Did you mean 'did flail'?")
                        .exits(Exit.USAGE),
                Case.of(
                                "an unknown option",
                                "did flail N1 --pases 2",
                                "does not take '--pases'",
                                "Did you mean --passes?")
                        .exits(Exit.USAGE),
                Case.of("an unknown option of a flip", "did flip N1 --flial", "'--flial'", "Did you mean --flail?")
                        .exits(Exit.USAGE),
                Case.of(
                                "an unknown command",
                                "verfy",
                                "There is no command 'verfy'",
                                "Did you mean 'bedledger verify'?")
                        .exits(Exit.USAGE),
                Case.of("a word too many", "did finish N1 N2 --crop leek extra words", "beds 'extra'", "no such bed"),
                Case.of("a word with no place", "did turn-pile P1 twice", "there is no place for 'twice'")
                        .exits(Exit.USAGE),
                Case.of("an option without its value", "did flail N1 --passes", "--passes")
                        .exits(Exit.USAGE),
                Case.of(
                        "an act that lacks what it needs",
                        "did harvest N1",
                        "crop: it is missing",
                        "quantity: it is missing"),
                Case.of("a person that is none", "did flail N1 --written-by \"a b\"", "written-by 'a b'"));
    }

    private static Stream<Case> corrections() {
        return Stream.of(
                Case.of(
                        "to correct without a reason",
                        "correct 12 --quantity 3kg",
                        "why: the reason is missing",
                        "--why"),
                Case.of("to strike without a reason", "strike 12", "why: the reason is missing"),
                Case.of(
                        "to correct a replaced entry",
                        "correct 13 --why twice --quantity 23kg",
                        "entry '#13'",
                        "#14 took its place",
                        "correct or strike #14"),
                Case.of("to strike a replaced entry", "strike 13 --why twice", "entry '#13'", "#14 took its place"),
                Case.of(
                        "to correct with another kind",
                        "correct 7 flail N1 --why \"was no sowing\"",
                        "entry #7 is of another kind: sow",
                        "bedledger strike 7",
                        "bedledger did flail"),
                Case.of("to correct the opening", "correct 1 --why x", "stands for ever", "bedledger new"),
                Case.of("to strike the opening", "strike 1 --why x", "stands for ever"),
                Case.of("to correct what is not there", "correct 99 --why x", "no entry #99", "the last is #14"),
                Case.of("to strike what is not there", "strike 99 --why x", "'#99'", "the last is #14"),
                Case.of("a number that is none", "correct LEE-0901 --why x", "'LEE-0901' is no entry number")
                        .exits(Exit.USAGE),
                Case.of(
                        "a correction after which nothing was there to harvest",
                        "correct 8 --why \"other bed\" --beds N3",
                        "no leek stands in it"));
    }

    private static Stream<Case> moments() {
        return Stream.of(
                Case.of(
                        "a moment that is none",
                        "did flail N1 --written sometime",
                        "written 'sometime'",
                        "2025-07-14T20:30"),
                Case.of(
                        "a moment before the last entry",
                        "did flail N1 --on 2025-01-01 --written 2025-01-02",
                        "the last entry was written at 2026-01-02",
                        "give a later moment"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void refuses(Case bad) {
        desk.run(bad.command() + (bad.command().contains("verfy") ? "" : " --book farm"))
                .refused(bad.exit(), bad.words().toArray(String[]::new));
        assertThat(desk.sealed("farm")).isEqualTo(before);
    }

    @Test
    void refusesATimeOfWritingInABookThatIsNoPracticeBook() {
        Sealed real = desk.sealed("real");
        desk.run("did register-field North --gross 0.05ha --written 2025-01-01 --book real")
                .refused(
                        Exit.REFUSED,
                        "written '2025-01-01'",
                        "this is no practice book: the time of writing is the clock's",
                        "the day of the work is given with --on");
        desk.typed("register-field North --gross 0.05ha --written 2025-01-01\n", "did - --book real")
                .refused(Exit.REFUSED, "written '2025-01-01'", "this is no practice book");
        assertThat(desk.sealed("real")).isEqualTo(real);
    }

    @Test
    void refusesWhereTheClockIsBehindTheLastEntry() {
        var now = desk.clock.instant();
        desk.clock.set(now.minusSeconds(3600));
        try {
            desk.run("did flail N1 --on 2025-10-01 --book farm")
                    .refused(
                            Exit.REFUSED,
                            "time of writing '2026-01-02T14:00:00Z'",
                            "writing never goes back in time",
                            "set this computer's clock right");
            assertThat(desk.sealed("farm")).isEqualTo(before);
        } finally {
            desk.clock.set(now);
        }
    }

    @Test
    void tellsEveryProblemOfOneEntryAtOnce() {
        Said said = desk.run(
                "did sow N1 N9 --crop carot --quantity 5 --rows 99 --on 2031-01-01 --minutes 5000 --book farm");
        said.refused(
                Exit.REFUSED,
                "on '2031-01-01'",
                "minutes '5000'",
                "beds 'N9'",
                "crop 'carot'",
                "quantity '5'",
                "rows '99'");
        assertThat(said.err().lines().filter(line -> line.matches("  \\S.*"))).hasSize(6);
    }

    @Test
    void tellsWhatIsWrongWithTheBedBesideWhatIsWrongWithTheWords() {
        desk.run("did untarp N1 --minutes 5000 --book farm")
                .refused(Exit.REFUSED, "minutes '5000'", "bed 'N1': no tarp lies on it");
    }

    @Test
    void refusesAnActOverSeveralBedsWholeWhereOneBedCannotBe() {
        desk.run("did untarp N2 N3 --book farm").refused(Exit.REFUSED, "bed 'N3': no tarp lies on it");
        assertThat(desk.sealed("farm")).isEqualTo(before);
    }

    @Test
    void refusesAFlipWholeWhereOneOfItsActsCannotBe() {
        desk.run("did flip N2 --flail --tarp \"silage film\" --book farm")
                .refused(Exit.REFUSED, "a tarp lies on it already");
        assertThat(desk.sealed("farm")).isEqualTo(before);
    }

    @Test
    void tellsNoSecondProblemWhereOnlyTheCropOfAHarvestIsUnknown() {
        Said said = desk.run("did harvest N1 --crop leeck --quantity 5kg --book farm");
        said.refused(Exit.REFUSED, "did you mean leek?");
        assertThat(said.err()).doesNotContain("lot");
    }
}
