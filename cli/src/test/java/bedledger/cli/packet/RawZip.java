package bedledger.cli.packet;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** A zip made field by field, so that any of them can be a lie (APPNOTE 4.3). */
final class RawZip {
    private final ByteArrayOutputStream data = new ByteArrayOutputStream();
    private final ByteArrayOutputStream directory = new ByteArrayOutputStream();
    private final List<Integer> offsets = new ArrayList<>();
    private int entries;
    int flags;
    int attributes;
    int moreDeclared;
    String otherName = "";

    RawZip add(String name, byte[] content) {
        return add(name, 0, content, content.length, content);
    }

    RawZip deflated(String name, byte[] content) {
        Deflater deflater = new Deflater(9, true);
        deflater.setInput(content);
        deflater.finish();
        byte[] packed = new byte[content.length + 100];
        int length = deflater.deflate(packed);
        deflater.end();
        return add(name, 8, java.util.Arrays.copyOf(packed, length), content.length, content);
    }

    RawZip add(String name, int method, byte[] packed, int size, byte[] content) {
        CRC32 crc = new CRC32();
        crc.update(content);
        int offset = data.size();
        offsets.add(offset);
        byte[] inLocal = (otherName.isEmpty() ? name : otherName).getBytes(StandardCharsets.ISO_8859_1);
        byte[] bytes = name.getBytes(StandardCharsets.ISO_8859_1);
        data.writeBytes(buffer(30)
                .putInt(0x04034b50)
                .putShort((short) 20)
                .putShort((short) flags)
                .putShort((short) method)
                .putInt(0)
                .putInt((int) crc.getValue())
                .putInt(packed.length)
                .putInt(size + moreDeclared)
                .putShort((short) inLocal.length)
                .putShort((short) 0)
                .array());
        data.writeBytes(inLocal);
        data.writeBytes(packed);
        directory.writeBytes(buffer(46)
                .putInt(0x02014b50)
                .putShort((short) 0x0314)
                .putShort((short) 20)
                .putShort((short) flags)
                .putShort((short) method)
                .putInt(0)
                .putInt((int) crc.getValue())
                .putInt(packed.length)
                .putInt(size + moreDeclared)
                .putShort((short) bytes.length)
                .putShort((short) 0)
                .putShort((short) 0)
                .putShort((short) 0)
                .putShort((short) 0)
                .putInt(attributes)
                .putInt(offset)
                .array());
        directory.writeBytes(bytes);
        entries++;
        return this;
    }

    /** The zip as it should be. */
    byte[] bytes() {
        return bytes(entries, 0);
    }

    /** With another count, and bytes between the files and the directory. */
    byte[] bytes(int counted, int hidden) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(data.toByteArray());
        all.writeBytes(new byte[hidden]);
        int from = all.size();
        all.writeBytes(directory.toByteArray());
        all.writeBytes(buffer(22)
                .putInt(0x06054b50)
                .putInt(0)
                .putShort((short) counted)
                .putShort((short) counted)
                .putInt(directory.size())
                .putInt(from)
                .putShort((short) 0)
                .array());
        return all.toByteArray();
    }

    private static ByteBuffer buffer(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }
}
