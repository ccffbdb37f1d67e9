package bedledger.projections.nitrogen;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.TreeMap;

/** Normalised days of one bed, summed up at each change of its ground, so that any span costs two look-ups. */
final class BedClock {
    private record Mark(Ground ground, NormalisedDays.Sums sums) {}

    private final NormalisedDays days;
    private final NavigableMap<LocalDate, Mark> marks = new TreeMap<>();

    BedClock(BedSpans spans, NormalisedDays days, LocalDate asOf) {
        this.days = days;
        List<Span> all = spans.between(days.first(), asOf);
        NormalisedDays.Sums sums = new NormalisedDays.Sums();
        marks.put(days.first(), new Mark(Ground.BARE, sums.copy()));
        for (Span span : all) {
            marks.put(span.after(), new Mark(span.ground(), sums.copy()));
            days.add(span.after(), span.until(), span.ground(), sums);
        }
    }

    private NormalisedDays.Sums at(LocalDate day) {
        Map.Entry<LocalDate, Mark> mark = Objects.requireNonNull(marks.floorEntry(day), "before the first day");
        NormalisedDays.Sums sums = mark.getValue().sums().copy();
        days.add(mark.getKey(), day, mark.getValue().ground(), sums);
        return sums;
    }

    /** The days after one day up to and with another. */
    Passed passed(LocalDate after, LocalDate until) {
        return new Passed(at(after), at(until));
    }

    /** The days between two moments; of {@code unknown} of them no temperature is known. */
    final class Passed {
        private final double uncovered;
        private final double[] covered = new double[3];
        private final int unknown;

        private Passed(NormalisedDays.Sums before, NormalisedDays.Sums after) {
            uncovered = after.uncovered - before.uncovered;
            unknown = after.unknown - before.unknown;
            for (int at = 0; at < covered.length; at++) {
                covered[at] = after.covered[at] - before.covered[at];
            }
        }

        int unknown() {
            return unknown;
        }

        /** Normalised days at a moisture of the open bed and one under the tarp, and at a warming under the tarp. */
        double at(double moisture, double tarpMoisture, double warming) {
            return uncovered * moisture + days.underTarp(covered, warming) * tarpMoisture;
        }
    }
}
