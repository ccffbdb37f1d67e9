package bedledger.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TimelineTest {
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void saysOfEveryDayWhatTheLastStepByThenLeft(long seed) {
        Farm farm = RandomSeason.metric(seed).farm();
        for (BedId bed : farm.beds()) {
            assertThat(farm.bed(bed).daysRise()).isTrue();
            everyDayOf(farm.bed(bed));
        }
    }

    @Test
    void saysTheSameWhereAPartHoldsAnEntryOlderThanItself() {
        SeasonBook book = new SeasonBook();
        book.on("2025-02-20").did("register-field", "field=North", "gross=0.05ha");
        book.did("lay-out", "beds=N1", "field=North", "length=20m", "width=0.75m");
        book.on("2025-04-01").did("tarp", "beds=N1");
        book.on("2025-03-01").did("tarp", "beds=N1a");
        book.on("2025-05-01").did("split-bed", "bed=N1", "into=N1a N1b", "lengths=10m 10m");

        Timeline<BedState> part = book.farm().bed(new BedId("N1a"));

        assertThat(part.daysRise()).isFalse();
        everyDayOf(part);
    }

    private static void everyDayOf(Timeline<BedState> timeline) {
        for (LocalDate day = LocalDate.of(2025, 1, 1); day.getYear() == 2025; day = day.plusDays(1)) {
            BedState last = timeline.start();
            for (Step<BedState> step : timeline.steps()) {
                if (step.entry().head().doneOn().isAfter(day)) {
                    break;
                }
                last = step.after();
            }
            assertThat(timeline.on(day)).as(day + " on " + timeline.place()).isEqualTo(last);
        }
    }
}
