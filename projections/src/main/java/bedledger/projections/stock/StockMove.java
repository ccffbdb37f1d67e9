package bedledger.projections.stock;

import bedledger.language.Amount;
import bedledger.language.Entry;
import java.util.Optional;

/**
 * What one entry brings in of a material, seed lot or pile, or takes from it.
 *
 * @param amount over all beds and trays; empty where it is not recorded
 */
public record StockMove(Entry entry, Way way, Optional<Amount> amount) {
    /** How it comes in or is used. */
    public enum Way {
        RECEIVED(1, "received"),
        MADE(1, "made"),
        SPREAD(-1, "spread"),
        SPRAYED(-1, "sprayed"),
        SOWN(-1, "sown"),
        PLANTED(-1, "planted"),
        MIXED(-1, "put into a mix"),
        IN_TRAYS(-1, "used in trays"),
        WASHED_WITH(-1, "washed with"),
        LOST(-1, "lost"),
        COUNTED(0, "counted");

        private final int sign;
        private final String words;

        Way(int sign, String words) {
            this.sign = sign;
            this.words = words;
        }

        /** 1 for what comes in, -1 for what is used, 0 for a count. */
        public int sign() {
            return sign;
        }

        public String words() {
            return words;
        }
    }
}
