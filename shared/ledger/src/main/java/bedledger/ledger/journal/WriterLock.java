package bedledger.ledger.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Keeps a second writer out while a journal is open.
 *
 * <p>On a file of its own: POSIX drops a lock as soon as any reader in the process closes the locked file.
 */
final class WriterLock implements AutoCloseable {

    private final FileChannel channel;

    private WriterLock(FileChannel channel) {
        this.channel = channel;
    }

    static WriterLock take(Path journal) {
        Path path = journal.resolveSibling(journal.getFileName() + ".lock");
        try {
            FileChannel channel = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!locked(channel)) {
                channel.close();
                throw new JournalBusy("The journal " + journal
                        + " was not opened: another program is writing to it. Close the book there first.");
            }
            return new WriterLock(channel);
        } catch (IOException failed) {
            throw JournalMessages.notOpened(journal, failed);
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
        }
    }
}
