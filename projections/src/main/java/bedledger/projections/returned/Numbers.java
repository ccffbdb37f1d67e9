package bedledger.projections.returned;

import java.util.Locale;

/** Plain numbers for sentences. */
final class Numbers {
    private Numbers() {}

    /** At most two decimals, without idle zeros. */
    static String two(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
