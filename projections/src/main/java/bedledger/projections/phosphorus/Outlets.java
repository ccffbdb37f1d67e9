package bedledger.projections.phosphorus;

import bedledger.language.Amount;
import bedledger.language.Dimension;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Harvesting.Harvested;
import bedledger.language.LotAmount;
import bedledger.language.Mass;
import bedledger.language.Selling;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Sales, gifts and what customers brought back, each traced to the harvest its lot came from. */
final class Outlets {
    private final Farm farm;
    private final LocalDate asOf;

    Outlets(Farm farm, LocalDate asOf) {
        this.farm = farm;
        this.asOf = asOf;
    }

    /** Lots found in store came off no bed of this book and are left out. */
    List<Gone> all() {
        return farm.ofKind(Selling.class).stream()
                .filter(entry -> !entry.head().doneOn().isAfter(asOf))
                .flatMap(entry -> lines(entry.fact()).stream().flatMap(line -> gone(entry, line)))
                .toList();
    }

    private static List<LotAmount> lines(Fact fact) {
        if (fact instanceof Selling.Sold sold) {
            return sold.lots();
        }
        if (fact instanceof Selling.Donated donated) {
            return donated.lots();
        }
        return fact instanceof Selling.CustomerReturned returned ? returned.lots() : List.of();
    }

    private Stream<Gone> gone(Entry entry, LotAmount line) {
        Entry opening = farm.lot(line.lot()).on(asOf).opening();
        if (opening == null || !(opening.fact() instanceof Harvested harvested)) {
            return Stream.empty();
        }
        double sign = entry.fact() instanceof Selling.CustomerReturned ? -1 : 1;
        OptionalDouble weight = kilograms(line.quantity(), harvested);
        return Stream.of(new Gone(
                opening,
                harvested,
                entry,
                weight.isPresent() ? OptionalDouble.of(sign * weight.getAsDouble()) : weight));
    }

    /** A count takes the weight of one from its harvest; a volume has none. */
    private static OptionalDouble kilograms(Amount amount, Harvested harvested) {
        if (amount.isWeight()) {
            return OptionalDouble.of(amount.kilograms());
        }
        Mass each = harvested.each();
        boolean sameThing =
                amount.quantity().unit() == harvested.quantity().quantity().unit()
                        && amount.quantity().unit().dimension() == Dimension.COUNT;
        return each == null || !sameThing
                ? OptionalDouble.empty()
                : OptionalDouble.of(amount.quantity().inBase().doubleValue() * each.grams() / 1000);
    }
}
