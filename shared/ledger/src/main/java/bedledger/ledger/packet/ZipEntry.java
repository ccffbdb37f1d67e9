package bedledger.ledger.packet;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * One record of a zip's directory (APPNOTE 4.3.12).
 *
 * @param offset of its local header
 */
record ZipEntry(String name, int flags, int method, long crc, long packed, long size, int kind, long offset) {
    static final int HEADER = 46;
    static final int LOCAL_HEADER = 30;
    static final int STORED = 0;
    static final int DEFLATED = 8;
    private static final int SIGNATURE = 0x02014b50;
    private static final int LOCAL_SIGNATURE = 0x04034b50;
    private static final int ENCRYPTED = 0x0001 | 0x0040 | 0x2000;
    private static final int DESCRIPTOR = 0x0008;
    private static final int FILE = 0x8;
    private static final int FOLDER = 0x4;
    private static final int LINK = 0xA;
    /** No text of a farm shrinks more; deflate can do a thousand, which only a bomb needs. */
    private static final long MOST_SHRUNK = 200;

    private static final long FREE = 64L * 1024;

    /** Reads the record at the buffer's position and moves behind it. */
    static ZipEntry read(ByteBuffer directory, String place) throws NotAPacket {
        if (directory.remaining() < HEADER || directory.getInt(directory.position()) != SIGNATURE) {
            throw new NotAPacket(place, "bytes that are no record of a zip's directory", "one");
        }
        int at = directory.position();
        int name = u16(directory, at + 28);
        int extra = u16(directory, at + 30);
        int comment = u16(directory, at + 32);
        if (directory.remaining() < HEADER + name + extra + comment) {
            throw new NotAPacket(place, "a record that is cut short", "a whole one");
        }
        byte[] bytes = new byte[name];
        directory.get(at + HEADER, bytes);
        directory.position(at + HEADER + name + extra + comment);
        return new ZipEntry(
                new String(bytes, StandardCharsets.ISO_8859_1),
                u16(directory, at + 8),
                u16(directory, at + 10),
                u32(directory, at + 16),
                u32(directory, at + 20),
                u32(directory, at + 24),
                u16(directory, at + 40) >>> 12,
                u32(directory, at + 42));
    }

    boolean isFolder() {
        return name.equals(MemberNames.DOCUMENTS);
    }

    boolean hasDescriptor() {
        return (flags & DESCRIPTOR) != 0;
    }

    /** Refuses what a packet never is, the most telling reason first. */
    void requireHarmless() throws NotAPacket {
        String shown = shown();
        if (!isFolder() && !MemberNames.allowed(name)) {
            throw new NotAPacket(shown, MemberNames.wrong(name), "the names of FORMAT-PACKET.md only");
        }
        if (kind == LINK) {
            throw new NotAPacket(shown, "a symbolic link", "a file");
        }
        if (kind != 0 && kind != (isFolder() ? FOLDER : FILE)) {
            throw new NotAPacket(shown, "neither a file nor a folder", "a file");
        }
        if ((flags & ENCRYPTED) != 0) {
            throw new NotAPacket(shown, "an encrypted entry", "one that everybody can read");
        }
        if (method != STORED && method != DEFLATED) {
            throw new NotAPacket(shown, "packing method " + method, "0 (stored) or 8 (deflated)");
        }
        requireBounded(shown);
    }

    private void requireBounded(String shown) throws NotAPacket {
        long most = isFolder() ? 0 : MemberNames.most(name);
        if (size > most) {
            throw new NotAPacket(shown, size + " bytes declared", "at most " + most);
        }
        if (method == STORED && packed != size) {
            throw new NotAPacket(shown, packed + " bytes stored for " + size, "the same");
        }
        if (size > FREE && size / MOST_SHRUNK > packed) {
            throw new NotAPacket(
                    shown, size + " bytes out of " + packed, "at most " + MOST_SHRUNK + " times as many (a bomb?)");
        }
    }

    /** Holds the local header against this record; other programs read that one. Returns where the data begin. */
    long dataAt(ByteBuffer local, long room) throws NotAPacket {
        boolean same = local.getInt(0) == LOCAL_SIGNATURE
                && u16(local, 6) == flags
                && u16(local, 8) == method
                && u16(local, 26) == name.length();
        boolean sizes =
                hasDescriptor() || (u32(local, 14) == crc && u32(local, 18) == packed && u32(local, 22) == size);
        long data = offset + LOCAL_HEADER + name.length() + u16(local, 28);
        if (!same || !sizes || data + packed > room) {
            throw new NotAPacket(shown(), "a header that says otherwise than the zip's directory", "the same");
        }
        return data;
    }

    /** The name as it can be shown. */
    String shown() {
        String plain = name.length() > 80 ? name.substring(0, 80) + "…" : name;
        return "'" + plain.replaceAll("[^ -~…]", "?") + "'";
    }

    static ByteBuffer buffer(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }

    static int u16(ByteBuffer from, int at) {
        return Short.toUnsignedInt(from.getShort(at));
    }

    static long u32(ByteBuffer from, int at) {
        return Integer.toUnsignedLong(from.getInt(at));
    }
}
