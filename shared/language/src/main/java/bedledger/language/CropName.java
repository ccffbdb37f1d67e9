package bedledger.language;

/** A crop by the name in the crop table. */
public record CropName(String name) implements Value {
    public CropName {
        name = Names.checked(name, "a crop", Names.LONG);
    }

    public static CropName parse(String text) {
        return new CropName(text);
    }

    @Override
    public String toString() {
        return name;
    }
}
