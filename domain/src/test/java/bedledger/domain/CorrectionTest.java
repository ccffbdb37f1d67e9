package bedledger.domain;

import static bedledger.domain.Shelf.OWNER;
import static bedledger.domain.Shelf.draft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.FieldId;
import bedledger.language.Refused;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A mistake is answered by a new entry of the same act; only what is in force can be answered. */
class CorrectionTest {
    private static final long TARPED = 4;

    @TempDir
    Path folder;

    private Shelf shelf;
    private Book book;

    CorrectionTest(@TempDir Path folder) {
        shelf = new Shelf(folder.resolve("book"));
        book = shelf.withBeds();
    }

    @BeforeEach
    void tarp() {
        book.write(List.of(draft("2025-04-10", "tarp", "beds=N1", "material=jute")), OWNER, null);
    }

    @AfterEach
    void close() {
        book.close();
    }

    private void refuses(ThrowingCallable work, String why) {
        long before = book.size();
        Refused refused = catchThrowableOfType(Refused.class, work);
        assertThat(refused.problems())
                .anySatisfy(problem -> assertThat(problem.toString()).contains(why));
        assertThat(book.size()).isEqualTo(before);
        assertThat(shelf.entries()).hasSize((int) before);
    }

    private Farm farm() {
        return book.farm(List.of(new FieldId("North"), new BedId("N1"), new BedId("N2")));
    }

    @Test
    void replacesAnEntryByAWholeNewFactOfTheSameActAndKeepsItsPlaceInTheDay() {
        book.correct(TARPED, draft("2025-04-11", "tarp", "beds=N2", "material=film"), "other bed", OWNER, null);
        Entry wrong = shelf.entries().get(3);
        Entry right = shelf.entries().get(4);
        assertThat(right.act()).isEqualTo(wrong.act());
        assertThat(right.sequence()).isEqualTo(1);
        assertThat(right.head().placeInDay()).isEqualTo(wrong.head().placeInDay());
        assertThat(farm().bed(new BedId("N1")).now().tarp()).isNull();
        assertThat(farm().bed(new BedId("N2")).now().tarp()).isNotNull();
    }

    @Test
    void refusesToCorrectWithAnotherKind() {
        refuses(
                () -> book.correct(TARPED, draft("2025-04-10", "flail", "beds=N1"), "no tarp", OWNER, null),
                "a correction is of the same kind");
    }

    @Test
    void refusesToCorrectOrStrikeWhatIsNotInForce() {
        Draft again = draft("2025-04-10", "tarp", "beds=N1", "material=film");
        book.correct(TARPED, again, "film", OWNER, null);
        refuses(() -> book.correct(TARPED, again, "film", OWNER, null), "entry '#4': #5 took its place");
        refuses(() -> book.strike(TARPED, "twice", OWNER, null), "entry '#4': #5 took its place");
    }

    @Test
    void leavesNothingInForceWhereACorrectionIsStruck() {
        book.correct(TARPED, draft("2025-04-10", "tarp", "beds=N1", "material=film"), "film", OWNER, null);
        book.strike(5, "no tarp at all", OWNER, null);
        assertThat(farm().bed(new BedId("N1")).now().tarp()).isNull();
        refuses(
                () -> book.correct(TARPED, draft("2025-04-10", "tarp", "beds=N1"), "after all", OWNER, null),
                "#5 took its place");
        refuses(() -> book.strike(6, "strike the strike", OWNER, null), "it is not in force");
    }

    @Test
    void admitsACorrectionAfterWhichALaterEntryNoLongerFitsAndSaysSo() {
        book.write(List.of(draft("2025-05-10", "untarp", "beds=N1")), OWNER, null);
        Written moved = book.correct(TARPED, draft("2025-04-10", "tarp", "beds=N2"), "other bed", OWNER, null);
        assertThat(moved.says())
                .singleElement()
                .asString()
                .startsWith("Entry #5 no longer fits: N1: no tarp lies on it");
        assertThat(farm().misfits()).containsOnlyKeys(5L);
    }

    @Test
    void saysThatAnActOverSeveralBedsNoLongerFitsInOneOfThem() {
        book.write(List.of(draft("2025-04-10", "tarp", "beds=N2", "material=jute")), OWNER, null);
        book.write(List.of(draft("2025-05-10", "untarp", "beds=N1 N2")), OWNER, null);
        assertThat(book.strike(TARPED, "no tarp at all", OWNER, null).says())
                .singleElement()
                .asString()
                .startsWith("Entry #6 no longer fits: N1: no tarp lies on it");
    }

    @Test
    void refusesACorrectionThatItselfCannotBe() {
        book.write(List.of(draft("2025-04-01", "tarp", "beds=N2", "material=jute")), OWNER, null);
        refuses(
                () -> book.correct(TARPED, draft("2025-04-10", "tarp", "beds=N2"), "other bed", OWNER, null),
                "bed 'N2': a tarp lies on it already");
    }

    @Test
    void refusesToTouchTheEntryThatOpensTheBookOrOneThatIsNotThere() {
        refuses(() -> book.strike(1, "x", OWNER, null), "stands for ever");
        refuses(() -> book.strike(99, "x", OWNER, null), "the last is #4");
        refuses(() -> book.strike(0, "x", OWNER, null), "there is no such entry");
    }

    @Test
    void refusesACorrectionOfADayToCome() {
        refuses(
                () -> book.correct(TARPED, draft("2031-04-10", "tarp", "beds=N1"), "year", OWNER, null),
                "that day is to come");
    }
}
