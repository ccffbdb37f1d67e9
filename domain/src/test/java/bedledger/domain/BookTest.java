package bedledger.domain;

import static bedledger.domain.Shelf.NOON;
import static bedledger.domain.Shelf.OWNER;
import static bedledger.domain.Shelf.draft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.FieldId;
import bedledger.language.Problem;
import bedledger.language.Refused;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drafts are judged as a whole in the order of the work, and written all or none. */
class BookTest {
    @TempDir
    Path folder;

    private Shelf shelf;

    @BeforeEach
    void shelf() {
        shelf = new Shelf(folder.resolve("book"));
    }

    private static List<Problem> refused(ThrowingCallable work) {
        Refused refused = (Refused) org.assertj.core.api.Assertions.catchThrowable(work);
        assertThat(refused).isInstanceOf(Refused.class);
        return refused.problems();
    }

    @Test
    void numbersEntriesInTheOrderWrittenAndGivesEachTheNextPlaceInItsDay() {
        try (Book book = shelf.withBeds()) {
            book.write(List.of(draft("2025-04-10", "flail", "beds=N1")), OWNER, null);
            book.write(List.of(draft("2025-04-09", "broadfork", "beds=N1")), OWNER, null);
            book.write(
                    List.of(
                            draft("2025-04-10", "harrow", "beds=N1"),
                            draft("2025-04-10", "shape", "beds=N1"),
                            draft("2025-04-09", "weed", "beds=N1")),
                    OWNER,
                    null);
        }
        assertThat(shelf.entries()).extracting(Entry::number).containsExactly(1L, 2L, 3L, 4L, 5L, 6L, 7L, 8L);
        assertThat(shelf.entries())
                .extracting(entry -> entry.head().placeInDay())
                .containsExactly(1, 1, 2, 1, 1, 2, 3, 2);
        assertThat(shelf.entries()).extracting(Entry::act).isSorted().doesNotHaveDuplicates();
    }

    @Test
    void takesNoDraftOfSeveralWhereOneCannotBe() {
        try (Book book = shelf.withBeds()) {
            List<Draft> drafts =
                    List.of(draft("2025-04-10", "flail", "beds=N1"), draft("2025-04-11", "untarp", "beds=N2"));
            assertThat(book.judge(drafts, OWNER, null)).containsOnlyKeys(1);
            assertThat(refused(() -> book.write(drafts, OWNER, null)))
                    .singleElement()
                    .satisfies(problem -> assertThat(problem.toString()).contains("bed 'N2': no tarp lies on it"));
            assertThat(book.size()).isEqualTo(3);
        }
        assertThat(shelf.entries()).hasSize(3);
    }

    @Test
    void judgesDraftsInTheOrderOfTheWorkHoweverTheyAreHandedIn() {
        try (Book book = shelf.withBeds()) {
            book.write(
                    List.of(
                            draft("2025-04-12", "untarp", "beds=N1"),
                            draft("2025-04-10", "tarp", "beds=N1", "material=jute")),
                    OWNER,
                    null);
            assertThat(book.farm(List.of(new FieldId("North"), new BedId("N1"))).misfits())
                    .isEmpty();
        }
    }

    @Test
    void namesEveryBedThatIsWrongAndEveryDraft() {
        try (Book book = shelf.withBeds()) {
            List<Problem> problems = refused(() -> book.write(
                    List.of(draft("2025-04-10", "untarp", "beds=N1 N2"), draft("2026-04-10", "pull-drip", "beds=N3")),
                    OWNER,
                    null));
            assertThat(problems).extracting(Problem::entered).containsExactly("N1", "N2", "2026-04-10", "N3");
        }
    }

    @Test
    void saysWhichCropAnActEnds() {
        try (Book book = shelf.withBeds()) {
            book.write(List.of(draft("2025-04-10", "sow", "beds=N1", "crop=kale")), OWNER, null);
            assertThat(book.write(List.of(draft("2025-09-10", "flail", "beds=N1")), OWNER, null)
                            .says())
                    .containsExactly("N1: kale ends with this.");
        }
    }

    @Test
    void saysThatTheBookSaysTheSameOfThatDayAndWritesItAllTheSame() {
        Draft hoed = draft("2025-06-01", "weed", "beds=N1", "tool=hoe");
        Draft picked = draft("2025-06-01", "harvest", "beds=N2", "crop=kale", "quantity=5kg", "lot=2025/KA-1");
        Draft pickedAgain = draft("2025-06-01", "harvest", "beds=N2", "crop=kale", "quantity=5kg", "lot=2025/KA-2");
        Draft pickedMore = draft("2025-06-01", "harvest", "beds=N2", "crop=kale", "quantity=6kg", "lot=2025/KA-3");
        Draft nextDay = draft("2025-06-02", "weed", "beds=N1", "tool=hoe");
        try (Book book = shelf.withBeds()) {
            book.write(List.of(draft("2025-04-10", "sow", "beds=N2", "crop=kale")), OWNER, null);
            assertThat(book.write(List.of(hoed, picked), OWNER, null).says()).isEmpty();
            assertThat(book.write(List.of(hoed, pickedAgain), OWNER, null).says())
                    .containsExactly(
                            "#5 says the same of that day. If it was done once: bedledger strike 7 --why \"written twice\"",
                            "#6 says the same of that day. If it was done once: bedledger strike 8 --why \"written twice\"");
            assertThat(book.write(List.of(pickedMore, nextDay), OWNER, null).says())
                    .isEmpty();
            book.strike(6, "written twice", OWNER, null);
            assertThat(book.write(List.of(picked), OWNER, null).says())
                    .as("#6 is struck, #8 is not")
                    .containsExactly(
                            "#8 says the same of that day. If it was done once: bedledger strike 12 --why \"written twice\"");
        }
    }

    @Test
    void admitsALateEntryAndSaysWhatNoLongerFits() {
        try (Book book = shelf.withBeds()) {
            book.write(List.of(draft("2025-04-10", "sow", "beds=N1", "crop=kale")), OWNER, null);
            book.write(
                    List.of(draft("2025-07-10", "harvest", "beds=N1", "crop=kale", "quantity=5kg", "lot=2025/KA-1")),
                    OWNER,
                    null);
            Written late = book.write(List.of(draft("2025-06-01", "till", "beds=N1")), OWNER, null);
            assertThat(late.says())
                    .contains("N1: kale ends with this.")
                    .anySatisfy(
                            says -> assertThat(says).startsWith("Entry #5 no longer fits: N1: no kale stands in it"));
            assertThat(book.farm(List.of(new FieldId("North"), new BedId("N1"))).misfits())
                    .containsOnlyKeys(5L);
        }
    }

    @Test
    void checksAPartOfASplitBedAgainstTheHistoryOfTheWhole() {
        try (Book book = shelf.withBeds()) {
            book.write(List.of(draft("2025-04-10", "tarp", "beds=N1", "material=jute")), OWNER, null);
            book.write(
                    List.of(draft("2025-04-11", "split-bed", "bed=N1", "into=N1a N1b", "lengths=12m 8m")), OWNER, null);
            book.write(List.of(draft("2025-04-12", "untarp", "beds=N1a")), OWNER, null);
            assertThat(refused(() -> book.write(List.of(draft("2025-04-13", "untarp", "beds=N1a")), OWNER, null)))
                    .hasSize(1);
            assertThat(refused(() -> book.write(List.of(draft("2025-04-13", "flail", "beds=N1")), OWNER, null)))
                    .singleElement()
                    .satisfies(problem -> assertThat(problem.why()).contains("no longer worked since 2025-04-11"));
        }
    }

    @Test
    void saysThatALateEntryOfAWholeBedUpsetsWhatWasDoneToItsPart() {
        try (Book book = shelf.withBeds()) {
            book.write(List.of(draft("2025-04-10", "tarp", "beds=N1", "material=jute")), OWNER, null);
            book.write(
                    List.of(draft("2025-05-01", "split-bed", "bed=N1", "into=N1a N1b", "lengths=12m 8m")), OWNER, null);
            book.write(List.of(draft("2025-05-12", "untarp", "beds=N1a")), OWNER, null);
            assertThat(book.write(List.of(draft("2025-04-20", "untarp", "beds=N1")), OWNER, null)
                            .says())
                    .singleElement()
                    .asString()
                    .startsWith("Entry #6 no longer fits: N1a: no tarp lies on it");
        }
    }

    @Test
    void refusesADayToComeAndOneBeforeAnyFarmKeptABook() {
        try (Book book = shelf.withBeds()) {
            // Noon in New York on the 2nd: the 3rd is to come there, though it is the 2nd or 3rd elsewhere.
            assertThat(refused(() -> book.write(List.of(draft("2026-01-03", "flail", "beds=N1")), OWNER, null)))
                    .extracting(Problem::what)
                    .containsExactly("date");
            assertThat(book.judge(List.of(draft("2026-01-02", "flail", "beds=N1")), OWNER, null))
                    .isEmpty();
            assertThat(refused(() -> book.write(List.of(draft("1899-12-31", "weather", "seen=frost")), OWNER, null)))
                    .hasSize(1);
        }
    }

    @Test
    void takesItsDaysFromTheTimeZoneOfTheBook() {
        shelf.withBeds().close();
        // Half past three in the morning of the 4th in London, still the 3rd in New York.
        try (Book book = shelf.open(java.time.Instant.parse("2026-01-04T03:30:00Z"))) {
            assertThat(book.judge(List.of(draft("2026-01-03", "flail", "beds=N1")), OWNER, null))
                    .isEmpty();
            assertThat(book.judge(List.of(draft("2026-01-04", "flail", "beds=N1")), OWNER, null))
                    .isNotEmpty();
        }
    }

    @Test
    void neverGoesBackInTime() {
        shelf.withBeds().close();
        try (Book book = shelf.open(NOON.minusMillis(1))) {
            assertThat(refused(() -> book.write(List.of(draft("2025-05-01", "flail", "beds=N1")), OWNER, null)))
                    .singleElement()
                    .satisfies(problem -> assertThat(problem.why()).contains("writing never goes back in time"));
            assertThat(book.size()).isEqualTo(3);
        }
        try (Book book = shelf.open(NOON)) {
            book.write(List.of(draft("2025-05-01", "flail", "beds=N1")), OWNER, null);
        }
    }

    @Test
    void takesAGivenMomentInAPracticeBookOnly() {
        try (Book book = shelf.create(true, NOON.minusSeconds(60))) {
            assertThat(book.timeOfWriting(NOON.minusSeconds(30))).isEqualTo(NOON.minusSeconds(30));
            assertThatThrownBy(() -> book.timeOfWriting(NOON.minusSeconds(90))).isInstanceOf(Refused.class);
        }
        assertThat(shelf.entries()).extracting(Entry::writtenAt).containsExactly(NOON.minusSeconds(60));
    }

    @Test
    void leavesNothingOfABookThatMayNotBeMadeAtTheGivenMoment() {
        assertThat(refused(() -> shelf.create(false, NOON))).hasSize(1);
        assertThat(shelf.folder().root()).doesNotExist();
        shelf.create(false, null).close();
    }
}
