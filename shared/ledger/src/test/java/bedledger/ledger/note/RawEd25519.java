package bedledger.ledger.note;

import java.security.GeneralSecurityException;
import java.util.HexFormat;

/** Lets the outside vectors reach the bare signature, which the program itself only uses inside notes. */
public final class RawEd25519 {

    private RawEd25519() {}

    public static byte[] sign(String seedHex, byte[] message) {
        try {
            return Ed25519.sign(Ed25519.privateKey(HexFormat.of().parseHex(seedHex)), message);
        } catch (GeneralSecurityException malformed) {
            throw new IllegalArgumentException(malformed);
        }
    }

    public static boolean verifies(byte[] publicKey, byte[] message, byte[] signature) {
        try {
            return Ed25519.verifies(Ed25519.publicKey(publicKey), message, signature);
        } catch (GeneralSecurityException malformed) {
            return false;
        }
    }

    public static SigningKey key(String seedHex, String vkey) {
        return SigningKey.of(HexFormat.of().parseHex(seedHex), VerifierKey.parse(vkey));
    }
}
