package bedledger.language;

/** A span of time, at most ten years. */
public record Span(Quantity quantity) implements Value {
    public Span {
        quantity = quantity.within(Dimension.TIME, "0", "5256000");
    }

    public static Span parse(String text) {
        return new Span(Quantity.parse(text, Dimension.TIME.example()));
    }

    /** In minutes. */
    public double minutes() {
        return quantity.inBase().doubleValue();
    }

    @Override
    public String toString() {
        return quantity.toString();
    }
}
