package bedledger.ledger.note;

import java.util.Base64;

/** Standard base64 in one spelling only: padded, no stray bits, no line breaks. */
final class Base64Text {

    private Base64Text() {}

    static byte[] parse(String text, String what) {
        byte[] bytes;
        try {
            bytes = Base64.getDecoder().decode(text);
        } catch (IllegalArgumentException malformed) {
            throw refused(text, what);
        }
        // The JDK's decoder also takes missing padding and leftover bits, which would be a second spelling.
        if (!print(bytes).equals(text)) {
            throw refused(text, what);
        }
        return bytes;
    }

    static String print(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }

    private static NoteRejected refused(String text, String what) {
        return new NoteRejected("The " + what + " \"" + text
                + "\" was refused: it is not standard padded base64 (RFC 4648 §4). Copy the whole line again.");
    }
}
