package bedledger.cli;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands until it is set, so that every run of a test is written at the same moments. */
final class SteppingClock extends Clock {
    private Instant now;

    SteppingClock(Instant now) {
        this.now = now;
    }

    void set(Instant moment) {
        now = moment;
    }

    void step(Duration by) {
        now = now.plus(by);
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }
}
