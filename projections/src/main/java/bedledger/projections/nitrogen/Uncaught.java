package bedledger.projections.nitrogen;

import bedledger.projections.estimate.Estimate;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The days within a year of a return on which nothing grew on the bed, and what was set free on them.
 *
 * @param until the last day looked at
 * @param leakyDays days on which rain could wash it out: bare, or under a mulch
 * @param tarpedDays days under a tarp: kept from the rain, but it stands as nitrate when the tarp comes off
 * @param onLeakyDays kg N
 * @param underTarp kg N
 */
public record Uncaught(
        LocalDate until,
        long leakyDays,
        long tarpedDays,
        Optional<Estimate> onLeakyDays,
        Optional<Estimate> underTarp) {}
