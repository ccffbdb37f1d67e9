package bedledger.language;

/** A weight, at most 1,000 t. */
public record Mass(Quantity quantity) implements Value {
    public Mass {
        quantity = quantity.within(Dimension.MASS, "0", "1000000000");
    }

    public static Mass parse(String text) {
        return new Mass(Quantity.parse(text, Dimension.MASS.example()));
    }

    /** In grams. */
    public double grams() {
        return quantity.inBase().doubleValue();
    }

    @Override
    public String toString() {
        return quantity.toString();
    }
}
