package bedledger.cli;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Lets nothing through to a terminal that it would obey: a note in a book from elsewhere must not move its cursor or rename its window. */
final class PlainOutput extends FilterOutputStream {
    private static final int DELETE = 0x7F;

    PlainOutput(OutputStream to) {
        super(new BufferedOutputStream(to));
    }

    @Override
    public void write(int one) throws IOException {
        int octet = one & 0xFF;
        boolean obeyed = (octet < ' ' && octet != '\n' && octet != '\r' && octet != '\t') || octet == DELETE;
        out.write(obeyed ? '?' : octet);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        for (int at = from; at < from + length; at++) {
            write(bytes[at]);
        }
    }
}
