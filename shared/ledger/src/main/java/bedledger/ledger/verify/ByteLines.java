package bedledger.ledger.verify;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
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

    ByteLines(InputStream in, int longest) {
        this.in = new BufferedInputStream(in, 1 << 16);
        this.longest = longest;
    }

    /** The next line, or nothing at the end. */
    @Nullable
    Line next() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream(512);
        long length = 0;
        int next = in.read();
        if (next < 0) {
            return null;
        }
        while (next >= 0 && next != '\n') {
            if (length < longest) {
                line.write(next);
            }
            length++;
            next = in.read();
        }
        return new Line(line.toByteArray(), length, next == '\n');
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
