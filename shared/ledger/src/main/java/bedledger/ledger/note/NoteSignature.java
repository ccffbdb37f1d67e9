package bedledger.ledger.note;

import java.util.Arrays;

/**
 * One signature line: {@code — name base64(key ID ‖ signature)}.
 *
 * @param name of the key
 * @param base64 key ID and signature, in their one spelling
 */
public record NoteSignature(String name, String base64) {

    /** U+2014 and one space. */
    static final String HEAD = "\u2014 ";

    /** Checks name and base64. */
    public NoteSignature {
        KeyName.require(name);
        if (Base64Text.parse(base64, "signature").length <= VerifierKey.ID_LENGTH) {
            throw new NoteRejected("The signature \"" + base64
                    + "\" was refused: after four bytes of key id nothing is left. Copy the whole line again.");
        }
    }

    static NoteSignature of(VerifierKey key, byte[] signature) {
        return new NoteSignature(key.name(), Base64Text.print(Ed25519.joined(key.id(), signature)));
    }

    static NoteSignature parse(String line) {
        int space = line.lastIndexOf(' ');
        if (!line.startsWith(HEAD) || space < HEAD.length()) {
            throw new NoteRejected("The signature line \"" + line
                    + "\" was refused: it reads: long dash, space, name, space, base64 (C2SP signed-note).");
        }
        return new NoteSignature(line.substring(HEAD.length(), space), line.substring(space + 1));
    }

    boolean claimsToBeBy(VerifierKey key) {
        return name.equals(key.name()) && Arrays.equals(Arrays.copyOf(bytes(), VerifierKey.ID_LENGTH), key.id());
    }

    byte[] signature() {
        byte[] all = bytes();
        return Arrays.copyOfRange(all, VerifierKey.ID_LENGTH, all.length);
    }

    private byte[] bytes() {
        return Base64Text.parse(base64, "signature");
    }

    /** The line without its line end. */
    @Override
    public String toString() {
        return HEAD + name + " " + base64;
    }
}
