package bedledger.domain;

import bedledger.language.ActId;
import java.time.Instant;
import java.util.random.RandomGenerator;

/** Makes time-ordered ids: UUID version 7 (RFC 9562 §5.7), each greater than the one before it even within a millisecond. */
public final class ActIds {
    private static final int COUNTS = 1 << 12;
    private final RandomGenerator random;
    private long millisecond;
    private int count;

    public ActIds(RandomGenerator random) {
        this.random = random;
    }

    public ActId next(Instant at) {
        long now = at.toEpochMilli();
        if (now > millisecond) {
            millisecond = now;
            count = 0;
        } else if (++count == COUNTS) {
            millisecond++;
            count = 0;
        }
        long variant = 0x8000_0000_0000_0000L | (random.nextLong() & 0x3FFF_FFFF_FFFF_FFFFL);
        String tail = "%016x".formatted(variant);
        String head = "%012x".formatted(millisecond);
        return new ActId(head.substring(0, 8) + "-" + head.substring(8) + "-7%03x-".formatted(count)
                + tail.substring(0, 4) + "-" + tail.substring(4));
    }
}
