package bedledger.language;

/** A permanent bed, known for ever by this id. */
public record BedId(String name) implements Place {
    public BedId {
        name = Names.checked(name, "a bed", Names.SHORT);
    }

    public static BedId parse(String text) {
        return new BedId(text);
    }

    @Override
    public String toString() {
        return name;
    }
}
