package bedledger.language;

import org.jspecify.annotations.Nullable;

/**
 * What one entry puts into a lot or takes out of it.
 *
 * @param amount as written, never below zero
 * @param other the lot it came from or went to, where lots are joined or split
 */
public record LotMove(
        Entry entry, Way way, Amount amount, @Nullable LotId other) {
    /** How produce comes into a lot or leaves it. */
    public enum Way {
        HARVESTED(1, "harvested"),
        FOUND(1, "found"),
        JOINED(1, "joined"),
        SPLIT_OFF(1, "split off"),
        SOLD(-1, "sold"),
        DONATED(-1, "donated"),
        LOST(-1, "lost"),
        INTO_ANOTHER(-1, "put into another lot"),
        TAKEN_BACK(1, "taken back");

        private final int sign;
        private final String words;

        Way(int sign, String words) {
            this.sign = sign;
            this.words = words;
        }

        /** 1 for what comes in, -1 for what goes out. */
        public int sign() {
            return sign;
        }

        public String words() {
            return words;
        }

        /** Whether a lot begins so. */
        public boolean begins() {
            return this == HARVESTED || this == FOUND || this == JOINED || this == SPLIT_OFF;
        }
    }
}
