package bedledger.ledger.packet;

import java.io.IOException;

/** The container cannot be taken for a packet: where, what was found there, and what should be. */
public final class NotAPacket extends IOException {
    private static final long serialVersionUID = 1L;

    private final String place;
    private final String found;
    private final String expected;

    NotAPacket(String place, String found, String expected) {
        super(place + ": found " + found + ", expected " + expected);
        this.place = place;
        this.found = found;
        this.expected = expected;
    }

    /** The member or the part of the container. */
    public String place() {
        return place;
    }

    public String found() {
        return found;
    }

    public String expected() {
        return expected;
    }
}
