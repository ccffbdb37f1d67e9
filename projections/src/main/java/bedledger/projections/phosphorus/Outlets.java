package bedledger.projections.phosphorus;

import bedledger.language.Amount;
import bedledger.language.Dimension;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Harvesting.Harvested;
import bedledger.language.Lineage;
import bedledger.language.LotAmount;
import bedledger.language.LotId;
import bedledger.language.Mass;
import bedledger.language.Selling;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** Sales, gifts and what customers brought back, each traced to the harvests its lot came from, through joins and splits by weight. */
final class Outlets {
    private final Farm farm;
    private final LocalDate asOf;
    private final Lineage lineage;

    Outlets(Farm farm, LocalDate asOf) {
        this.farm = farm;
        this.asOf = asOf;
        this.lineage = Lineage.of(farm, asOf);
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
        double sign = entry.fact() instanceof Selling.CustomerReturned ? -1 : 1;
        return sources(line.lot(), OptionalDouble.of(sign), new HashSet<>()).stream()
                .map(source -> new Gone(
                        source.harvest(),
                        source.harvested(),
                        entry,
                        times(kilograms(line.quantity(), source.harvested()), source.share())));
    }

    /** A harvest that a lot goes back to, and its share of the lot by weight; empty where parts were not weighed. */
    private record Source(Entry harvest, Harvested harvested, OptionalDouble share) {}

    private List<Source> sources(LotId lot, OptionalDouble share, Set<LotId> asked) {
        Entry opening = farm.lot(lot).on(asOf).opening();
        if (opening != null && opening.fact() instanceof Harvested harvested) {
            return List.of(new Source(opening, harvested, share));
        }
        if (!asked.add(lot)) {
            return List.of();
        }
        List<Lineage.Link> parents = lineage.parents(lot);
        boolean weighed = parents.stream().allMatch(link -> link.amount().isWeight());
        double all = weighed
                ? parents.stream()
                        .mapToDouble(link -> link.amount().kilograms())
                        .sum()
                : 0;
        List<Source> sources = new ArrayList<>();
        for (Lineage.Link link : parents) {
            OptionalDouble part = parents.size() == 1
                    ? OptionalDouble.of(1)
                    : all > 0 ? OptionalDouble.of(link.amount().kilograms() / all) : OptionalDouble.empty();
            sources.addAll(sources(link.from(), times(share, part), asked));
        }
        return sources;
    }

    private static OptionalDouble times(OptionalDouble one, OptionalDouble other) {
        return one.isPresent() && other.isPresent()
                ? OptionalDouble.of(one.getAsDouble() * other.getAsDouble())
                : OptionalDouble.empty();
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
