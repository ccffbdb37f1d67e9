package bedledger.ledger.note;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;

/** The secret half of a book's key; it stays with the book's owner, in a file only the owner reads. */
public final class SigningKey {

    private final PrivateKey secret;
    private final VerifierKey verifier;

    private SigningKey(PrivateKey secret, VerifierKey verifier) {
        this.secret = secret;
        this.verifier = verifier;
    }

    /**
     * Makes a new key from the platform's source of randomness.
     *
     * @param name the key's name, and the origin of the checkpoints it signs
     */
    public static SigningKey generate(String name) {
        KeyName.require(name);
        try {
            KeyPair pair = KeyPairGenerator.getInstance(Ed25519.ALGORITHM).generateKeyPair();
            return new SigningKey(pair.getPrivate(), new VerifierKey(name, pair.getPublic()));
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("This Java cannot make Ed25519 keys (JEP 339)", impossible);
        }
    }

    /** Joins a 32-byte seed and the public key that goes with it, checked by signing once. */
    static SigningKey of(byte[] seed, VerifierKey verifier) {
        try {
            SigningKey key = new SigningKey(Ed25519.privateKey(seed), verifier);
            byte[] probe = "bedledger".getBytes(StandardCharsets.US_ASCII);
            if (!verifier.verifies(probe, key.signature(probe))) {
                throw new NoteRejected("The key " + verifier.name() + " was refused: its secret and its public half"
                        + " do not belong together. Take the key file from a copy you trust.");
            }
            return key;
        } catch (GeneralSecurityException malformed) {
            throw new NoteRejected("The secret of the key " + verifier.name() + " was refused: it is no Ed25519 seed"
                    + " of 32 bytes. Take the key file from a copy you trust.");
        }
    }

    /** The half to hand out. */
    public VerifierKey verifier() {
        return verifier;
    }

    /**
     * Signs a text.
     *
     * @param text ends in a line feed, no control characters but line feeds
     */
    public SignedNote sign(String text) {
        byte[] signature = signature(text.getBytes(StandardCharsets.UTF_8));
        return new SignedNote(text, java.util.List.of(NoteSignature.of(verifier, signature)));
    }

    byte[] signature(byte[] message) {
        return Ed25519.sign(secret, message);
    }

    byte[] seed() {
        return Ed25519.raw(secret.getEncoded());
    }

    /** The name only: a secret never reaches a message. */
    @Override
    public String toString() {
        return "signing key " + verifier.name();
    }
}
