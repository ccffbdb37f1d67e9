package bedledger.projections.due;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.projections.due.DueItem.Kind;
import bedledger.projections.findings.KnownCrops;
import bedledger.projections.findings.MayI;
import bedledger.projections.findings.PaperRecord;
import bedledger.projections.findings.RuleBook;
import bedledger.projections.findings.Settings;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DueTest {
    private static final String[] MANURED = {
        "2026-04-08 spread N1 N2 --manure horse --per-bed 60kg", "2026-04-10 incorporate N1 N2"
    };

    private static MayI may(RuleBook rules, String day, String... lines) {
        return new MayI(
                PaperRecord.of(lines).farm(), rules, Settings.defaults(), new KnownCrops(), LocalDate.parse(day));
    }

    private static List<DueItem> due(String day, int days, String... lines) {
        return Due.of(Asked.of(may(RuleBook.us(), day, lines), days)).all().stream()
                .filter(item -> !item.subject().startsWith("the year"))
                .toList();
    }

    private static String[] with(String[] some, String... more) {
        return java.util.stream.Stream.of(some, more)
                .flatMap(java.util.Arrays::stream)
                .toArray(String[]::new);
    }

    @Test
    void aBookWithNothingInItOwesNothing() {
        assertThat(due("2026-06-01", 28)).isEmpty();
    }

    /** 7 CFR 205.203(c)(1)(ii), (iii): 2026-04-10 + 120 and + 90 days, told however far ahead is looked. */
    @ParameterizedTest(name = "{0} from {1}")
    @CsvSource({"carrot, 2026-08-08", "pole bean, 2026-07-09"})
    void tellsFromWhenOnAStandingCropMayBeCut(String crop, LocalDate from) {
        List<DueItem> due = due(
                "2026-05-02",
                0,
                with(
                        MANURED,
                        "2026-05-01 sow N1 --crop \"" + crop + "\"",
                        "2026-05-01 sow N2 --crop \"" + crop + "\""));

        assertThat(due).singleElement().satisfies(item -> {
            assertThat(item.kind()).isEqualTo(Kind.NOT_YET);
            assertThat(item.day()).isEqualTo(from);
            assertThat(item.says()).isEqualTo(crop + " in N1, N2 cannot be cut as organic before " + from);
            assertThat(item.why()).contains("#3 #4", "205.203");
            assertThat(item.entries()).containsExactly(3L, 4L);
        });
    }

    @Test
    void anEmptyBedTellsBothIntervalsOfWhateverIsPlantedNext() {
        assertThat(due("2026-05-02", 0, MANURED)).singleElement().satisfies(item -> {
            assertThat(item.says())
                    .isEqualTo("what is planted in N1, N2 now cannot be cut as organic before 2026-08-08");
            assertThat(item.why()).contains("from 2026-07-09");
        });
    }

    @Test
    void manureOnTopNamesTheActThatIsMissing() {
        assertThat(due("2026-05-02", 0, MANURED[0])).singleElement().satisfies(item -> {
            assertThat(item.day()).isNull();
            assertThat(item.command()).isEqualTo("did incorporate N1 N2 --on DATE");
        });
    }

    @Test
    void theDayAWaitEndsIsSaidOnce() {
        String[] beans =
                with(MANURED, "2026-05-01 sow N1 --crop \"pole bean\"", "2026-05-01 sow N2 --crop \"pole bean\"");
        assertThat(due("2026-07-08", 28, beans)).extracting(DueItem::kind).containsExactly(Kind.NOT_YET);
        assertThat(due("2026-07-09", 28, beans)).extracting(DueItem::kind).containsExactly(Kind.FREE, Kind.FREE);
        assertThat(due("2026-07-10", 28, beans)).isEmpty();
    }

    @Test
    void aSprayKeepsPeopleOutToTheHourAndPicksOutToTheDay() {
        String[] sprayed = {
            "2026-05-01 transplant N1 --crop kale --origin own",
            "2026-06-01 spray N1 --product \"Kaolin clay\" --pre-harvest-days 3 --re-entry 4h --at 08:00"
        };
        assertThat(due("2026-06-01", 28, sprayed))
                .extracting(DueItem::says)
                .containsExactly(
                        "nobody goes into N1 before 2026-06-01 12:00", "kale in N1 cannot be cut before 2026-06-04");
        MayI may = may(RuleBook.us(), "2026-06-01", sprayed);
        Asked afternoon = new Asked(may, may.day().atTime(LocalTime.of(12, 0)), may.day(), Asked.TarpWeeks.USUAL);
        assertThat(Due.of(afternoon).all()).extracting(DueItem::says).noneMatch(says -> says.startsWith("nobody"));
    }

    @Test
    void aLabelThatIsNotRecordedIsNoLeave() {
        assertThat(due(
                        "2026-06-02",
                        28,
                        "2026-05-01 transplant N1 --crop kale --origin own",
                        "2026-06-01 spray N1 --product \"Kaolin clay\""))
                .singleElement()
                .satisfies(item -> {
                    assertThat(item.kind()).isEqualTo(Kind.LOOK);
                    assertThat(item.command())
                            .isEqualTo("correct 4 --pre-harvest-days NUMBER --why \"from the label\"");
                });
    }

    /** 7 CFR 205.206(c)(6). */
    @Test
    void plasticMulchComesOffWhenItsCropHasEnded() {
        String[] mulched = {
            "2026-05-01 mulch N1 --kind polyethylene",
            "2026-05-02 transplant N1 --crop tomato --origin own",
            "2026-09-20 finish N1 --crop tomato"
        };
        assertThat(due("2026-09-19", 28, mulched)).isEmpty();
        assertThat(due("2026-09-25", 28, mulched)).singleElement().satisfies(item -> {
            assertThat(item.overdue(LocalDate.parse("2026-09-25"))).isTrue();
            assertThat(item.entries()).containsExactly(3L, 5L);
            assertThat(item.command()).isEqualTo("did unmulch N1 --on DATE");
            assertThat(item.basis()).contains("205.206(c)(6)");
        });
        assertThat(due("2026-09-25", 28, with(mulched, "2026-09-24 unmulch N1")))
                .isEmpty();
        assertThat(due("2026-09-25", 28, "2026-05-01 mulch N1 --kind straw", mulched[1], mulched[2]))
                .isEmpty();
    }

    /** Judgement: a look every other week, by the setting. */
    @ParameterizedTest(name = "on {0}: {1}")
    @CsvSource({"2026-06-14, 0", "2026-06-15, 1", "2026-06-16, 0", "2026-06-29, 0", "2026-06-30, 1"})
    void aTarpIsToBeLookedUnderAgainAfterTheWeeksSet(String day, int due) {
        assertThat(due(day, 0, "2026-06-01 tarp N1", "2026-06-16 check-tarp N1 --leaves soft"))
                .hasSize(due);
    }

    @Test
    void aTarpThatLiesLongIsNamedSo() {
        assertThat(due("2026-08-01", 0, "2026-06-01 tarp N1"))
                .singleElement()
                .satisfies(item -> assertThat(item.says())
                        .contains(
                                "for 8 weeks (since 2026-06-01, #3)",
                                "no look under it is recorded",
                                "longer than the 8 weeks"));
    }

    @Test
    void aPileIsReadAndTurnedUntilItsProcessIsShown() {
        String[] windrow = {
            "2026-03-05 build-pile P1 --method windrow --animal-material yes --carbon-to-nitrogen 30",
            "2026-03-07 read-pile P1 58C 60C 61C",
            "2026-03-08 turn-pile P1"
        };
        assertThat(due("2026-03-09", 1, windrow)).singleElement().satisfies(item -> {
            assertThat(item.day()).isEqualTo("2026-03-10");
            assertThat(item.says()).contains("last read for 2026-03-09", "turned 1 time, last on 2026-03-08");
            assertThat(item.why()).contains("3 of 15 days", "1 turn while in the band, 5 asked");
        });
        assertThat(due("2026-03-09", 28, with(windrow, "2026-03-09 finish-pile P1")))
                .isEmpty();
        assertThat(due("2026-03-25", 28, windrow)).isEmpty();
    }

    @Test
    void aConditionIsDueOnItsDayUntilItIsAnswered() {
        String held =
                "2026-05-02 note-inspection --inspector Inspector --conditions \"C1 by 2026-06-01: label the bins\"";
        assertThat(due("2026-05-03", 28, held)).isEmpty();
        assertThat(due("2026-05-03", 30, held)).extracting(DueItem::day).containsExactly(LocalDate.parse("2026-06-01"));
        assertThat(due("2026-06-02", 0, held)).singleElement().satisfies(item -> {
            assertThat(item.overdue(LocalDate.parse("2026-06-02"))).isTrue();
            assertThat(item.command()).startsWith("did answer-condition C1 --inspection 3 ");
        });
        assertThat(due("2026-06-02", 0, held, "2026-05-20 answer-condition C1 --inspection 3 --how labelled"))
                .isEmpty();
    }

    @Test
    void aYearWithWorkIsSignedOff() {
        String work = "2025-05-01 weed N1";
        Due open = Due.of(Asked.of(may(RuleBook.us(), "2026-01-02", work), 28));
        assertThat(open.all()).extracting(DueItem::subject).contains("the year 2025");
        Due signed = Due.of(Asked.of(
                may(RuleBook.us(), "2026-01-02", work, "2026-01-01 sign-off --from 2025-01-01 --to 2025-12-31"), 28));
        assertThat(signed.all()).extracting(DueItem::subject).doesNotContain("the year 2025");
    }

    /** What is written of later days is not looked at. */
    @Test
    void laterWorkDoesNotCount() {
        String[] later = with(MANURED, "2026-07-01 sow N1 --crop carrot");
        assertThat(due("2026-04-07", 28, later)).isEmpty();
        assertThat(due("2026-05-02", 28, later)).extracting(DueItem::subject).containsExactly("N1, N2");
    }

    /** Regulation (EU) 2018/848, Annex II, Part I, 1.7: land in conversion. */
    @Test
    void theEuropeanBookTellsOfLandInConversion() {
        Due due = Due.of(Asked.of(
                may(
                        RuleBook.eu(),
                        "2026-05-02",
                        "2026-02-20 declare-land North --last-applied 2025-06-01 --evidence letter"),
                0));
        assertThat(due.all()).anySatisfy(item -> {
            assertThat(item.places()).hasSize(4);
            assertThat(item.why()).contains("in conversion");
        });
    }
}
