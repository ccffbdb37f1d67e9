package bedledger.projections.history;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.Farm;
import java.time.LocalDate;
import java.util.List;

/** All beds there are on a day, in natural order, with their state at the end of it. */
public record BedList(LocalDate day, List<Row> rows) {
    /** One bed; its field, size and name are in the state, and all of it in the sentences. */
    public record Row(BedId bed, BedState state, List<String> sentences) {
        public Row {
            sentences = List.copyOf(sentences);
        }
    }

    public BedList {
        rows = List.copyOf(rows);
    }

    public static BedList of(Farm farm, LocalDate day) {
        return new BedList(
                day,
                farm.beds().stream()
                        .map(bed -> row(bed, farm.bed(bed).on(day), day))
                        .filter(row -> row.state().laidOut() != null)
                        .toList());
    }

    private static Row row(BedId bed, BedState state, LocalDate day) {
        return new Row(bed, state, StateWords.of(state, day));
    }
}
