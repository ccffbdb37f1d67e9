package bedledger.projections.history;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.Farm;
import bedledger.language.Timeline;
import java.time.LocalDate;
import java.util.List;

/**
 * One bed's page: its state at the end of a day in plain sentences, and every entry up to then that touches or touched it.
 *
 * <p>A part of a split bed shows the entries of the whole up to the split.
 *
 * @param lines in the order of the work, what was replaced or struck included
 */
public record BedHistory(BedId bed, LocalDate day, BedState state, List<String> sentences, List<HistoryLine> lines) {
    public BedHistory {
        sentences = List.copyOf(sentences);
        lines = List.copyOf(lines);
    }

    public static BedHistory of(Farm farm, BedId bed, LocalDate day) {
        Timeline<BedState> timeline = farm.bed(bed);
        BedState state = timeline.on(day);
        return new BedHistory(
                bed, day, state, StateWords.of(state, day), new HistoryLines(farm, timeline).upTo(bed, day));
    }
}
