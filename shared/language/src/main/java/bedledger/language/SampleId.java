package bedledger.language;

/** A sample taken for a test, by the name on its label. */
public record SampleId(String name) implements Place {
    public SampleId {
        name = Names.checked(name, "a sample", Names.SHORT);
    }

    public static SampleId parse(String text) {
        return new SampleId(text);
    }

    @Override
    public String toString() {
        return name;
    }
}
