package bedledger.projections.nitrogen;

import bedledger.projections.estimate.Derived;
import bedledger.projections.estimate.Estimate;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * One residue on one bed, ready for the residue module.
 *
 * @param nitrogen kg
 * @param workedIn the day it was worked in, if it was
 * @param parts its nitrogen, C:N, dry mass and the rest, ready for the module
 */
record ResidueCase(
        BedSpans spans,
        BedClock clock,
        LocalDate day,
        Estimate nitrogen,
        double squareMetres,
        Optional<LocalDate> workedIn,
        Derived.Parts parts) {
    /** The end of its time on top, as seen from a day. */
    LocalDate onTopUntil(LocalDate until) {
        return workedIn.filter(each -> each.isBefore(until)).orElse(until);
    }

    List<Span> spans(LocalDate until) {
        return spans.between(day, until);
    }

    static long days(List<Span> spans, Predicate<Ground> on) {
        return spans.stream()
                .filter(span -> on.test(span.ground()))
                .mapToLong(Span::days)
                .sum();
    }
}
