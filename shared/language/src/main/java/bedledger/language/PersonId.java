package bedledger.language;

/** A person by a short id; names and addresses live outside the seal. */
public record PersonId(String name) implements Value {
    public PersonId {
        name = Names.checked(name, "a person", Names.SHORT);
    }

    public static PersonId parse(String text) {
        return new PersonId(text);
    }

    @Override
    public String toString() {
        return name;
    }
}
