package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sheets that cannot be read, or not be written: refused in words that help, and nothing is changed. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SheetRefusedTest {
    private final Desk desk;
    private final Sealed before;

    SheetRefusedTest(@TempDir Path folder) {
        desk = Desk.withPracticeBook(folder);
        before = desk.sealed("farm");
    }

    /** A sheet, options of the import, and what must stand in the words to the person. */
    record Case(String refuses, String sheet, String options, List<String> words) {
        static Case of(String refuses, String sheet, String... words) {
            return new Case(refuses, sheet, "", List.of(words));
        }

        Case with(String importOptions) {
            return new Case(refuses, sheet, importOptions, words);
        }

        @Override
        public String toString() {
            return "refuses " + refuses;
        }
    }

    static Stream<Case> cases() {
        return Stream.of(files(), headers(), cells(), acts()).flatMap(cases -> cases);
    }

    private static Stream<Case> files() {
        return Stream.of(
                Case.of("an empty file", "", "it holds no rows", "The first row names the columns"),
                Case.of("a header alone", "date,did,beds\r\n", "it holds no rows"),
                Case.of(
                        "a quote that is not closed",
                        "date,did,beds,note\n2025-05-01,flail,N1,x\n2025-05-02,flail,N1,\"wet\n2025-05-03,flail,N2,y\n",
                        "a quote that opens in the row of line 3 is not closed"),
                Case.of(
                        "a quote mark inside a quoted cell",
                        "date,did,beds,note\n2025-05-01,flail,N1,\"a 5\" hose\"\n",
                        "not well-formed CSV",
                        "write it twice"),
                Case.of(
                        "semicolons where commas are expected",
                        "date;did;beds\n2025-05-01;flail;N1\n",
                        "there is no column 'date;did;beds'",
                        "add --separator ';'"));
    }

    private static Stream<Case> headers() {
        return Stream.of(
                Case.of(
                        "an unknown column",
                        "date,did,beds,bed no\n2025-05-01,flail,N1,4\n",
                        "there is no column 'bed no'",
                        "Mend the first row"),
                Case.of(
                        "a mistyped column, with the nearest",
                        "date,did,beds,quantty\n2025-05-01,flail,N1,\n",
                        "did you mean 'quantity'?"),
                Case.of(
                        "a column that stands twice",
                        "date,did,beds,noted_on,Noted on\n2025-05-01,flail,N1,,\n",
                        "the column 'Noted on' stands twice"),
                Case.of("a sheet without days", "did,beds\nflail,N1\n", "the columns 'date' and 'did' are needed"),
                Case.of(
                        "all the faults of a header at once",
                        "did,beds,beds,quantty\nflail,N1,N2,\n",
                        "the column 'beds' stands twice",
                        "'quantty'",
                        "'date' and 'did'"));
    }

    private static Stream<Case> cells() {
        return Stream.of(
                Case.of(
                        "a row with more cells than the header",
                        "date,did,beds\n2025-05-01,flail,N1,N2\n",
                        "row 2 (line 2)",
                        "more cells than the header",
                        "put a cell with commas in quotes"),
                Case.of("a row without a day", "date,did,beds\n,flail,N1\n", "row 2", "date: it is missing"),
                Case.of("a row without an act", "date,did,beds\n2025-05-01,,N1\n", "row 2", "did: it is missing"),
                Case.of(
                        "a day that could mean two",
                        "date,did,beds\n07/04/25,flail,N1\n",
                        "date '07/04/25'",
                        "a sheet's days are never guessed",
                        "2025-07-14"),
                Case.of("a day as said in the evening", "date,did,beds\nyesterday,flail,N1\n", "date 'yesterday'"),
                Case.of(
                        "a decimal comma that was not announced",
                        "date,did,beds,crop,quantity\n2025-05-01,sow,N1,leek,\"2,5g\"\n",
                        "quantity '2,5g'",
                        "decimal point"),
                Case.of(
                        "an unknown act",
                        "date,did,beds\n2025-05-01,flial,N1\n",
                        "did 'flial'",
                        "did you mean 'flail'?"),
                Case.of(
                        "a cell the act does not ask for",
                        "date,did,beds,quantity\n2025-05-01,flail,N1,3kg\n",
                        "quantity '3kg'",
                        "'flail' does not ask for it"),
                Case.of(
                        "what is missing, in the words of a sheet",
                        "date,did,beds,crop\n2025-05-01,harvest,N1,leek\n",
                        "quantity: it is missing",
                        "fill the column 'quantity'"),
                Case.of(
                        "every fault of every row at once, by the number a spreadsheet shows",
                        "date,did,beds,note\n2025-05-01,flail,N9,\"two\nlines\"\n\n2025-05-02,flail,N8,\n",
                        "row 2 (line 2)",
                        "'N9'",
                        "row 4 (line 5)",
                        "'N8'",
                        "2 rows refused"));
    }

    private static Stream<Case> acts() {
        return Stream.of(
                Case.of(
                        "an act of which one row has too many cells",
                        "date,did,beds,act\n2025-05-01,flail,N1,a\n2025-05-01,flail,N2,a,x\n",
                        "row 2",
                        "another row of this act is refused",
                        "row 3"),
                Case.of(
                        "rows of one act that say different things were done",
                        "date,did,beds,act\n2025-05-01,flail,N1,a\n2025-05-01,harrow,N2,a\n",
                        "did 'harrow'",
                        "the first row of this act says 'flail'"),
                Case.of(
                        "rows of one act that differ where one value is taken",
                        "date,did,beds,act,passes\n2025-05-01,flail,N1,a,1\n2025-05-01,flail,N2,a,2\n",
                        "passes '1 2'",
                        "one value is taken here"),
                Case.of(
                        "a sheet that does not fit in the order of the work",
                        "date,did,beds\n2025-05-02,tarp,N1\n2025-05-03,tarp,N1\n",
                        "row 3",
                        "a tarp lies on it already, since 2025-05-02"),
                Case.of("two lots of one name", """
                        date,did,beds,crop,quantity,lot
                        2025-05-01,sow,N1,leek,,
                        2025-09-01,harvest,N1,leek,5kg,L1
                        2025-09-02,harvest,N1,leek,5kg,L1
                        """, "row 4", "lot '2025/L1'", "is there already, of 2025"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void refuses(Case bad) {
        desk.lay("sheet.csv", bad.sheet());
        desk.run("import sheet.csv --book farm " + bad.options())
                .refused(Exit.REFUSED, bad.words().toArray(String[]::new));
        assertThat(desk.sealed("farm")).isEqualTo(before);
    }

    @Test
    void namesTheLineOfASheetThatIsNotInUtf8() {
        desk.lay(
                "sheet.csv",
                "date,did,beds,note\n2025-05-01,flail,N1,dry\n2025-05-02,flail,N1,caf\u00e9\n"
                        .getBytes(StandardCharsets.ISO_8859_1));
        desk.run("import sheet.csv --book farm")
                .refused(Exit.REFUSED, "not written in UTF-8 (line 3)", "Save it from the spreadsheet as 'CSV UTF-8'");
        assertThat(desk.sealed("farm")).isEqualTo(before);
    }

    @Test
    void tellsWhatIsWrongWithTheCommand() {
        desk.run("import nowhere.csv --book farm").refused(Exit.NO_INPUT, "There is no file 'nowhere.csv'");
        desk.run("import a.csv b.csv --book farm").refused(Exit.USAGE, "Give one sheet");
        desk.run("import a.csv --reject x --book farm").refused(Exit.USAGE, "'--reject'", "Did you mean --rejects?");
        desk.run("import a.csv --leave-rejected --book farm").refused(Exit.USAGE, "needs --rejects FILE");
        desk.run("import a.csv --rejects a.csv --book farm").refused(Exit.USAGE, "write over the sheet itself");
        desk.run("import a.csv --separator ;; --book farm").refused(Exit.USAGE, "--separator takes one character");
    }

    @Test
    void doesNotWriteRejectedRowsOverAFileThatHoldsSomethingElse() {
        desk.lay("sheet.csv", "date,did,beds\n2025-05-01,flail,N9\n");
        desk.lay("taken.txt", "my diary\n");
        Said said = desk.run("import sheet.csv --rejects taken.txt --book farm");
        said.refused(Exit.CANNOT_CREATE, "is there already and holds no rejected rows");
        assertThat(desk.file("taken.txt")).hasContent("my diary");
        assertThat(desk.sealed("farm")).isEqualTo(before);
    }
}
