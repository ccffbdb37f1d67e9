package bedledger.projections.stock;

import bedledger.language.Amount;
import bedledger.language.Dimension;
import bedledger.language.Quantity;
import bedledger.language.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A sum of amounts in one unit: weights to weights and volumes to volumes by the exact factors of their units, counts only in the same
 * unit.
 *
 * @param number to the thousandth where a unit was turned into another, else as written
 * @param apart what cannot be added to it
 */
public record Tally(Unit unit, BigDecimal number, List<Amount> apart) {
    private static final int DECIMALS = 3;

    public Tally {
        apart = List.copyOf(apart);
    }

    public static Tally of(Unit unit, List<Amount> amounts) {
        BigDecimal sum = BigDecimal.ZERO;
        List<Amount> apart = new ArrayList<>();
        for (Amount amount : amounts) {
            Optional<BigDecimal> number = in(unit, amount);
            sum = sum.add(number.orElse(BigDecimal.ZERO));
            if (number.isEmpty()) {
                apart.add(amount);
            }
        }
        return new Tally(unit, sum, apart);
    }

    /** An amount in a unit; empty where it cannot be turned into it. */
    public static Optional<BigDecimal> in(Unit unit, Amount amount) {
        Quantity quantity = amount.quantity();
        if (quantity.unit() == unit) {
            return Optional.of(quantity.number());
        }
        boolean alike = quantity.unit().dimension() == unit.dimension() && unit.dimension() != Dimension.COUNT;
        return alike
                ? Optional.of(plain(quantity.inBase().divide(unit.factor(), DECIMALS, RoundingMode.HALF_EVEN)))
                : Optional.empty();
    }

    private static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    public Tally minus(Tally other) {
        List<Amount> both = new ArrayList<>(apart);
        both.addAll(other.apart);
        return new Tally(unit, number.subtract(other.number), both);
    }

    /** "31.0 kg", with a true minus sign. */
    public static String words(BigDecimal number, Unit unit) {
        return number.toPlainString().replace('-', '−') + " " + unit.symbol();
    }

    @Override
    public String toString() {
        return words(number, unit);
    }
}
