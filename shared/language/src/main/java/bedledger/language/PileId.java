package bedledger.language;

/** A compost pile. */
public record PileId(String name) implements Place {
    public PileId {
        name = Names.checked(name, "a pile", Names.SHORT);
    }

    public static PileId parse(String text) {
        return new PileId(text);
    }

    @Override
    public String toString() {
        return name;
    }
}
