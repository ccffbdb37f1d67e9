package bedledger.language;

/** A temperature between −60 and 120 °C. */
public record Temperature(Quantity quantity) implements Value {
    public Temperature {
        quantity = quantity.within(Dimension.TEMPERATURE, "-60", "120");
    }

    public static Temperature parse(String text) {
        return new Temperature(Quantity.parse(text, Dimension.TEMPERATURE.example()));
    }

    /** In degrees Celsius. */
    public double celsius() {
        return quantity.inBase().doubleValue();
    }

    @Override
    public String toString() {
        return quantity.toString();
    }
}
