package bedledger.projections.due;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** A sentence names the entries behind it, and not a page of them. */
class PickWordsTest {
    @Test
    void namesAFewEntriesAllAndOfVeryManyTheFirst() {
        assertThat(PickWords.numbers(List.of())).isEmpty();
        assertThat(PickWords.numbers(List.of(3L, 5L))).isEqualTo("#3 #5");
        assertThat(PickWords.numbers(LongStream.rangeClosed(1, 12).boxed().toList()))
                .endsWith("#11 #12");
        assertThat(PickWords.numbers(LongStream.rangeClosed(1, 4000).boxed().toList()))
                .isEqualTo("#1 #2 #3 #4 #5 #6 #7 #8 #9 #10 #11 #12 and 3988 more");
    }
}
