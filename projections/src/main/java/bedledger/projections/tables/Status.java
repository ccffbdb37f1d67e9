package bedledger.projections.tables;

import java.util.Locale;

/** How far a value can be trusted to stand where its source is said to stand. */
public enum Status {
    /** Seen in a published copy. */
    CONFIRMED("confirmed"),
    /** From memory of the named publication, or of general knowledge. */
    MEMORY("from memory"),
    /** Judged for the table; no publication behind it. */
    JUDGEMENT("judgement"),
    /** Measured by the farm itself. */
    OWN("own measurement");

    private final String words;

    Status(String words) {
        this.words = words;
    }

    /** What a report prints. */
    public String words() {
        return words;
    }

    static Status parse(String text) {
        return switch (text) {
            case "confirmed" -> CONFIRMED;
            case "memory" -> MEMORY;
            case "judgement" -> JUDGEMENT;
            default ->
                throw new IllegalArgumentException(
                        "status '" + text.toLowerCase(Locale.ROOT) + "' is none of confirmed, memory, judgement");
        };
    }
}
