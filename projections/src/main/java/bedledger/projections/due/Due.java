package bedledger.projections.due;

import bedledger.projections.due.DueItem.Kind;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/**
 * What is due on a day and in the days after it.
 *
 * @param to the last day looked ahead to; what may not be done yet is told however late its day is
 * @param all by kind, then day, then subject
 */
public record Due(LocalDate on, LocalDate to, List<DueItem> all) {
    public Due {
        all = List.copyOf(all);
    }

    public static Due of(Asked asked) {
        List<DueItem> all = Stream.of(
                        Intervals.of(asked),
                        KeepOuts.of(asked),
                        LabelDays.of(asked),
                        Mulches.of(asked),
                        Piles.of(asked),
                        Conditions.of(asked),
                        SignOffs.of(asked),
                        Tarps.of(asked))
                .flatMap(items -> items)
                .filter(item -> item.kind() == Kind.NOT_YET
                        || item.day() == null
                        || !item.day().isAfter(asked.to()))
                .sorted(DueItem.ORDER)
                .toList();
        return new Due(asked.on(), asked.to(), all);
    }

    public List<DueItem> of(Kind kind) {
        return all.stream().filter(item -> item.kind() == kind).toList();
    }
}
