package bedledger.ledger.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Keeps a second writer out while a journal is open.
 *
 * <p>On a file of its own: POSIX drops a lock as soon as any reader in the process closes the locked file.
 */
final class WriterLock implements AutoCloseable {

    /** For the same reason a second attempt in this process must not even open, and so close, the file. */
    private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

    private final FileChannel channel;
    private final Path path;

    private WriterLock(FileChannel channel, Path path) {
        this.channel = channel;
        this.path = path;
    }

    static WriterLock take(Path journal) {
        try {
            Path folder = journal.toAbsolutePath().resolveSibling(".").toRealPath();
            Path path = folder.resolve(journal.getFileName() + ".lock");
            if (!HELD_HERE.add(path)) {
                throw JournalMessages.openElsewhere(journal);
            }
            return take(journal, path);
        } catch (IOException failed) {
            throw JournalMessages.notOpened(journal, failed);
        }
    }

    private static WriterLock take(Path journal, Path path) throws IOException {
        boolean taken = false;
        try {
            FileChannel channel = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            taken = locked(channel);
            if (!taken) {
                channel.close();
                throw JournalMessages.openElsewhere(journal);
            }
            return new WriterLock(channel, path);
        } finally {
            if (!taken) {
                HELD_HERE.remove(path);
            }
        }
    }

    private static boolean locked(FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException openInThisProcess) {
            return false;
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException releasedWithTheProcess) {
            return;
        } finally {
            HELD_HERE.remove(path);
        }
    }
}
