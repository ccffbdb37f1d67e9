package bedledger.ledger.packet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A zip, read without trust: its directory is held against every local header, and nothing may lie between, before or behind them.
 *
 * <p>What another program might read otherwise than this one is refused, so that both see the same files. Memory is bounded by the
 * directory.
 */
public final class ZipMembers implements Members {
    private static final int END = 22;
    private static final int END_SIGNATURE = 0x06054b50;
    private static final int MOST_ENTRIES = 10_000;
    private static final int MOST_DIRECTORY = 4 * 1024 * 1024;
    private static final long MOST_BYTES = 4L * 1024 * 1024 * 1024;
    private static final int DESCRIPTOR = 12;
    private static final int DESCRIPTOR_SIGNATURE = 0x08074b50;
    private static final String DIRECTORY = "the zip's directory";

    /** A member and where its packed bytes begin. */
    private record Placed(ZipEntry entry, long data) {}

    private final FileChannel file;
    private final Map<String, Placed> members = new LinkedHashMap<>();

    private ZipMembers(FileChannel file) {
        this.file = file;
    }

    /** Reads the directory; throws {@link NotAPacket} with the place of the first thing that is not as it should be. */
    public static ZipMembers open(Path path) throws IOException {
        FileChannel file = FileChannel.open(path, StandardOpenOption.READ);
        boolean usable = false;
        try {
            ZipMembers members = new ZipMembers(file);
            members.readDirectory();
            usable = true;
            return members;
        } finally {
            if (!usable) {
                file.close();
            }
        }
    }

    private void readDirectory() throws IOException {
        long end = file.size() - END;
        ByteBuffer tail = end < 0 ? ZipEntry.buffer(END) : read(end, END);
        if (tail.getInt(0) != END_SIGNATURE) {
            throw new NotAPacket("the file", "something else than a whole zip", "a packet as it was made");
        }
        int entries = ZipEntry.u16(tail, 10);
        long size = ZipEntry.u32(tail, 12);
        long from = ZipEntry.u32(tail, 16);
        if (entries > MOST_ENTRIES || size > MOST_DIRECTORY) {
            throw new NotAPacket(
                    DIRECTORY, entries + " entries, " + size + " bytes", "at most " + MOST_ENTRIES + " entries");
        }
        if (tail.getInt(4) != 0 || ZipEntry.u16(tail, 8) != entries || ZipEntry.u16(tail, 20) != 0) {
            throw new NotAPacket(DIRECTORY, "counts that do not agree, or a comment", "one file, without comment");
        }
        if (from + size != end) {
            throw new NotAPacket(DIRECTORY, "a place that is not its own", "byte " + (end - size));
        }
        List<ZipEntry> all = entries(read(from, (int) size), entries);
        place(all, from);
    }

    private static List<ZipEntry> entries(ByteBuffer directory, int count) throws NotAPacket {
        Map<String, ZipEntry> byName = new LinkedHashMap<>();
        long bytes = 0;
        for (int at = 1; at <= count; at++) {
            ZipEntry entry = ZipEntry.read(directory, DIRECTORY + ", record " + at);
            entry.requireHarmless();
            bytes += entry.size();
            if (byName.put(entry.name(), entry) != null) {
                throw new NotAPacket(entry.shown(), "the name twice", "each name once");
            }
        }
        if (directory.hasRemaining()) {
            throw new NotAPacket(DIRECTORY, "more records than it counts", Integer.toString(count));
        }
        if (bytes > MOST_BYTES) {
            throw new NotAPacket(DIRECTORY, bytes + " bytes declared in all", "at most " + MOST_BYTES);
        }
        return new ArrayList<>(byName.values());
    }

    /** Each local header begins where the one before it ends. */
    private void place(List<ZipEntry> entries, long room) throws IOException {
        Map<String, Placed> placed = new LinkedHashMap<>();
        List<ZipEntry> inOrder = new ArrayList<>(entries);
        inOrder.sort(Comparator.comparingLong(ZipEntry::offset));
        long free = 0;
        for (ZipEntry entry : inOrder) {
            if (entry.offset() != free || room - free < ZipEntry.LOCAL_HEADER) {
                throw new NotAPacket(entry.shown(), "bytes between the files, or files over each other", "none");
            }
            long data = entry.dataAt(read(free, ZipEntry.LOCAL_HEADER), room);
            ByteBuffer name = read(free + ZipEntry.LOCAL_HEADER, entry.name().length());
            if (!StandardCharsets.ISO_8859_1.decode(name).toString().equals(entry.name())) {
                throw new NotAPacket(entry.shown(), "another name before its data", "the same");
            }
            free = behind(entry, data + entry.packed(), room);
            placed.put(entry.name(), new Placed(entry, data));
        }
        if (free != room) {
            throw new NotAPacket(DIRECTORY, "bytes between the files and it", "none");
        }
        entries.stream()
                .filter(entry -> !entry.isFolder())
                .forEach(entry -> members.put(entry.name(), placed.get(entry.name())));
    }

    /** A program that writes a stream puts checksum and sizes behind the data (APPNOTE 4.3.9), with or without a signature. */
    private long behind(ZipEntry entry, long end, long room) throws IOException {
        if (!entry.hasDescriptor()) {
            return end;
        }
        if (end + DESCRIPTOR + Integer.BYTES <= room) {
            ByteBuffer signed = read(end, DESCRIPTOR + Integer.BYTES);
            if (signed.getInt(0) == DESCRIPTOR_SIGNATURE && describes(signed, Integer.BYTES, entry)) {
                return end + DESCRIPTOR + Integer.BYTES;
            }
        }
        if (end + DESCRIPTOR <= room && describes(read(end, DESCRIPTOR), 0, entry)) {
            return end + DESCRIPTOR;
        }
        throw new NotAPacket(entry.shown(), "another checksum or size behind its data", "the directory's");
    }

    private static boolean describes(ByteBuffer bytes, int at, ZipEntry entry) {
        return ZipEntry.u32(bytes, at) == entry.crc()
                && ZipEntry.u32(bytes, at + Integer.BYTES) == entry.packed()
                && ZipEntry.u32(bytes, at + 2 * Integer.BYTES) == entry.size();
    }

    private ByteBuffer read(long from, int length) throws IOException {
        ByteBuffer into = ZipEntry.buffer(length);
        while (into.hasRemaining()) {
            if (file.read(into, from + into.position()) < 0) {
                throw new NotAPacket("the file", "an end too early", "a whole zip");
            }
        }
        return into.flip();
    }

    @Override
    public List<String> names() {
        return List.copyOf(members.keySet());
    }

    @Override
    public boolean has(String name) {
        return members.containsKey(name);
    }

    @Override
    public long size(String name) {
        Placed member = members.get(name);
        return member == null ? 0 : member.entry().size();
    }

    @Override
    public InputStream open(String name) throws IOException {
        Placed member = members.get(name);
        if (member == null) {
            throw new NotAPacket("'" + name + "'", "no such member", "one");
        }
        return new MemberStream(file, member.data(), member.entry());
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
