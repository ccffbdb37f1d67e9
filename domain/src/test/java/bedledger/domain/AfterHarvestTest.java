package bedledger.domain;

import static bedledger.domain.Shelf.OWNER;
import static bedledger.domain.Shelf.draft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import bedledger.language.Problem;
import bedledger.language.Refused;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What cannot be with trays, joined lots and conditions, and what is said but never refused. */
class AfterHarvestTest {
    @TempDir
    Path folder;

    private Shelf shelf;

    @BeforeEach
    void shelf() {
        shelf = new Shelf(folder.resolve("book"));
    }

    private static Problem refused(Book book, Draft... drafts) {
        Refused refused = catchThrowableOfType(Refused.class, () -> book.write(List.of(drafts), OWNER, null));
        assertThat(refused).isNotNull();
        return refused.problems().get(0);
    }

    private static List<String> says(Book book, Draft... drafts) {
        return book.write(List.of(drafts), OWNER, null).says();
    }

    @Test
    void refusesAnAnswerToAConditionThatNobodySet() {
        try (Book book = shelf.withBeds()) {
            says(
                    book,
                    draft(
                            "2025-11-01",
                            "note-inspection",
                            "inspector=R. Field",
                            "conditions=C1 by 2025-12-01: label bins"));

            Problem other =
                    refused(book, draft("2025-11-05", "answer-condition", "condition=C2", "inspection=4", "how=done"));
            assertThat(other.why()).contains("no such condition; it has C1");
            Problem none =
                    refused(book, draft("2025-11-05", "answer-condition", "condition=C1", "inspection=3", "how=done"));
            assertThat(none.why()).contains("no inspection");
            assertThat(refused(book, draft("2025-11-05", "answer-condition", "condition=C1", "inspection=99", "how=x"))
                            .why())
                    .contains("no inspection");

            assertThat(says(book, draft("2025-11-05", "answer-condition", "condition=C1", "inspection=4", "how=done")))
                    .isEmpty();
        }
    }

    @Test
    void saysThatMoreWasJoinedThanALotHeld() {
        try (Book book = shelf.withBeds()) {
            says(
                    book,
                    draft("2025-09-01", "found-lot", "lot=2025/A", "crop=carrot", "quantity=10kg"),
                    draft("2025-09-01", "found-lot", "lot=2025/B", "crop=carrot", "quantity=10kg"));

            assertThat(says(book, draft("2025-09-02", "join-lots", "lots=2025/A=12kg 2025/B=8kg", "into=2025/AB")))
                    .containsExactly("Lot 2025/A: more went out (12 kg) than came in (10 kg).");
            assertThat(says(book, draft("2025-09-03", "sell", "lots=2025/AB=20kg", "as=organic")))
                    .isEmpty();
            assertThat(says(book, draft("2025-09-03", "split-lot", "lot=2025/AB", "into=2025/AB1=1kg")))
                    .containsExactly("Lot 2025/AB: more went out (21 kg) than came in (20 kg).");
        }
    }

    @Test
    void aCustomerReturnMakesGoodWhatWasSoldTwice() {
        try (Book book = shelf.withBeds()) {
            says(
                    book,
                    draft("2025-09-01", "found-lot", "lot=2025/A", "crop=carrot", "quantity=10kg"),
                    draft("2025-09-02", "sell", "lots=2025/A=10kg", "as=organic"),
                    draft("2025-09-03", "take-back", "lots=2025/A=4kg"));

            assertThat(says(book, draft("2025-09-04", "sell", "lots=2025/A=4kg", "as=organic")))
                    .isEmpty();
        }
    }

    @Test
    void refusesPlantsFromTraysSownOnALaterDay() {
        try (Book book = shelf.withBeds()) {
            says(book, draft("2025-03-10", "sow-trays", "batch=LE-1", "crop=leek", "trays=2", "cells=50"));

            Problem problem = refused(book, draft("2025-03-05", "transplant", "beds=N1", "crop=leek", "trays=LE-1"));
            assertThat(problem.why()).contains("it is there from 2025-03-10 on (#4)");
        }
    }

    @Test
    void saysThatMorePlantsWereSetOutThanWereSown() {
        try (Book book = shelf.withBeds()) {
            says(book, draft("2025-03-10", "sow-trays", "batch=LE-1", "crop=leek", "trays=2", "cells=50"));

            assertThat(says(book, draft("2025-05-05", "transplant", "beds=N1", "crop=leek", "trays=LE-1", "plants=90")))
                    .isEmpty();
            assertThat(says(book, draft("2025-05-06", "transplant", "beds=N2", "crop=leek", "trays=LE-1", "plants=20")))
                    .containsExactly("Trays LE-1: 110 plants were set out of 100 cells.");
        }
    }
}
