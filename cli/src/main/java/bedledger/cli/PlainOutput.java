package bedledger.cli;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/**
 * Lets nothing through to a terminal that it would obey: a note in a book from elsewhere must not move its cursor or rename its window.
 *
 * <p>UTF-8; the control functions C0, DEL and C1 of ECMA-48 come out as question marks, but line ends and tabs.
 */
final class PlainOutput extends FilterOutputStream {
    private static final int DELETE = 0x7F;
    /** In UTF-8 the controls C1, U+0080 to U+009F, are this octet and one below 0xA0. */
    private static final int BEFORE_C1 = 0xC2;

    private static final int AFTER_C1 = 0xA0;

    private boolean held;

    PlainOutput(OutputStream to) {
        super(new BufferedOutputStream(to));
    }

    @Override
    public void write(int one) throws IOException {
        int octet = one & 0xFF;
        if (held) {
            held = false;
            if (octet >= 0x80 && octet < AFTER_C1) {
                out.write('?');
                return;
            }
            out.write(BEFORE_C1);
        }
        if (octet == BEFORE_C1) {
            held = true;
        } else {
            out.write(isObeyed(octet) ? '?' : octet);
        }
    }

    private static boolean isObeyed(int octet) {
        return (octet < ' ' && octet != '\n' && octet != '\r' && octet != '\t') || octet == DELETE;
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        if (!held && isPlain(bytes, from, length)) {
            out.write(bytes, from, length);
            return;
        }
        for (int at = from; at < from + length; at++) {
            write(bytes[at]);
        }
    }

    /** Nearly all that is printed is; it goes through as it is. */
    private static boolean isPlain(byte[] bytes, int from, int length) {
        for (int at = from; at < from + length; at++) {
            int octet = bytes[at] & 0xFF;
            if (octet == BEFORE_C1 || isObeyed(octet)) {
                return false;
            }
        }
        return true;
    }
}
