package bedledger.language;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Turns amounts of one lot into other units, as far as its own entries say what a pack or a piece of it holds.
 *
 * @param sizes by the unit counted, what one of them holds; a unit of which two sizes are on record is left out
 */
record PackWeights(Map<Unit, Quantity> sizes) {
    private static final int DECIMALS = 3;

    PackWeights {
        sizes = Map.copyOf(sizes);
    }

    static PackWeights of(LotId lot, List<Entry> entries) {
        Map<Unit, Quantity> sizes = new EnumMap<>(Unit.class);
        Set<Unit> several = new HashSet<>();
        for (Entry entry : entries) {
            if (entry.fact() instanceof Harvesting.Harvested harvested
                    && harvested.lot().equals(lot)
                    && harvested.each() != null) {
                note(
                        sizes,
                        several,
                        harvested.quantity().quantity().unit(),
                        harvested.each().quantity());
            }
        }
        LotAccount.packings(lot, entries)
                .filter(packed -> packed.size() != null)
                .forEach(packed -> note(
                        sizes,
                        several,
                        packed.packs().quantity().unit(),
                        java.util.Objects.requireNonNull(packed.size()).quantity()));
        sizes.keySet().removeAll(several);
        return new PackWeights(sizes);
    }

    private static void note(Map<Unit, Quantity> sizes, Set<Unit> several, Unit unit, Quantity size) {
        Quantity known = sizes.putIfAbsent(unit, size);
        if (known != null
                && (known.unit().dimension() != size.unit().dimension()
                        || known.inBase().compareTo(size.inBase()) != 0)) {
            several.add(unit);
        }
    }

    /** The amount in a unit, to the thousandth, without idle zeros, where units differ, and as written where they do not; empty where nothing on record says how. */
    Optional<BigDecimal> in(Amount amount, Unit unit) {
        Quantity quantity = amount.quantity();
        if (quantity.unit() == unit) {
            return Optional.of(quantity.number());
        }
        if (alike(quantity.unit(), unit)) {
            return Optional.of(quotient(quantity.inBase(), unit.factor()));
        }
        Quantity size = sizes.get(quantity.unit());
        if (size != null && alike(size.unit(), unit)) {
            return Optional.of(quotient(quantity.number().multiply(size.inBase()), unit.factor()));
        }
        Quantity each = sizes.get(unit);
        return each != null
                        && alike(each.unit(), quantity.unit())
                        && each.number().signum() > 0
                ? Optional.of(quotient(quantity.inBase(), each.inBase()))
                : Optional.empty();
    }

    private static boolean alike(Unit one, Unit other) {
        return one == other || (one.dimension() == other.dimension() && one.dimension() != Dimension.COUNT);
    }

    private static BigDecimal quotient(BigDecimal above, BigDecimal below) {
        BigDecimal quotient =
                above.divide(below, DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return quotient.scale() < 0 ? quotient.setScale(0) : quotient;
    }
}
