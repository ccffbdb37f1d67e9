package bedledger.projections.nitrogen;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** Days on which a bed was the same, the first of them the day after {@code after}, the last {@code until}. */
record Span(LocalDate after, LocalDate until, Ground ground) {
    long days() {
        return ChronoUnit.DAYS.between(after, until);
    }
}
