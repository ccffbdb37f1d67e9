package bedledger.projections.estimate;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Estimates in words. */
final class Figures {
    private static final MathContext THREE_DIGITS = new MathContext(3);

    private Figures() {}

    static String three(double value) {
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(THREE_DIGITS);
        int decimals = Math.max(0, 2 - (rounded.precision() - rounded.scale() - 1));
        return rounded.setScale(decimals, RoundingMode.UNNECESSARY).toPlainString();
    }

    static String inWords(Estimate estimate) {
        String best = (three(estimate.best()) + " " + estimate.unit()).strip();
        if (!estimate.hasBand()) {
            return estimate.deviations().isEmpty() ? best : best + " (no range known)";
        }
        return best + " (" + three(estimate.low()) + " to " + three(estimate.high()) + ")";
    }

    static List<String> remarks(Estimate estimate) {
        List<String> sentences = new ArrayList<>(estimate.grounds().notes());
        sentences.remove(Estimate.LOW_CLIPPED);
        if (estimate.isOneSided() && estimate.best() > 0) {
            String end = estimate.high() - estimate.best() <= 1e-9 * Math.abs(estimate.best()) ? "above" : "below";
            sentences.add("one-sided: the known ranges put nothing " + end + " the best value" + sides(estimate));
        }
        if (estimate.isClipped() && estimate.best() > 0) {
            sentences.add(Estimate.LOW_CLIPPED);
        }
        if (!estimate.rangeUnknownFor().isEmpty()) {
            sentences.add("no range known for " + String.join(", ", estimate.rangeUnknownFor())
                    + ": the true doubt is wider than shown");
        }
        return List.copyOf(sentences);
    }

    private static String sides(Estimate estimate) {
        String because = String.join(
                "; ",
                estimate.deviations().values().stream()
                        .map(Deviation::side)
                        .filter(each -> !each.isEmpty())
                        .toList());
        return because.isEmpty() ? "" : "; " + because;
    }
}
