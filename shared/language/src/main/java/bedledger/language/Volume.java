package bedledger.language;

/** A volume, at most 10,000 m³. */
public record Volume(Quantity quantity) implements Value {
    public Volume {
        quantity = quantity.within(Dimension.VOLUME, "0", "10000000");
    }

    public static Volume parse(String text) {
        return new Volume(Quantity.parse(text, Dimension.VOLUME.example()));
    }

    /** In litres. */
    public double litres() {
        return quantity.inBase().doubleValue();
    }

    @Override
    public String toString() {
        return quantity.toString();
    }
}
