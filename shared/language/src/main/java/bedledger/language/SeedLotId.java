package bedledger.language;

/** Seed or stock, known by the farm's name for the supplier's lot. */
public record SeedLotId(String name) implements Place {
    public SeedLotId {
        name = Names.checked(name, "a seed lot", Names.SHORT);
    }

    public static SeedLotId parse(String text) {
        return new SeedLotId(text);
    }

    @Override
    public String toString() {
        return name;
    }
}
