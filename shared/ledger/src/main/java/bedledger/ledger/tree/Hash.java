package bedledger.ledger.tree;

import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;

/** A SHA-256 value: 32 bytes, equal by content; it holds a hash and computes none. */
public final class Hash {

    /** Bytes in a hash. */
    public static final int LENGTH = 32;

    private final byte[] bytes;

    private Hash(byte[] bytes) {
        this.bytes = bytes;
    }

    /**
     * Takes a copy of 32 bytes.
     *
     * @throws IllegalArgumentException for any other length
     */
    public static Hash of(byte[] bytes) {
        if (bytes.length != LENGTH) {
            throw new IllegalArgumentException("A hash of " + bytes.length + " bytes was refused: SHA-256 gives "
                    + LENGTH + ". Copy the whole value.");
        }
        return new Hash(bytes.clone());
    }

    /** Reads 64 lower-case hexadecimal digits, as {@link #hex} writes them. */
    public static Hash parseHex(String hex) {
        Hash hash = of(HexFormat.of().parseHex(hex));
        if (!hash.hex().equals(hex)) {
            throw new IllegalArgumentException("The hash " + hex + " was refused: it has one spelling, in lower case");
        }
        return hash;
    }

    /** Reads standard padded base64, in the one spelling that {@link #base64} writes. */
    public static Hash parseBase64(String base64) {
        Hash hash = of(Base64.getDecoder().decode(base64));
        if (!hash.base64().equals(base64)) {
            throw new IllegalArgumentException(
                    "The hash " + base64 + " was refused: it has one spelling, " + hash.base64());
        }
        return hash;
    }

    /** Returns a copy of the 32 bytes. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** Returns 64 lower-case hexadecimal digits. */
    public String hex() {
        return HexFormat.of().formatHex(bytes);
    }

    /** Returns standard base64 with padding, 44 characters. */
    public String base64() {
        return Base64.getEncoder().encodeToString(bytes);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Hash that && Arrays.equals(bytes, that.bytes);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(bytes);
    }

    /** The hexadecimal spelling, which {@link #parseHex} reads back. */
    @Override
    public String toString() {
        return hex();
    }
}
