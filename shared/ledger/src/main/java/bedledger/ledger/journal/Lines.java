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
        byte[] chunk = new byte[CHUNK];
        ByteBuffer into = ByteBuffer.wrap(chunk);
        long lines = 0;
        long lineStart = from;
        long position = from;
        while (position < to) {
            into.clear().limit((int) Math.min(CHUNK, to - position));
            int got = file.read(into, position);
            if (got <= 0) {
                break;
            }
            int start = 0;
            for (int end = lineFeed(chunk, start, got); end < got; end = lineFeed(chunk, start, got)) {
                take(chunk, start, end, line, lineStart);
                consumer.accept(lineStart, line.toByteArray());
                line.reset();
                lines++;
                start = end + 1;
                lineStart = position + start;
            }
            take(chunk, start, got, line, lineStart);
            position += got;
        }
        return new Reading(lines, lineStart, file.size() - lineStart);
    }

    /** Where the next line feed stands; the end where there is none. */
    private static int lineFeed(byte[] chunk, int from, int end) {
        int at = from;
        while (at < end && chunk[at] != '\n') {
            at++;
        }
        return at;
    }

    private void take(byte[] chunk, int from, int end, ByteArrayOutputStream line, long lineStart) {
        requireShort(line.size() + (long) (end - from), lineStart);
        line.write(chunk, from, end - from);
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
