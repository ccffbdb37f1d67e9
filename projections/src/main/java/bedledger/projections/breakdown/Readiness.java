package bedledger.projections.breakdown;

import bedledger.projections.breakdown.Parameter.End;
import bedledger.projections.estimate.Deviation;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.Grounds;
import bedledger.projections.tables.Citation;
import bedledger.projections.weather.Weather;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Works out how far the pieces on one bed cover it, and from when on little enough. */
final class Readiness {
    private static final int WORST = 3;
    private static final double SMALL = 0.01;
    private final List<Going> pieces;
    private final double squareMetres;
    private final BedDays days;
    private final int start;
    private final int lastWork;
    private final int workedIn;
    private final Map<String, Boolean> causes;
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
        this.causes = causes();
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
        causes.forEach((name, known) -> moved.put(
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

    /** The causes of doubt as factors on the thickness of a day: the log of the factor at each end. */
    private record Doubt(String name, double atLow, double atHigh, boolean known) {
        double down() {
            return known ? Math.min(0, Math.min(atLow, atHigh)) : 0;
        }

        double up() {
            return known ? Math.max(0, Math.max(atLow, atHigh)) : 0;
        }
    }

    private List<Doubt> doubts(int at) {
        double best = Math.log(thickness(at, Assumptions.BEST));
        List<Doubt> doubts = new ArrayList<>();
        causes.forEach((name, known) -> doubts.add(new Doubt(
                name,
                Math.log(thickness(at, new Assumptions(name, End.LOW))) - best,
                Math.log(thickness(at, new Assumptions(name, End.HIGH))) - best,
                known)));
        return doubts;
    }

    /** The thickness with every known doubt on one side. */
    private double thickness(int at, End end) {
        double best = thickness(at, Assumptions.BEST);
        if (end == End.BEST || Double.isNaN(best) || best <= 0) {
            return best;
        }
        double squares = doubts(at).stream()
                .mapToDouble(end == End.LOW ? Doubt::down : Doubt::up)
                .map(each -> each * each)
                .sum();
        return best * Math.exp(end == End.LOW ? -Math.sqrt(squares) : Math.sqrt(squares));
    }

    /** The first day from the last work on with little enough on it, by halves, for it only falls; past the last day if never. */
    private int crossing(double limit, End end) {
        int low = lastWork;
        int high = days.covered.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (thickness(middle, end) > limit) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private int waited(End end) {
        return workedIn < 0 ? start : workedIn + (int) Math.round(wait.at(end));
    }

    /** The date for a use; empty where the weather up to it is not known. */
    Optional<ReadyDate> date(Use use, double cover, Weather weather) {
        double limit = -Math.log1p(-cover);
        int best = crossing(limit, End.BEST);
        int horizon = days.covered.length - 1;
        boolean unknown = best <= horizon && Double.isNaN(thickness(best, Assumptions.BEST));
        if (unknown) {
            return Optional.empty();
        }
        int likely = Math.max(best, waited(End.BEST));
        int earliest = Math.max(crossing(limit, End.LOW), waited(End.LOW));
        int slow = crossing(limit, End.HIGH);
        boolean open = slow > horizon || Double.isNaN(thickness(slow, Assumptions.BEST));
        LocalDate first = days.climate.day(start);
        return Optional.of(new ReadyDate(
                use,
                cover,
                days.climate.day(Math.min(earliest, horizon)),
                likely > horizon ? Optional.empty() : Optional.of(days.climate.day(likely)),
                open ? Optional.empty() : Optional.of(days.climate.day(Math.max(slow, waited(End.HIGH)))),
                best < waited(End.BEST),
                worst(Math.min(best, horizon)),
                weather.over(first, days.climate.day(Math.min(likely, horizon)))));
    }

    /** What moves the mass of a day most. */
    private List<String> worst(int at) {
        if (!(thickness(at, Assumptions.BEST) > 0)) {
            return List.of();
        }
        return doubts(at).stream()
                .filter(each -> each.known() && each.up() - each.down() > SMALL)
                .sorted(Comparator.comparingDouble((Doubt each) -> each.down() - each.up()))
                .limit(WORST)
                .map(Doubt::name)
                .toList();
    }
}
