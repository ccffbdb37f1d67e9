package bedledger.language;

import java.util.regex.Pattern;

/** A document by the SHA-256 of its content, in lower-case hex. */
public record DocumentId(String sha256) implements Value {
    private static final Pattern SHAPE = Pattern.compile("[0-9a-f]{64}");

    public DocumentId {
        if (!SHAPE.matcher(sha256).matches()) {
            throw new BadValue(sha256, "this is not the hash of a document", "attach the file itself");
        }
    }

    public static DocumentId parse(String text) {
        return new DocumentId(text);
    }

    @Override
    public String toString() {
        return sha256;
    }
}
