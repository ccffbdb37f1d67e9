package bedledger.ledger.verify;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Lines of bytes, one after another, with memory bounded by the longest line that is looked at. */
final class ByteLines implements Closeable {

    /**
     * One line.
     *
     * @param bytes without the line feed; only the beginning where it is too long
     * @param length in bytes, all of them
     * @param finished whether a line feed followed
     */
    @SuppressWarnings("ArrayRecordComponent") // handed on once, never compared
    record Line(byte[] bytes, long length, boolean finished) {

        boolean tooLong() {
            return length > bytes.length;
        }
    }

    private final InputStream in;
    private final int longest;
    private final byte[] chunk = new byte[1 << 16];
    private int at;
    private int end;

    ByteLines(InputStream in, int longest) {
        this.in = in;
        this.longest = longest;
    }

    /** The next line, or nothing at the end. */
    @Nullable
    Line next() throws IOException {
        if (isAtEnd()) {
            return null;
        }
        byte[] line = {};
        long length = 0;
        boolean finished = false;
        while (!finished && !isAtEnd()) {
            int from = at;
            while (at < end && chunk[at] != '\n') {
                at++;
            }
            line = joined(line, from, Math.min(at - from, longest - line.length));
            length += at - from;
            finished = at < end;
            at++;
        }
        return new Line(line, length, finished);
    }

    private boolean isAtEnd() throws IOException {
        if (at >= end) {
            at = 0;
            end = in.read(chunk);
        }
        return end < 0;
    }

    private byte[] joined(byte[] begun, int from, int count) {
        byte[] all = Arrays.copyOf(begun, begun.length + count);
        System.arraycopy(chunk, from, all, begun.length, count);
        return all;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
