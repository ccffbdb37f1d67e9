package bedledger.language;

/** A length, at most 10 km. */
public record Length(Quantity quantity) implements Value {
    public Length {
        quantity = quantity.within(Dimension.LENGTH, "0", "10000");
    }

    public static Length parse(String text) {
        return new Length(Quantity.parse(text, Dimension.LENGTH.example()));
    }

    /** In metres. */
    public double metres() {
        return quantity.inBase().doubleValue();
    }

    @Override
    public String toString() {
        return quantity.toString();
    }
}
