package bedledger.language;

import java.math.BigDecimal;
import java.util.Set;

/** How much of something: a weight, a volume or a count. Counts have no fixed weight and are never turned into one here. */
public record Amount(Quantity quantity) implements Value {
    private static final Set<Dimension> ALLOWED = Set.of(Dimension.MASS, Dimension.VOLUME, Dimension.COUNT);
    private static final BigDecimal MOST = new BigDecimal("1000000000");

    public Amount {
        if (!ALLOWED.contains(quantity.unit().dimension())) {
            throw new BadValue(
                    quantity.toString(),
                    "this is not a weight, a volume or a count",
                    "write it like 38.5kg or 120heads");
        }
        quantity = quantity.within(quantity.unit().dimension(), "0", MOST.toPlainString());
    }

    public static Amount parse(String text) {
        return new Amount(Quantity.parse(text));
    }

    public boolean isWeight() {
        return quantity.unit().dimension() == Dimension.MASS;
    }

    /** In kilograms; throws if this is a count or a volume. */
    public double kilograms() {
        if (!isWeight()) {
            throw new IllegalStateException(this + " has no weight");
        }
        return quantity.inBase().doubleValue() / 1000;
    }

    @Override
    public String toString() {
        return quantity.toString();
    }
}
