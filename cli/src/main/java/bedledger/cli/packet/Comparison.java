package bedledger.cli.packet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** Holds bytes as they are made against the bytes that are there, and keeps the first line in which they differ; memory is bounded. */
final class Comparison extends OutputStream {
    private static final int BEFORE = 60;
    private static final int AFTER = 60;
    /** A letter of UTF-8 has at most four bytes. */
    private static final int BYTES_BEFORE = 4 * (BEFORE + 1);

    private static final int CHUNK = 1 << 16;
    private static final String NOTHING_MORE = "the end of the file";

    private final InputStream found;
    private final byte[] chunk = new byte[CHUNK];
    private byte[] line = {};
    private final ByteArrayOutputStream made = new ByteArrayOutputStream();
    private long number = 1;
    private long same;
    private boolean differs;
    private boolean madeEnds;
    private String there = "";

    Comparison(InputStream found) {
        this.found = found;
    }

    /**
     * The first line that differs.
     *
     * @param at the first byte that differs, counted from 1
     */
    record Line(long number, long at, String found, String expected) {}

    @Override
    public void write(int one) throws IOException {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        int at = 0;
        while (at < length && !differs) {
            int wanted = Math.min(CHUNK, length - at);
            int got = found.readNBytes(chunk, 0, wanted);
            int first = Arrays.mismatch(chunk, 0, got, bytes, from + at, from + at + wanted);
            passed(first < 0 ? got : first);
            at += first < 0 ? got : first;
            if (first >= 0) {
                differs = true;
                there = first < got ? quoted(rest(Arrays.copyOfRange(chunk, first, got))) : NOTHING_MORE;
            }
        }
        for (; at < length && !madeEnds && made.size() < AFTER; at++) {
            madeEnds = bytes[from + at] == '\n';
            if (!madeEnds) {
                made.write(bytes[from + at]);
            }
        }
    }

    /** Keeps the end of the line that is being read, out of what was the same. */
    private void passed(int count) {
        same += count;
        int begin = 0;
        for (int at = 0; at < count; at++) {
            if (chunk[at] == '\n') {
                number++;
                begin = at + 1;
                line = new byte[0];
            }
        }
        byte[] longer = Arrays.copyOf(line, line.length + count - begin);
        System.arraycopy(chunk, begin, longer, line.length, count - begin);
        line = Arrays.copyOfRange(longer, Math.max(0, longer.length - BYTES_BEFORE), longer.length);
    }

    /** What stands there up to the end of the line, as far as it is shown. */
    private byte[] rest(byte[] begun) throws IOException {
        ByteArrayOutputStream rest = new ByteArrayOutputStream();
        rest.writeBytes(begun);
        rest.writeBytes(found.readNBytes(Math.max(0, AFTER - begun.length)));
        byte[] all = rest.toByteArray();
        int end = 0;
        while (end < Math.min(AFTER, all.length) && all[end] != '\n') {
            end++;
        }
        return Arrays.copyOf(all, end);
    }

    /** After the last byte was made: whether anything differs, here or by what is left. */
    Optional<Line> finish() throws IOException {
        if (differs) {
            return Optional.of(new Line(number, same + 1, there, quoted(made.toByteArray())));
        }
        int more = found.read();
        return more < 0
                ? Optional.empty()
                : Optional.of(new Line(number, same + 1, quoted(rest(new byte[] {(byte) more})), NOTHING_MORE));
    }

    /** The differing part with a little of what stands before it in its line. */
    private String quoted(byte[] part) {
        String before = new String(line, StandardCharsets.UTF_8);
        String shown = before.length() > BEFORE ? "…" + before.substring(before.length() - BEFORE) : before;
        String text = (shown + new String(part, StandardCharsets.UTF_8)).strip();
        return "“" + text + (part.length < AFTER ? "”" : "…”");
    }
}
