package bedledger.language;

import java.util.regex.Pattern;

/** The id of an act: a time-ordered UUID, given when the act is first written. */
public record ActId(String text) implements Value, Comparable<ActId> {
    private static final Pattern SHAPE =
            Pattern.compile("[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}");

    public ActId {
        if (!SHAPE.matcher(text).matches()) {
            throw new BadValue(text, "this is not the id of an act", "an id is a version 7 UUID in lower case");
        }
    }

    public static ActId parse(String text) {
        return new ActId(text);
    }

    @Override
    public int compareTo(ActId other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
