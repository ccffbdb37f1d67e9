package bedledger.language;

/** A field: one piece of land treated as a unit, holding beds. */
public record FieldId(String name) implements Place {
    public FieldId {
        name = Names.checked(name, "a field", Names.LONG);
    }

    public static FieldId parse(String text) {
        return new FieldId(text);
    }

    @Override
    public String toString() {
        return name;
    }
}
