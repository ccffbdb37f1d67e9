package bedledger.ledger.journal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;

/** Reads lines forwards, and finds where the last one begins, with memory bounded by one line. */
final class Lines {

    /** No entry comes near it; the bound keeps a damaged file from filling the memory. */
    static final int LONGEST = 8 * 1024 * 1024;

    private static final int CHUNK = 64 * 1024;

    private final JournalFile file;
    private final Path path;

    Lines(JournalFile file, Path path) {
        this.file = file;
        this.path = path;
    }

    /** Hands on the complete lines between two offsets, the first of which begins a line. */
    Reading read(long from, long to, LineConsumer consumer) throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        ByteBuffer chunk = ByteBuffer.allocate(CHUNK);
        long lines = 0;
        long lineStart = from;
        long position = from;
        while (position < to) {
            chunk.clear().limit((int) Math.min(CHUNK, to - position));
            if (file.read(chunk, position) <= 0) {
                break;
            }
            chunk.flip();
            while (chunk.hasRemaining()) {
                byte next = chunk.get();
                position++;
                if (next != '\n') {
                    requireShort(line.size() + 1L, lineStart);
                    line.write(next);
                    continue;
                }
                consumer.accept(lineStart, line.toByteArray());
                line.reset();
                lines++;
                lineStart = position;
            }
        }
        return new Reading(lines, lineStart, file.size() - lineStart);
    }

    /** The offset behind the last line feed before this offset; 0 where there is none. */
    long startOfLineAt(long end) throws IOException {
        ByteBuffer chunk = ByteBuffer.allocate(CHUNK);
        long high = end;
        while (high > 0) {
            long low = Math.max(0, high - CHUNK);
            fill(chunk.clear().limit((int) (high - low)), low);
            for (int i = chunk.limit() - 1; i >= 0; i--) {
                if (chunk.get(i) == '\n') {
                    return low + i + 1;
                }
            }
            high = low;
        }
        return 0;
    }

    /** The bytes between two offsets, which are at most one line apart. */
    byte[] bytes(long from, long to) throws IOException {
        requireShort(to - from, from);
        ByteBuffer into = ByteBuffer.allocate((int) (to - from));
        fill(into, from);
        return into.array();
    }

    private void fill(ByteBuffer into, long from) throws IOException {
        while (into.hasRemaining()) {
            if (file.read(into, from + into.position()) <= 0) {
                throw new IOException("the file became shorter while it was read");
            }
        }
    }

    private void requireShort(long length, long lineStart) {
        if (length > LONGEST) {
            throw new JournalFailed("The journal " + path + " was not read further: the line at byte " + lineStart
                    + " is longer than " + LONGEST + " bytes, which no entry is. The file is damaged or is no journal;"
                    + " compare it with your last backup.");
        }
    }
}
