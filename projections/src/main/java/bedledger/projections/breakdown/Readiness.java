package bedledger.projections.breakdown;

import bedledger.projections.breakdown.Parameter.End;
import bedledger.projections.estimate.Deviation;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.Grounds;
import bedledger.projections.tables.Citation;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Works out how far the pieces on one bed cover it, and from when on little enough. */
final class Readiness {
    private static final double NEVER = Double.POSITIVE_INFINITY;
    private final List<Going> pieces;
    private final double squareMetres;
    private final BedDays days;
    private final int start;
    private final int lastWork;
    private final int workedIn;
    private final Parameter wait = Constants.get("wait after green matter");

    /**
     * For one bed.
     *
     * @param pieces at least one
     * @param start index of the day from which the flip is counted
     * @param lastWork index of the last work that moved residue, or the start
     */
    Readiness(List<Going> pieces, double squareMetres, BedDays days, int start, int lastWork) {
        this.pieces = pieces;
        this.squareMetres = squareMetres;
        this.days = days;
        this.start = start;
        this.lastWork = lastWork;
        this.workedIn = days.lastWorkedIn(start);
    }

    /** Cover factor times mass per area on a day, under what is assumed. */
    private double thickness(int at, Assumptions assumed) {
        double sum = 0;
        for (Going each : pieces) {
            sum += assumed.of(each.group.coverFactor()) * assumed.of(each.mass) * each.onTop(at, assumed);
        }
        return sum / squareMetres;
    }

    /** The share of the bed that is covered on a day. */
    Estimate cover(int at) {
        double best = Decomposition.cover(1, thickness(at, Assumptions.BEST));
        SortedMap<String, Deviation> moved = new TreeMap<>();
        causes().forEach((name, known) -> moved.put(
                name,
                new Deviation(
                        Decomposition.cover(1, thickness(at, new Assumptions(name, End.LOW))) - best,
                        Decomposition.cover(1, thickness(at, new Assumptions(name, End.HIGH))) - best,
                        known,
                        "")));
        return new Estimate(best, "", moved, grounds(), true).by("cover = 1 - exp(-cover factor x mass per area)");
    }

    /** Every cause of doubt, with whether its range is known. */
    private Map<String, Boolean> causes() {
        Map<String, Boolean> causes = new TreeMap<>();
        for (Going each : pieces) {
            each.parameters().forEach(one -> causes.put(one.name(), one.range() != null));
            causes.put(each.group.coverFactor().name(), each.group.coverFactor().range() != null);
            each.mass.deviations().forEach((name, deviation) -> causes.put(name, deviation.rangeKnown()));
        }
        return causes;
    }

    private Grounds grounds() {
        TreeSet<Citation> cited = new TreeSet<>();
        TreeSet<Long> entries = new TreeSet<>();
        for (Going each : pieces) {
            each.parameters().forEach(one -> cited.add(one.citation()));
            cited.add(each.group.coverFactor().citation());
            cited.addAll(each.mass.grounds().citations());
            entries.addAll(each.mass.grounds().entries());
        }
        return new Grounds(new TreeSet<>(), cited, entries, new TreeSet<>());
    }

    /** The first day after the last work on which the cover is little enough; never, or not a number without weather. */
    private double crossing(double limit, Assumptions assumed) {
        int end = days.covered.length;
        for (int at = lastWork; at < end; at++) {
            double thick = thickness(at, assumed);
            if (Double.isNaN(thick)) {
                return Double.NaN;
            }
            if (thick <= limit) {
                return at;
            }
        }
        return NEVER;
    }

    private double ready(double limit, Assumptions assumed) {
        double crossing = crossing(limit, assumed);
        double waited = workedIn < 0 ? start : workedIn + assumed.of(wait);
        return Math.max(crossing, waited);
    }

    /** The date for a use; empty where the weather up to it is not known. */
    Optional<ReadyDate> date(Use use, double cover, Weather weather) {
        double limit = -Math.log1p(-cover);
        double best = ready(limit, Assumptions.BEST);
        if (Double.isNaN(best)) {
            return Optional.empty();
        }
        int horizon = days.covered.length - 1;
        double capped = Math.min(best, horizon);
        SortedMap<String, Deviation> moved = new TreeMap<>();
        List<Double> ends = new ArrayList<>();
        Map<String, Boolean> causes = causes();
        causes.put(wait.name(), true);
        for (Map.Entry<String, Boolean> cause : causes.entrySet()) {
            double low = ready(limit, new Assumptions(cause.getKey(), End.LOW));
            double high = ready(limit, new Assumptions(cause.getKey(), End.HIGH));
            if (cause.getValue()) {
                ends.add(low);
                ends.add(high);
            }
            moved.put(
                    cause.getKey(),
                    new Deviation(capped(low, horizon) - capped, capped(high, horizon) - capped, cause.getValue(), ""));
        }
        boolean open = ends.stream().anyMatch(each -> Double.isNaN(each) || each > horizon);
        Estimate whole = new Estimate(capped - start, "days", moved, grounds(), true);
        return Optional.of(dates(use, cover, weather, best, open, whole, limit));
    }

    private static double capped(double index, int horizon) {
        return Double.isNaN(index) ? horizon : Math.min(index, horizon);
    }

    private ReadyDate dates(
            Use use, double cover, Weather weather, double best, boolean open, Estimate whole, double limit) {
        LocalDate first = days.climate.day(start);
        boolean never = best > days.covered.length - 1;
        LocalDate likely = first.plusDays(Math.round(whole.best()));
        return new ReadyDate(
                use,
                cover,
                first.plusDays((long) Math.floor(whole.low())),
                never ? Optional.empty() : Optional.of(likely),
                never || open ? Optional.empty() : Optional.of(first.plusDays((long) Math.ceil(whole.high()))),
                workedIn >= 0 && crossing(limit, Assumptions.BEST) < workedIn + wait.value(),
                whole,
                weather.over(first, likely));
    }
}
