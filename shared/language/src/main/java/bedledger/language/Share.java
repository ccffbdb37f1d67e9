package bedledger.language;

/** A share between 0 and 100 %. */
public record Share(Quantity quantity) implements Value {
    public Share {
        quantity = quantity.within(Dimension.SHARE, "0", "100");
    }

    public static Share parse(String text) {
        return new Share(Quantity.parse(text, Dimension.SHARE.example()));
    }

    /** In percent. */
    public double percent() {
        return quantity.inBase().doubleValue();
    }

    @Override
    public String toString() {
        return quantity.toString();
    }
}
