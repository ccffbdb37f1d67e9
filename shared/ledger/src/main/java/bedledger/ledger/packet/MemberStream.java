package bedledger.ledger.packet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.jspecify.annotations.Nullable;

/** The bytes of one member: never more than were declared, and at the end their checksum. */
final class MemberStream extends InputStream {
    private static final int CHUNK = 64 * 1024;

    private final FileChannel file;
    private final ZipEntry entry;
    private final long packedEnd;
    private final @Nullable Inflater inflater;
    private final CRC32 crc = new CRC32();
    private final byte[] chunk = new byte[CHUNK];
    private long position;
    private long left;
    private boolean checked;

    MemberStream(FileChannel file, long data, ZipEntry entry) {
        this.file = file;
        this.entry = entry;
        this.position = data;
        this.packedEnd = data + entry.packed();
        this.left = entry.size();
        this.inflater = entry.method() == ZipEntry.DEFLATED ? new Inflater(true) : null;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : Byte.toUnsignedInt(one[0]);
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
        if (length == 0) {
            return 0;
        }
        if (left == 0) {
            checkEnd();
            return -1;
        }
        int wanted = (int) Math.min(length, left);
        int got = inflater == null ? stored(into, from, wanted) : inflated(inflater, into, from, wanted);
        crc.update(into, from, got);
        left -= got;
        return got;
    }

    private int stored(byte[] into, int from, int wanted) throws IOException {
        int got = file.read(ByteBuffer.wrap(into, from, wanted), position);
        if (got <= 0) {
            throw broken("an end too early");
        }
        position += got;
        return got;
    }

    private int inflated(Inflater in, byte[] into, int from, int wanted) throws IOException {
        try {
            while (true) {
                int got = in.inflate(into, from, wanted);
                if (got > 0) {
                    return got;
                }
                if (in.finished() || in.needsDictionary()) {
                    throw broken("fewer bytes than it declares");
                }
                feed(in);
            }
        } catch (DataFormatException damaged) {
            throw broken("packed bytes that cannot be unpacked");
        }
    }

    private void feed(Inflater in) throws IOException {
        int wanted = (int) Math.min(CHUNK, packedEnd - position);
        int got = wanted <= 0 ? -1 : file.read(ByteBuffer.wrap(chunk, 0, wanted), position);
        if (got <= 0) {
            throw broken("an end too early");
        }
        position += got;
        in.setInput(chunk, 0, got);
    }

    private void checkEnd() throws IOException {
        if (checked) {
            return;
        }
        checked = true;
        if (inflater != null) {
            checkNothingMore(inflater);
        }
        if (crc.getValue() != entry.crc()) {
            throw broken("bytes with another checksum than it declares");
        }
    }

    private void checkNothingMore(Inflater in) throws IOException {
        try {
            byte[] more = new byte[1];
            while (!in.finished()) {
                if (in.inflate(more) > 0) {
                    throw broken("more bytes than it declares");
                }
                if (!in.finished()) {
                    feed(in);
                }
            }
        } catch (DataFormatException damaged) {
            throw broken("packed bytes that cannot be unpacked");
        }
        if (in.getRemaining() > 0 || position < packedEnd) {
            throw broken("bytes behind its end");
        }
    }

    private NotAPacket broken(String found) {
        return new NotAPacket(entry.shown(), found, "what its header declares");
    }

    @Override
    public void close() {
        if (inflater != null) {
            inflater.end();
        }
    }
}
