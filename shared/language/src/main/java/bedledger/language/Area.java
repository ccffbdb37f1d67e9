package bedledger.language;

/** An area, at most 1,000 ha. */
public record Area(Quantity quantity) implements Value {
    public Area {
        quantity = quantity.within(Dimension.AREA, "0", "10000000");
    }

    public static Area parse(String text) {
        return new Area(Quantity.parse(text, Dimension.AREA.example()));
    }

    /** In square metres. */
    public double squareMetres() {
        return quantity.inBase().doubleValue();
    }

    @Override
    public String toString() {
        return quantity.toString();
    }
}
