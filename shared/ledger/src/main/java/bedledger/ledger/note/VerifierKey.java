package bedledger.ledger.note;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.PublicKey;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * The public half of a key, as C2SP signed-note writes it: {@code name+hex(key ID)+base64(type ‖ key)}.
 *
 * @param name not empty, no spaces, no plus sign
 * @param key an Ed25519 public key
 */
public record VerifierKey(String name, PublicKey key) {

    /** Signature type 0x01 of C2SP signed-note. */
    static final byte ED25519_TYPE = 0x01;

    static final int ID_LENGTH = 4;

    /** Checks the name. */
    public VerifierKey {
        KeyName.require(name);
    }

    /**
     * Reads a verifier key in its one spelling.
     *
     * @throws NoteRejected for any other form, another key type, or a key ID that does not belong to the key
     */
    public static VerifierKey parse(String vkey) {
        String[] parts = vkey.split("\\+", 3);
        if (parts.length != 3) {
            throw refused(vkey, "it has not the three parts name+id+key");
        }
        byte[] typed = Base64Text.parse(parts[2], "key");
        if (typed.length != 1 + Ed25519.KEY_LENGTH || typed[0] != ED25519_TYPE) {
            throw refused(vkey, "it is not an Ed25519 key (type 1 and 32 bytes)");
        }
        VerifierKey parsed = of(parts[0], Arrays.copyOfRange(typed, 1, typed.length));
        if (!parsed.toString().equals(vkey)) {
            throw refused(vkey, "the id of this name and key is " + parsed.idHex());
        }
        return parsed;
    }

    static VerifierKey of(String name, byte[] raw) {
        try {
            PublicKey key = Ed25519.publicKey(raw);
            if (!Arrays.equals(Ed25519.raw(key.getEncoded()), raw)) {
                throw refused(name, "the key has a second spelling");
            }
            return new VerifierKey(name, key);
        } catch (GeneralSecurityException notAKey) {
            throw refused(name, "its 32 bytes are no Ed25519 key");
        }
    }

    /** The first four bytes of SHA-256(name ‖ 0x0A ‖ type ‖ key), which tell keys of one name apart. */
    byte[] id() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(name.getBytes(StandardCharsets.UTF_8));
            digest.update((byte) '\n');
            return Arrays.copyOf(digest.digest(typedKey()), ID_LENGTH);
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("Every Java platform must offer SHA-256", impossible);
        }
    }

    /** Says whether this key made a signature over these bytes. */
    boolean verifies(byte[] message, byte[] signature) {
        return Ed25519.verifies(key, message, signature);
    }

    private byte[] typedKey() {
        return Ed25519.joined(new byte[] {ED25519_TYPE}, Ed25519.raw(key.getEncoded()));
    }

    private String idHex() {
        return HexFormat.of().formatHex(id());
    }

    /** The spelling that {@link #parse} reads back. */
    @Override
    public String toString() {
        return name + "+" + idHex() + "+" + Base64Text.print(typedKey());
    }

    private static NoteRejected refused(String entered, String why) {
        return new NoteRejected("The verifier key \"" + entered + "\" was refused: " + why
                + " (C2SP signed-note). Copy the whole line from whoever keeps the book.");
    }
}
