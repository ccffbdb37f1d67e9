package bedledger.ledger.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;

/** A file on the disk. */
record ChannelFile(FileChannel channel) implements JournalFile {

    static ChannelFile forWriting(Path path) throws IOException {
        return open(path, Set.of(StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE));
    }

    static ChannelFile forReading(Path path) throws IOException {
        return open(path, Set.of(StandardOpenOption.READ));
    }

    private static ChannelFile open(Path path, Set<? extends OpenOption> how) throws IOException {
        return new ChannelFile(FileChannel.open(path, how));
    }

    @Override
    public long size() throws IOException {
        return channel.size();
    }

    @Override
    public int read(ByteBuffer into, long position) throws IOException {
        return channel.read(into, position);
    }

    @Override
    public int write(ByteBuffer from, long position) throws IOException {
        return channel.write(from, position);
    }

    @Override
    public void truncate(long size) throws IOException {
        channel.truncate(size);
    }

    @Override
    public void force() throws IOException {
        channel.force(true);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
