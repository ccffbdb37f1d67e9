package bedledger.language;

/** An input by its full name and formulation, as listed. */
public record MaterialName(String name) implements Place {
    public MaterialName {
        name = Names.checked(name, "a material", Names.LONG);
    }

    public static MaterialName parse(String text) {
        return new MaterialName(text);
    }

    @Override
    public String toString() {
        return name;
    }
}
