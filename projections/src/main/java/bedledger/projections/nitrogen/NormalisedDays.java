package bedledger.projections.nitrogen;

import bedledger.projections.tables.Parameter;
import bedledger.projections.tables.Parameters;
import bedledger.projections.tables.Range;
import bedledger.projections.weather.SoilWarmth;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Normalised days (15 °C, before any moisture) of a run of calendar days, summed once so that a span costs two look-ups.
 *
 * <p>Under a tarp the soil is warmer by an amount that is itself in doubt, so the sums are kept for its low, best and high.
 */
final class NormalisedDays {
    private final LocalDate first;
    private final double[] open;
    private final double[][] tarped;
    private final int[] missing;
    private final Range warmerRange;
    private final double warmer;

    NormalisedDays(Parameters table, SoilWarmth soil, LocalDate first, LocalDate last) {
        this.first = first;
        Parameter tarp = table.get("tarp", "warmer by");
        this.warmer = tarp.value();
        this.warmerRange = Objects.requireNonNull(tarp.range());
        int days = (int) Math.max(0, ChronoUnit.DAYS.between(first, last) + 1);
        open = new double[days + 1];
        tarped = new double[3][days + 1];
        missing = new int[days + 1];
        sum(table, soil, days);
    }

    private void sum(Parameters table, SoilWarmth soil, int days) {
        Responses responses = new Responses(table);
        double[] warmings = {warmerRange.low(), warmer, warmerRange.high()};
        for (int day = 0; day < days; day++) {
            OptionalDouble mean = soil.on(first.plusDays(day));
            missing[day + 1] = missing[day] + (mean.isPresent() ? 0 : 1);
            double celsius = mean.orElse(Double.NEGATIVE_INFINITY);
            open[day + 1] = open[day] + responses.residueWarmth(celsius);
            for (int at = 0; at < warmings.length; at++) {
                tarped[at][day + 1] = tarped[at][day] + responses.residueWarmth(celsius + warmings[at]);
            }
        }
    }

    LocalDate first() {
        return first;
    }

    /** The days after one day up to and with another, all of one ground, added to a sum. */
    void add(LocalDate after, LocalDate until, Ground ground, Sums sums) {
        int from = index(after);
        int to = index(until);
        sums.unknown += missing[to] - missing[from];
        if (ground != Ground.TARPED) {
            sums.uncovered += open[to] - open[from];
            return;
        }
        for (int at = 0; at < sums.covered.length; at++) {
            sums.covered[at] += tarped[at][to] - tarped[at][from];
        }
    }

    /** Between the low, best and high warming under a tarp. */
    double underTarp(double[] covered, double warming) {
        double lower = warming < warmer ? covered[0] : covered[1];
        double upper = warming < warmer ? covered[1] : covered[2];
        double from = warming < warmer ? warmerRange.low() : warmer;
        double to = warming < warmer ? warmer : warmerRange.high();
        return lower + (upper - lower) * (warming - from) / (to - from);
    }

    /** Normalised days without moisture: of open ground, under a tarp by three warmings; and days of unknown temperature. */
    static final class Sums {
        double uncovered;
        final double[] covered = new double[3];
        int unknown;

        Sums copy() {
            Sums copy = new Sums();
            copy.uncovered = uncovered;
            System.arraycopy(covered, 0, copy.covered, 0, covered.length);
            copy.unknown = unknown;
            return copy;
        }
    }

    private int index(LocalDate day) {
        long days = ChronoUnit.DAYS.between(first, day) + 1;
        if (days < 0 || days >= open.length) {
            throw new IllegalArgumentException(day + " lies outside the days summed up from " + first);
        }
        return (int) days;
    }
}
