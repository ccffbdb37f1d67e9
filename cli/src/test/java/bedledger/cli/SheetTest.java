package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.Entry;
import bedledger.language.Harvesting;
import bedledger.language.Planting;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet as growers keep them goes into the book, whole or not at all, and never twice. */
class SheetTest {
    private static final String LEEKS = """
            date,did,beds,crop,quantity
            2025-04-10,sow,N1,leek,
            2025-09-01,harvest,N1,leek,12kg
            2025-09-01,harvest,N1,leek,12kg
            """;

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void book() {
        desk = Desk.withPracticeBook(folder);
    }

    private List<Harvesting.Harvested> harvests() {
        return facts(Harvesting.Harvested.class);
    }

    private <F> List<F> facts(Class<F> kind) {
        return desk.entries("farm").stream()
                .map(Entry::fact)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    @Test
    void writesTwoEqualPicksOfOneDayAsTwoLots() {
        desk.lay("s.csv", LEEKS);
        assertThat(desk.run("import s.csv --book farm").done().out()).contains("Wrote 3 acts, #7 to #9.");
        assertThat(harvests())
                .extracting(harvest -> harvest.lot().toString())
                .containsExactly("2025/LEE-0901", "2025/LEE-0901-2");
    }

    private static final String MANURED = """
            date,did,beds,crop,quantity,manure,lot,lots,as,invoice
            2025-04-01,spread,N1,,40kg,cow,,,,
            2025-04-02,till,N1,,,,,,,
            2025-04-10,sow,N1,carrot,,,,,,
            2025-06-01,harvest,N1,carrot,12kg,,CA-1,,,
            2025-06-02,sell,,,,,,CA-1=5kg,organic,7
            """;

    /** 2025-04-02 to 2025-06-01 are 60 days, and 120 are asked. */
    @Test
    void saysWhatTheRulesWouldSayAndWritesAllTheSame() {
        desk.lay("s.csv", MANURED);
        Said dry = desk.run("import s.csv --dry-run --book farm").done();
        assertThat(dry.out().replaceAll("\\s+", " "))
                .contains("Would write 5 acts", "What the rules would say of it", "Not met: Carrot")
                .contains("Lot 2025/CA-1 as organic: not met.");
        Said said = desk.run("import s.csv --book farm").done();
        assertThat(said.out().substring(said.out().indexOf("What the rules")))
                .isEqualTo(dry.out().substring(dry.out().indexOf("What the rules")));
        said.fits();
    }

    @Test
    void saysNoMoreThanAFewThingsOfALongSheet() {
        StringBuilder sheet = new StringBuilder("date,did,beds,crop,quantity,manure\n");
        for (int bed = 1; bed <= 4; bed++) {
            sheet.append("2025-04-01,spread,N" + bed + ",,40kg,cow\n2025-04-02,till,N" + bed + ",,,\n");
            sheet.append("2025-04-10,sow,N" + bed + ",carrot,,\n");
            for (int day = 10; day < 20; day++) {
                sheet.append("2025-06-" + day + ",harvest,N" + bed + ",carrot,1kg,\n");
            }
        }
        desk.lay("s.csv", sheet.toString());
        assertThat(desk.run("import s.csv --book farm").done().out()).containsPattern("and \\d+ more: bedledger check");
    }

    @Test
    void writesNothingTwiceWhereASheetIsReadTwice() {
        desk.lay("s.csv", LEEKS);
        desk.run("import s.csv --book farm").done();
        Sealed once = desk.sealed("farm");
        Said again = desk.run("import s.csv --book farm").done();
        assertThat(again.out()).contains("Nothing to write; 3 are in the book already.");
        assertThat(again.err()).contains("In the book already: rows 2, 3, 4.");
        assertThat(desk.sealed("farm")).isEqualTo(once);
    }

    @Test
    void writesNothingTwiceWhereSomebodyElseReadsTheSheetAgain() {
        desk.lay("s.csv", LEEKS);
        desk.run("import s.csv --book farm").done();
        Sealed once = desk.sealed("farm");
        desk.run("import s.csv --book farm --written-by crew-2").done();
        assertThat(desk.sealed("farm")).isEqualTo(once);
    }

    @Test
    void writesOnlyWhatWasAddedToASheetSince() {
        desk.lay("s.csv", LEEKS);
        desk.run("import s.csv --book farm").done();
        desk.lay("s.csv", LEEKS + "2025-09-01,harvest,N1,leek,12kg\n");
        assertThat(desk.run("import s.csv --book farm").done().out()).contains("Wrote 1 act, #10 to #10; 3 are");
        assertThat(harvests()).hasSize(3);
    }

    @Test
    void knowsAnActOfASheetAgainThatWasWrittenByCommandOrCorrectedSince() {
        desk.run("did sow N1 --crop leek --on 2025-04-10 --book farm").done();
        desk.lay("s.csv", LEEKS);
        assertThat(desk.run("import s.csv --book farm").done().out()).contains("Wrote 2 acts");
        desk.run("correct 8 --why \"weighed again\" --quantity 13kg --book farm")
                .done();
        assertThat(desk.run("import s.csv --book farm").done().out()).contains("Nothing to write; 3 are");
    }

    @Test
    void changesNothingInADryRun() {
        desk.lay("s.csv", LEEKS);
        Sealed before = desk.sealed("farm");
        assertThat(desk.run("import s.csv --dry-run --book farm").done().out())
                .contains("Would write 3 acts. Nothing was written.");
        assertThat(desk.sealed("farm")).isEqualTo(before);
    }

    @Test
    void readsAByteOrderMarkColumnsInAnyOrderShortRowsAndLineBreaksInQuotes() {
        String windows = """
                Note,DID,Beds,date,done_by
                "wet,
                slow going",flail,"N1,N2",2025-05-01,crew-1
                ,broadfork,N3,2025-05-02
                """;
        desk.lay("s.csv", "\uFEFF" + windows.replace("\n", "\r\n"));
        desk.run("import s.csv --book farm").done();
        Entry flailed = desk.entries("farm").get(6);
        assertThat(flailed.head().note()).isEqualTo("wet,\nslow going");
        assertThat(flailed.head().doneBy()).hasToString("crew-1");
        assertThat(desk.entries("farm").get(7).head().doneBy()).hasToString("owner");
    }

    @Test
    void readsSemicolonsAndDecimalCommasWhereTheyAreAnnounced() {
        desk.lay("s.csv", "date;did;beds;crop;quantity;note\n2025-05-01;sow;N1;carrot;2,5g;3,5 rows\n");
        desk.run("import s.csv --separator ; --decimal-comma --book farm").done();
        assertThat(facts(Planting.Sown.class).get(0).quantity()).hasToString("2.5 g");
        assertThat(desk.entries("farm").get(6).head().note()).isEqualTo("3,5 rows");
    }

    @Test
    void makesRowsThatShareAnActIdOneActOverSeveralLots() {
        desk.lay("s.csv", """
                date,act,did,beds,crop,quantity,lot,lots,as,invoice
                2025-09-30,inv 7,sell,,,,,L1=2kg,organic,7
                2025-04-10,,sow,N1,leek,,,,,
                2025-09-01,,harvest,N1,leek,12kg,L1,,,
                2025-09-02,,harvest,N1,leek,14kg,L2,,,
                2025-09-30,inv 7,sell,,,,,L2=3kg,organic,7
                """);
        assertThat(desk.run("import s.csv --book farm").done().out()).contains("Wrote 4 acts");
        assertThat(desk.entries("farm").get(6).fact())
                .hasToString("Sold[lots=[2025/L1=2 kg, 2025/L2=3 kg], as=ORGANIC, buyer=null, invoice=7, price=null]");
    }

    @Test
    void readsWhatIsNewOnADayInTheOrderOfTheWorkWhateverTheOrderOfTheRows() {
        desk.lay("s.csv", """
                date,place_in_day,did,beds,material,quantity
                2025-05-01,2,spread,N1,Feather meal,3kg
                2025-05-01,1,list-material,,Feather meal,
                """);
        desk.run("import s.csv --book farm").done();
        assertThat(desk.entries("farm")).hasSize(8);
    }

    @Test
    void leavesRefusedRowsInAFileThatCanBeMendedAndReadAgain() {
        desk.lay("s.csv", LEEKS + "2025-09-03,harvest,N9,leek,\"9,5kg\"\n2025-09-04,harvest,N1,leek,8kg\n");
        Said said = desk.run("import s.csv --rejects r.csv --leave-rejected --book farm")
                .done();
        assertThat(said.err()).contains("1 row refused, 4 acts good", "row 5 (line 5)", "r.csv; mend them there");
        assertThat(said.out()).contains("Wrote 4 acts");
        assertThat(desk.file("r.csv")).content().contains("reject_reason,line_no", "there is no such bed", ",5");
        Sealed after = desk.sealed("farm");
        assertThat(desk.run("import r.csv --book farm").exit()).isEqualTo(Exit.REFUSED);
        assertThat(desk.sealed("farm")).isEqualTo(after);
        desk.mend("r.csv", "N9", "N1");
        desk.mend("r.csv", "9,5kg", "9.5kg");
        assertThat(desk.run("import r.csv --book farm").done().out()).contains("Wrote 1 act");
        assertThat(harvests()).hasSize(4);
    }

    @Test
    void leavesEveryRowOfARefusedActInTheFile() {
        desk.lay("s.csv", "date,did,beds,act\n2025-05-01,flail,N1,a\n2025-05-01,flail,N9,a\n2025-05-02,flail,N2,b\n");
        desk.run("import s.csv --rejects r.csv --leave-rejected --book farm").done();
        assertThat(desk.file("r.csv"))
                .content()
                .contains("flail,N1,a", "flail,N9,a")
                .doesNotContain("N2");
        assertThat(desk.entries("farm")).hasSize(7);
    }

    @Test
    void writesNothingWhereOneRowIsRefused() {
        desk.lay("s.csv", LEEKS + "2025-09-03,harvest,N9,leek,9kg\n");
        Sealed before = desk.sealed("farm");
        desk.run("import s.csv --rejects r.csv --book farm")
                .refused(Exit.REFUSED, "Nothing was written", "3 acts good");
        assertThat(desk.sealed("farm")).isEqualTo(before);
        assertThat(desk.file("r.csv")).exists();
    }
}
