package bedledger.ledger.journal;

import bedledger.ledger.aside.SetAside;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The append-only file whose forced lines are the commits of a book; see FORMAT.md.
 *
 * <p>One writer at a time: a second one is refused while the first has the journal open. A line is any bytes without a
 * line feed, at most 8 MiB; in a book it is one entry as canonical JSON. Not for use by several threads at once.
 */
public final class Journal implements AutoCloseable {

    private final Path path;
    private final JournalFile file;
    private final WriterLock lock;
    private final Recovery recovery;
    private long length;
    private boolean doubtful;

    Journal(Path path, JournalFile file, WriterLock lock) {
        this.path = path;
        this.file = file;
        this.lock = lock;
        try {
            this.recovery = recover();
        } catch (IOException failed) {
            throw JournalMessages.notOpened(path, failed);
        }
    }

    /**
     * Opens a journal for writing, makes it where there is none, and recovers it from a write that was cut short.
     *
     * @throws JournalFailed where it is open elsewhere, cannot be written, or cannot be recovered
     */
    public static Journal open(Path path) {
        WriterLock lock = WriterLock.take(path);
        try {
            JournalFile file = ChannelFile.forWriting(path);
            SetAside.forceFolder(path.toAbsolutePath().resolveSibling("."));
            return openOrClose(path, file, lock);
        } catch (IOException failed) {
            lock.close();
            throw JournalMessages.notOpened(path, failed);
        } catch (JournalFailed failed) {
            lock.close();
            throw failed;
        }
    }

    private static Journal openOrClose(Path path, JournalFile file, WriterLock lock) throws IOException {
        try {
            return new Journal(path, file, lock);
        } catch (JournalFailed failed) {
            file.close();
            throw failed;
        }
    }

    private Recovery recover() throws IOException {
        long acknowledged = acknowledgedEnd(file, path);
        long size = file.size();
        Recovery done = Recovery.nothing();
        if (acknowledged < size) {
            Path copy = SetAside.copy(file::read, path, acknowledged);
            file.truncate(acknowledged);
            done = new Recovery(size - acknowledged, Optional.of(copy));
        }
        // Lines that a dead process wrote but did not live to force become commits here.
        file.force();
        PendingBatch.remove(path);
        length = acknowledged;
        return done;
    }

    /** Where acknowledged lines end: behind the last line feed, and before a batch that is not whole. */
    private static long acknowledgedEnd(JournalFile file, Path path) throws IOException {
        Optional<PendingBatch> pending = PendingBatch.read(path);
        if (pending.isPresent()
                && pending.get().offset() < file.size()
                && !pending.get().isWholeIn(file)) {
            return pending.get().offset();
        }
        return new Lines(file, path).startOfLineAt(file.size());
    }

    /** What opening had to put right. */
    public Recovery recovery() {
        return recovery;
    }

    /**
     * Appends lines and forces them to the disk before returning; returning is the commit.
     *
     * <p>All or nothing, also across a crash, however many lines.
     *
     * @param lines each without a line feed, not empty, at most 8 MiB; together below 2 GiB
     * @throws IllegalArgumentException for a line that is none
     * @throws JournalFailed where the disk refuses; the message says whether the journal is as before
     */
    public void append(List<byte[]> lines) {
        if (doubtful) {
            throw JournalMessages.doubtful(path);
        }
        if (lines.isEmpty()) {
            return;
        }
        byte[] batch = joined(lines);
        try {
            if (lines.size() > 1) {
                PendingBatch.of(length, batch, lines.size()).write(path);
            }
            write(ByteBuffer.wrap(batch));
        } catch (IOException failed) {
            throw putBack(lines.size(), batch.length, failed);
        }
        force(lines.size(), batch.length);
        length += batch.length;
        if (lines.size() > 1) {
            removePending();
        }
    }

    private void write(ByteBuffer batch) throws IOException {
        while (batch.hasRemaining()) {
            file.write(batch, length + batch.position());
        }
    }

    /** After a failed force nobody knows what reached the disk, so nothing more is written before it is opened again. */
    private void force(int lines, int bytes) {
        try {
            file.force();
        } catch (IOException failed) {
            doubtful = true;
            throw putBack(lines, bytes, failed);
        }
    }

    private JournalFailed putBack(int lines, int bytes, IOException failed) {
        try {
            file.truncate(length);
            file.force();
            PendingBatch.remove(path);
            return JournalMessages.putBack(path, length, lines, bytes, failed);
        } catch (IOException alsoFailed) {
            doubtful = true;
            failed.addSuppressed(alsoFailed);
            return JournalMessages.notPutBack(path, length, bytes, failed);
        }
    }

    /** A side file left behind does no harm: the batch it names is whole, and opening removes it. */
    private void removePending() {
        try {
            PendingBatch.remove(path);
        } catch (IOException leftForTheNextOpening) {
            return;
        }
    }

    private static byte[] joined(List<byte[]> lines) {
        ByteArrayOutputStream batch = new ByteArrayOutputStream();
        for (byte[] line : lines) {
            JournalMessages.requireLine(line);
            batch.writeBytes(line);
            batch.write('\n');
        }
        return batch.toByteArray();
    }

    /** Bytes of acknowledged lines; the offset of the next line. */
    public long length() {
        return length;
    }

    /** The last line, found from the end. */
    public Optional<byte[]> lastLine() {
        if (length == 0) {
            return Optional.empty();
        }
        try {
            Lines lines = new Lines(file, path);
            return Optional.of(lines.bytes(lines.startOfLineAt(length - 1), length - 1));
        } catch (IOException failed) {
            throw JournalMessages.notRead(path, failed);
        }
    }

    /**
     * Hands on every line from an offset that begins a line.
     *
     * @throws JournalFailed where the file cannot be read, or a line is longer than 8 MiB
     */
    public Reading lines(long fromByteOffset, LineConsumer consumer) {
        try {
            return new Lines(file, path).read(fromByteOffset, length, consumer);
        } catch (IOException failed) {
            throw JournalMessages.notRead(path, failed);
        }
    }

    /**
     * Reads a journal without opening it for writing; an unfinished end is passed over and counted, and nothing is changed.
     *
     * @throws JournalFailed where the file cannot be read, or a line is longer than 8 MiB
     */
    public static Reading read(Path path, long fromByteOffset, LineConsumer consumer) {
        try (JournalFile file = ChannelFile.forReading(path)) {
            return new Lines(file, path).read(fromByteOffset, acknowledgedEnd(file, path), consumer);
        } catch (IOException failed) {
            throw JournalMessages.notRead(path, failed);
        }
    }

    /**
     * Counts the bytes that opening this journal for writing would set aside, and changes nothing.
     *
     * @throws JournalFailed where the file cannot be read
     */
    public static long unacknowledged(Path path) {
        try (JournalFile file = ChannelFile.forReading(path)) {
            return file.size() - acknowledgedEnd(file, path);
        } catch (IOException failed) {
            throw JournalMessages.notRead(path, failed);
        }
    }

    /** Closes the file and lets the next writer in. */
    @Override
    public void close() {
        try {
            file.close();
        } catch (IOException failed) {
            throw JournalMessages.notClosed(path, failed);
        } finally {
            lock.close();
        }
    }
}
