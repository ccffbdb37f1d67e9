package bedledger.language;

/** Trays sown together and kept as one batch, by the farm's name for them. */
public record TrayId(String name) implements Place {
    public TrayId {
        name = Names.checked(name, "trays", Names.SHORT);
    }

    public static TrayId parse(String text) {
        return new TrayId(text);
    }

    @Override
    public String toString() {
        return name;
    }
}
