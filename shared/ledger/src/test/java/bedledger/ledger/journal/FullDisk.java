package bedledger.ledger.journal;

import java.io.IOException;
import java.nio.ByteBuffer;

/** A disk with room for so many bytes, which takes what it can before it refuses; and which can fail in other ways. */
final class FullDisk implements JournalFile {

    private final JournalFile disk;
    long room = Long.MAX_VALUE;
    boolean refusesToForce;
    boolean refusesToTruncate;

    FullDisk(JournalFile disk) {
        this.disk = disk;
    }

    @Override
    public long size() throws IOException {
        return disk.size();
    }

    @Override
    public int read(ByteBuffer into, long position) throws IOException {
        return disk.read(into, position);
    }

    @Override
    public int write(ByteBuffer from, long position) throws IOException {
        int taken = (int) Math.min(room, from.remaining());
        if (taken == 0) {
            throw new IOException("No space left on device");
        }
        int limit = from.limit();
        disk.write(from.limit(from.position() + taken), position);
        from.limit(limit);
        room -= taken;
        return taken;
    }

    @Override
    public void truncate(long size) throws IOException {
        if (refusesToTruncate) {
            throw new IOException("Input/output error");
        }
        disk.truncate(size);
    }

    @Override
    public void force() throws IOException {
        if (refusesToForce) {
            throw new IOException("Input/output error");
        }
        disk.force();
    }

    @Override
    public void close() throws IOException {
        disk.close();
    }
}
