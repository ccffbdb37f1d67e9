package bedledger.cli.packet;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** The first so many bytes of a stream. */
final class Beginning extends FilterInputStream {
    private long left;

    Beginning(InputStream in, long length) {
        super(in);
        this.left = length;
    }

    @Override
    public int read() throws IOException {
        if (left == 0) {
            return -1;
        }
        left--;
        return super.read();
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
        if (left == 0) {
            return -1;
        }
        int got = super.read(into, from, (int) Math.min(length, left));
        left -= Math.max(0, got);
        return got;
    }
}
