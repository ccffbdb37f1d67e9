package bedledger.language;

/** A bulk density between 0.1 and 3 g/cm³. */
public record Density(Quantity quantity) implements Value {
    public Density {
        quantity = quantity.within(Dimension.DENSITY, "0.1", "3");
    }

    public static Density parse(String text) {
        return new Density(Quantity.parse(text, Dimension.DENSITY.example()));
    }

    /** In g/cm³. */
    public double gramsPerCubicCentimetre() {
        return quantity.inBase().doubleValue();
    }

    @Override
    public String toString() {
        return quantity.toString();
    }
}
