package bedledger.ledger.note;

import java.io.ByteArrayOutputStream;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Arrays;
import java.util.HexFormat;

/** Ed25519 of RFC 8032 as the JDK offers it, with keys as the bare 32 bytes that notes carry. */
final class Ed25519 {

    static final String ALGORITHM = "Ed25519";
    static final int KEY_LENGTH = 32;
    static final int SIGNATURE_LENGTH = 64;

    /** What stands before the 32 bytes in RFC 8410 §4 (SubjectPublicKeyInfo) and §7 (OneAsymmetricKey). */
    private static final byte[] PUBLIC_HEAD = HexFormat.of().parseHex("302a300506032b6570032100");

    private static final byte[] PRIVATE_HEAD = HexFormat.of().parseHex("302e020100300506032b657004220420");

    private Ed25519() {}

    static PublicKey publicKey(byte[] raw) throws GeneralSecurityException {
        return KeyFactory.getInstance(ALGORITHM).generatePublic(new X509EncodedKeySpec(joined(PUBLIC_HEAD, raw)));
    }

    static PrivateKey privateKey(byte[] seed) throws GeneralSecurityException {
        return KeyFactory.getInstance(ALGORITHM).generatePrivate(new PKCS8EncodedKeySpec(joined(PRIVATE_HEAD, seed)));
    }

    /** The last 32 bytes of the standard encoding, public and private alike. */
    static byte[] raw(byte[] encoded) {
        return Arrays.copyOfRange(encoded, encoded.length - KEY_LENGTH, encoded.length);
    }

    static byte[] sign(PrivateKey key, byte[] message) {
        try {
            Signature signature = Signature.getInstance(ALGORITHM);
            signature.initSign(key);
            signature.update(message);
            return signature.sign();
        } catch (GeneralSecurityException cannotSign) {
            throw new IllegalStateException("This Java cannot sign with Ed25519 (JEP 339)", cannotSign);
        }
    }

    static boolean verifies(PublicKey key, byte[] message, byte[] signed) {
        try {
            Signature signature = Signature.getInstance(ALGORITHM);
            signature.initVerify(key);
            signature.update(message);
            return signed.length == SIGNATURE_LENGTH && signature.verify(signed);
        } catch (GeneralSecurityException malformed) {
            return false;
        }
    }

    static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            out.writeBytes(part);
        }
        return out.toByteArray();
    }
}
