package bedledger.projections.soil;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What may be said of the change between two soil samplings.
 *
 * @param change % C, later less first
 * @param leastDetectable % C; empty where it cannot be known
 * @param comparable whether laboratory, method, depth and time of year were the same both times
 * @param severalBeds whether one composite stands for several beds
 */
public record CarbonChange(double change, OptionalDouble leastDetectable, boolean comparable, boolean severalBeds) {
    /** What may be said. */
    public enum Says {
        ROSE,
        FELL,
        TOO_SMALL,
        NOT_COMPARABLE,
        CANNOT_BE_KNOWN
    }

    /** Rose or fell only if the samplings can be compared and the change passes the least that could be detected. */
    public Says says() {
        if (leastDetectable.isEmpty()) {
            return Says.CANNOT_BE_KNOWN;
        }
        if (!comparable) {
            return Says.NOT_COMPARABLE;
        }
        if (Math.abs(change) <= leastDetectable.getAsDouble()) {
            return Says.TOO_SMALL;
        }
        return change > 0 ? Says.ROSE : Says.FELL;
    }

    public String words() {
        String measured = String.format(Locale.ROOT, "the samples differ by %+.2f %% C", change);
        return switch (says()) {
            case ROSE -> "Soil carbon rose: " + measured + ", more than " + least() + " that could be detected.";
            case FELL -> "Soil carbon fell: " + measured + ", more than " + least() + " that could be detected.";
            case TOO_SMALL ->
                "No change can be told: " + measured + ", and less than " + least() + " cannot be told from chance.";
            case NOT_COMPARABLE ->
                "No change can be told: " + measured
                        + ", but laboratory, method, depth or time of year was not the same both times.";
            case CANNOT_BE_KNOWN ->
                "No change can be told: " + measured + ", but "
                        + (severalBeds ? "one composite of several beds" : "one sample")
                        + " at a time does not show how much samples differ by chance. Take five or more, each from its own"
                        + " spot, each sent in apart.";
        };
    }

    private String least() {
        return String.format(Locale.ROOT, "the %.2f %% C", leastDetectable.orElseThrow());
    }
}
