package bedledger.projections.balance;

import bedledger.language.Amount;
import bedledger.language.Entry;
import bedledger.language.Unit;
import bedledger.projections.stock.Tally;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * All there was of something on one day, as counted: one count, or one at each place.
 *
 * @param last the last entry of the count; what was done after it that day belongs to the next period
 */
public record Count(LocalDate day, Tally tally, List<Long> entries, Entry last) {
    /** One figure of a count, and where it was taken. */
    record Figure(Amount amount, String where) {}

    public Count {
        entries = List.copyOf(entries);
    }

    /** From the counts of one day, in the order of the work; a place counted twice holds what the second count says. */
    static Count of(List<Entry> counts, Function<Entry, Figure> figure, Unit unit) {
        Map<String, Entry> byPlace = new LinkedHashMap<>();
        counts.forEach(entry -> byPlace.put(figure.apply(entry).where(), entry));
        Entry last = counts.get(counts.size() - 1);
        return new Count(
                last.head().doneOn(),
                Tally.of(
                        unit,
                        byPlace.values().stream()
                                .map(entry -> figure.apply(entry).amount())
                                .toList()),
                byPlace.values().stream().map(Entry::number).toList(),
                last);
    }

    public BigDecimal number() {
        return tally.number();
    }
}
