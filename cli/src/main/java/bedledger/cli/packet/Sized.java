package bedledger.cli.packet;

import bedledger.ledger.packet.PacketZip.Content;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** A content that remembers how many bytes it came to. */
final class Sized implements Content {
    private final Content content;
    private long size;

    Sized(Content content) {
        this.content = content;
    }

    /** Bytes written so far. */
    long size() {
        return size;
    }

    @Override
    public void writeTo(OutputStream out) throws IOException {
        size = 0;
        content.writeTo(new FilterOutputStream(out) {
            @Override
            public void write(int one) throws IOException {
                size++;
                out.write(one);
            }

            @Override
            public void write(byte[] from, int at, int length) throws IOException {
                size += length;
                out.write(from, at, length);
            }
        });
    }
}
