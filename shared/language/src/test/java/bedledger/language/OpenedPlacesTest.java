package bedledger.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class OpenedPlacesTest {
    private final SeasonBook book = new SeasonBook();

    private void layOut() {
        book.on("2025-02-01").did("register-field", "field=North", "gross=0.05ha");
        book.did("lay-out", "beds=N1", "field=North", "length=20m", "width=0.75m");
    }

    @Test
    void plantsCannotComeFromTraysThatWereNotSown() {
        layOut();
        Entry set = book.on("2025-04-20").did("transplant", "beds=N1", "crop=leek", "trays=LE-0301");
        assertThat(book.farm().misfits()).containsOnlyKeys(set.number());
        assertThat(book.farm().misfits().values().toString()).contains("no such trays were sown by that day");

        book.on("2025-03-01").writtenAt("2025-04-21T20:00:00Z").did("sow-trays", "batch=LE-0301", "crop=leek");
        assertThat(book.farm().misfits()).isEmpty();
    }

    @Test
    void aSampleIsTakenBeforeItsResultComes() {
        layOut();
        Entry result = book.on("2025-08-20").did("sample-result", "sample=S-1", "result=nothing found");
        assertThat(book.farm().misfits()).containsOnlyKeys(result.number());

        book.on("2025-08-01").did("take-sample", "sample=S-1", "beds=N1", "of=leaves");
        assertThat(book.farm().misfits()).isEmpty();
    }

    @Test
    void aConditionHasANameADayAndWords() {
        assertThat(Condition.parse("C1 by 2026-03-01: file the seed searches, all three"))
                .hasToString("C1 by 2026-03-01: file the seed searches, all three");
        for (String wrong :
                new String[] {"file them", "C1 by soon: file them", "C1 by 2026-03-01:", "C1 by 2026-03-01: a; b"}) {
            assertThatThrownBy(() -> Condition.parse(wrong)).isInstanceOf(BadValue.class);
        }
    }
}
