package bedledger.cli.packet;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Holds bytes as they are made against the bytes that are there, and keeps the first line in which they differ. */
final class Comparison extends OutputStream {
    private static final int BEFORE = 60;
    private static final int AFTER = 60;
    private static final String NOTHING_MORE = "the end of the file";

    private final InputStream found;
    private final ByteArrayOutputStream line = new ByteArrayOutputStream();
    private final ByteArrayOutputStream made = new ByteArrayOutputStream();
    private long number = 1;
    private boolean differs;
    private boolean madeEnds;
    private String there = "";

    Comparison(InputStream found) {
        this.found = new BufferedInputStream(found, 1 << 16);
    }

    /** The first line that differs. */
    record Line(long number, String found, String expected) {}

    @Override
    public void write(int one) throws IOException {
        if (differs) {
            keep(one);
            return;
        }
        int is = found.read();
        if (is == (one & 0xFF)) {
            if (is == '\n') {
                number++;
                line.reset();
            } else {
                line.write(is);
            }
            return;
        }
        differs = true;
        there = is < 0 ? NOTHING_MORE : quoted(rest(is));
        keep(one);
    }

    private void keep(int one) {
        madeEnds |= one == '\n';
        if (!madeEnds && made.size() < AFTER) {
            made.write(one);
        }
    }

    private byte[] rest(int first) throws IOException {
        ByteArrayOutputStream rest = new ByteArrayOutputStream();
        for (int next = first; next >= 0 && next != '\n' && rest.size() < AFTER; next = found.read()) {
            rest.write(next);
        }
        return rest.toByteArray();
    }

    /** After the last byte was made: whether anything differs, here or by what is left. */
    Optional<Line> finish() throws IOException {
        if (differs) {
            return Optional.of(new Line(number, there, quoted(made.toByteArray())));
        }
        int more = found.read();
        return more < 0 ? Optional.empty() : Optional.of(new Line(number, quoted(rest(more)), NOTHING_MORE));
    }

    /** The differing part with a little of what stands before it in its line. */
    private String quoted(byte[] part) {
        String before = line.toString(StandardCharsets.UTF_8);
        String shown = before.length() > BEFORE ? "…" + before.substring(before.length() - BEFORE) : before;
        String text = (shown + new String(part, StandardCharsets.UTF_8)).strip();
        return "“" + text + (part.length < AFTER ? "”" : "…”");
    }
}
