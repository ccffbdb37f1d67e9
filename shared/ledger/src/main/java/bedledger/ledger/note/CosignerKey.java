package bedledger.ledger.note;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

/**
 * The public half of a key that countersigns other people's checkpoints, C2SP tlog-cosignature: signature type 0x04, with a time.
 *
 * @param key the same name and Ed25519 key as for notes; type and key ID differ
 */
public record CosignerKey(VerifierKey key) {

    private static final byte COSIGNATURE_TYPE = 0x04;
    private static final String HEAD = "cosignature/v1\ntime ";
    private static final int TIME_LENGTH = Long.BYTES;

    /**
     * Reads a verifier key of type 0x04 in its one spelling.
     *
     * @throws NoteRejected for anything else
     */
    public static CosignerKey parse(String vkey) {
        String[] parts = vkey.split("\\+", 3);
        byte[] typed = parts.length == 3 ? Base64Text.parse(parts[2], "key") : new byte[0];
        if (typed.length != 1 + Ed25519.KEY_LENGTH || typed[0] != COSIGNATURE_TYPE) {
            throw refused(vkey, "it is not an Ed25519 cosigner's key (type 4 and 32 bytes)");
        }
        CosignerKey parsed = new CosignerKey(VerifierKey.of(parts[0], Arrays.copyOfRange(typed, 1, typed.length)));
        if (!parsed.toString().equals(vkey)) {
            throw refused(vkey, "the id of this name and key is another");
        }
        return parsed;
    }

    /** Whether a verifier key says that it is one of these; it may still be refused by {@link #parse}. */
    public static boolean isOne(String vkey) {
        String[] parts = vkey.split("\\+", 3);
        return parts.length == 3 && parts[2].startsWith("B");
    }

    public String name() {
        return key.name();
    }

    /** The note with this cosigner's signature behind those that are there; the text stays as it is. */
    public static SignedNote cosign(SignedNote note, SigningKey secret, Instant at) {
        Checkpoint.parse(note.text());
        CosignerKey cosigner = new CosignerKey(secret.verifier());
        byte[] signature = secret.signature(message(note, at.getEpochSecond()));
        byte[] time =
                ByteBuffer.allocate(TIME_LENGTH).putLong(at.getEpochSecond()).array();
        java.util.List<NoteSignature> signatures = new java.util.ArrayList<>(note.signatures());
        signatures.add(
                new NoteSignature(cosigner.name(), Base64Text.print(Ed25519.joined(cosigner.id(), time, signature))));
        return new SignedNote(note.text(), signatures);
    }

    /**
     * The latest moment at which this key countersigned a note; empty where it did not.
     *
     * @throws NoteRejected where a signature that claims to be by this key fails
     */
    public Optional<Instant> countersigned(SignedNote note) {
        Optional<Instant> latest = Optional.empty();
        for (NoteSignature signature : note.signatures()) {
            byte[] bytes = Base64Text.parse(signature.base64(), "signature");
            if (!signature.name().equals(name()) || !Arrays.equals(Arrays.copyOf(bytes, 4), id())) {
                continue;
            }
            Instant at = time(note, Arrays.copyOfRange(bytes, VerifierKey.ID_LENGTH, bytes.length));
            if (latest.isEmpty() || at.isAfter(latest.get())) {
                latest = Optional.of(at);
            }
        }
        return latest;
    }

    private Instant time(SignedNote note, byte[] timed) {
        long seconds = timed.length < TIME_LENGTH ? -1 : ByteBuffer.wrap(timed).getLong();
        boolean holds = seconds >= 0
                && seconds <= Instant.MAX.getEpochSecond()
                && key.verifies(message(note, seconds), Arrays.copyOfRange(timed, TIME_LENGTH, timed.length));
        if (!holds) {
            throw refused(toString(), "its countersignature is not over this checkpoint");
        }
        return Instant.ofEpochSecond(seconds);
    }

    private static byte[] message(SignedNote note, long seconds) {
        return (HEAD + seconds + "\n" + note.text()).getBytes(StandardCharsets.UTF_8);
    }

    private byte[] id() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(name().getBytes(StandardCharsets.UTF_8));
            digest.update((byte) '\n');
            return Arrays.copyOf(digest.digest(typedKey()), VerifierKey.ID_LENGTH);
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("Every Java platform must offer SHA-256", impossible);
        }
    }

    private byte[] typedKey() {
        return Ed25519.joined(
                new byte[] {COSIGNATURE_TYPE}, Ed25519.raw(key.key().getEncoded()));
    }

    /** The spelling that {@link #parse} reads back. */
    @Override
    public String toString() {
        return name() + "+" + HexFormat.of().formatHex(id()) + "+" + Base64Text.print(typedKey());
    }

    private static NoteRejected refused(String entered, String why) {
        return new NoteRejected("The cosigner's key \"" + entered + "\" was refused: " + why
                + " (C2SP tlog-cosignature). Copy the whole line from the certifier.");
    }
}
