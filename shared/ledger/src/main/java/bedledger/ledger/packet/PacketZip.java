package bedledger.ledger.packet;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/** Writes a packet's zip: the same names, times and contents give the same bytes (with the same zlib). */
public final class PacketZip {
    private static final long LARGEST = 0xFFFF_FFFFL;
    private static final int LEVEL = 6;
    private static final int VERSION = 20;
    private static final int EARLIEST = 1980;
    private static final int LATEST = 2107;

    /** Writes the content of a member. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    private final FileChannel file;
    private final int dosTime;
    private final ByteArrayOutputStream directory = new ByteArrayOutputStream();
    private int entries;

    /** Begins a packet in an empty file; every member bears this time, to two seconds. */
    public PacketZip(FileChannel file, LocalDateTime time) {
        this.file = file;
        this.dosTime = dos(time);
    }

    private static int dos(LocalDateTime time) {
        int year = Math.max(EARLIEST, Math.min(LATEST, time.getYear())) - EARLIEST;
        int day = year << 9 | time.getMonthValue() << 5 | time.getDayOfMonth();
        int second = time.getHour() << 11 | time.getMinute() << 5 | time.getSecond() / 2;
        return day << 16 | second;
    }

    /** Adds a member; documents are stored as they are, what the program writes itself is deflated. */
    public void add(String name, Content content) throws IOException {
        boolean deflated = !MemberNames.isDocument(name);
        long offset = file.position();
        byte[] bytes = name.getBytes(StandardCharsets.US_ASCII);
        write(ByteBuffer.wrap(header(bytes, deflated, 0, 0, 0)));
        long data = file.position();
        Counted counted = new Counted();
        Deflater deflater = new Deflater(LEVEL, true);
        try (OutputStream out = sink(deflated, deflater)) {
            counted.over(out, content);
        } finally {
            deflater.end();
        }
        long end = file.position();
        if (end > LARGEST || counted.size > MemberNames.most(name)) {
            throw new IOException("the packet is too large: " + name + " comes to " + counted.size + " bytes (at most "
                    + MemberNames.most(name) + "; the whole at most 4 GiB)");
        }
        byte[] header = header(bytes, deflated, counted.crc.getValue(), end - data, counted.size);
        file.write(ByteBuffer.wrap(header), offset);
        directory.writeBytes(record(header, offset));
        entries++;
    }

    private OutputStream sink(boolean deflated, Deflater deflater) {
        OutputStream raw = new FilterOutputStream(new BufferedOutputStream(Channels.newOutputStream(file), 1 << 16)) {
            @Override
            public void write(byte[] from, int at, int length) throws IOException {
                out.write(from, at, length);
            }

            @Override
            public void close() throws IOException {
                flush(); // the channel stays open for what follows
            }
        };
        return deflated ? new DeflaterOutputStream(raw, deflater, 1 << 16) : raw;
    }

    /** Local header, APPNOTE 4.3.7. */
    private byte[] header(byte[] name, boolean deflated, long crc, long packed, long size) {
        return ZipEntry.buffer(ZipEntry.LOCAL_HEADER + name.length)
                .putInt(0x04034b50)
                .putShort((short) VERSION)
                .putShort((short) 0)
                .putShort((short) (deflated ? ZipEntry.DEFLATED : ZipEntry.STORED))
                .putInt(dosTime)
                .putInt((int) crc)
                .putInt((int) packed)
                .putInt((int) size)
                .putShort((short) name.length)
                .putShort((short) 0)
                .put(name)
                .array();
    }

    /** The directory's record, APPNOTE 4.3.12: the local header's middle, and where it stands. */
    private static byte[] record(byte[] local, long offset) {
        int name = local.length - ZipEntry.LOCAL_HEADER;
        return ZipEntry.buffer(ZipEntry.HEADER + name)
                .putInt(0x02014b50)
                .putShort((short) VERSION)
                .put(local, 4, 24)
                .putShort((short) 0)
                .putShort((short) 0)
                .putShort((short) 0)
                .putShort((short) 0)
                .putInt(0)
                .putInt((int) offset)
                .put(local, ZipEntry.LOCAL_HEADER, name)
                .array();
    }

    /** Writes the directory and forces the file to the disk. */
    public void finish() throws IOException {
        long from = file.position();
        if (from > LARGEST) {
            throw new IOException("the packet is too large: it holds at most 4 GiB");
        }
        byte[] records = directory.toByteArray();
        write(ByteBuffer.wrap(records));
        write(ZipEntry.buffer(22)
                .putInt(0x06054b50)
                .putInt(0)
                .putShort((short) entries)
                .putShort((short) entries)
                .putInt(records.length)
                .putInt((int) from)
                .putShort((short) 0)
                .flip());
        file.force(true);
    }

    private void write(ByteBuffer bytes) throws IOException {
        while (bytes.hasRemaining()) {
            file.write(bytes);
        }
    }

    /** Size and checksum of what passes. */
    private static final class Counted {
        private final CRC32 crc = new CRC32();
        private long size;

        void over(OutputStream out, Content content) throws IOException {
            content.writeTo(new FilterOutputStream(out) {
                @Override
                public void write(int one) throws IOException {
                    crc.update(one);
                    size++;
                    out.write(one);
                }

                @Override
                public void write(byte[] from, int at, int length) throws IOException {
                    crc.update(from, at, length);
                    size += length;
                    out.write(from, at, length);
                }

                @Override
                public void close() throws IOException {
                    flush();
                }
            });
        }
    }
}
