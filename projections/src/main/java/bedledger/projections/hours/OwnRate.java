package bedledger.projections.hours;

import bedledger.projections.estimate.Estimate;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * How long one kind of work took on this farm, from its own records alone.
 *
 * @param acts how many such acts are on record
 * @param timed how many of them have people, minutes and an area
 * @param perSquareMetre person-minutes per m², the mean of those acts with its interval; empty without any
 * @param weighed how many have people, minutes and a weight
 * @param perKilogram person-minutes per kg fresh; empty without any
 * @param entries those that were timed
 */
public record OwnRate(
        String operation,
        int acts,
        int timed,
        Optional<Estimate> perSquareMetre,
        int weighed,
        Optional<Estimate> perKilogram,
        SortedSet<Long> entries) {
    public OwnRate {
        entries = Collections.unmodifiableSortedSet(new TreeSet<>(entries));
    }
}
