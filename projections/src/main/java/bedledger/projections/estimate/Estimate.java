package bedledger.projections.estimate;

import bedledger.projections.tables.Coefficient;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleBinaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * A figure with its low and high end, the causes of its doubt, and its grounds.
 *
 * <p>How doubts combine is written in the package description and in {@link #RULE}. The unit is free text ("kg"); figures
 * of different units are not added.
 */
public record Estimate(
        double best, String unit, SortedMap<String, Deviation> deviations, Grounds grounds, boolean neverNegative) {
    /** The combining rule as a report prints it. */
    public static final String RULE =
            "How low and high are found: each coefficient and each measurement is moved alone to its low"
                    + " and to its high end, and the figure worked out again. The same coefficient used twice is wrong the same way"
                    + " both times, so its effects add up or cancel. Different ones are taken as independent: their effects on one"
                    + " side are squared, added and rooted. A coefficient without a known range moves neither end; it is named, and"
                    + " the true doubt is wider than shown. A mass below nothing is cut at 0 and marked. Treating the ends of"
                    + " published ranges this way is a judgement.";

    static final String LOW_CLIPPED = "low end clipped at 0";
    private static final double NOTHING = 1e-9;
    /** One for each row of the tables that is used: thousands of figures then share its words. */
    private static final Map<Coefficient, Estimate> SHARES = new ConcurrentHashMap<>();

    public Estimate {
        if (!Double.isFinite(best)) {
            throw new IllegalArgumentException("an estimate must be a number, not " + best);
        }
        deviations = Deviations.of(deviations).besides(best);
    }

    /** A number without doubt, such as a weighed mass taken as given. */
    public static Estimate exact(double value, String unit) {
        return new Estimate(value, unit, Deviations.NONE, Grounds.NONE, value >= 0);
    }

    /** A coefficient in kg per kg, whatever its printed unit. */
    public static Estimate share(Coefficient coefficient) {
        return SHARES.computeIfAbsent(
                coefficient, each -> in(each, each.quantity().kilogramsPerKilogram(), "kg/kg"));
    }

    private static Estimate in(Coefficient coefficient, double factor, String unit) {
        Deviations one = Deviations.of(coefficient.key(), Deviation.of(coefficient, factor));
        Grounds cited = Grounds.NONE.citing(coefficient.citation());
        return new Estimate(coefficient.value() * factor, unit, one, cited, true);
    }

    /** A measurement with the half-width of its interval, under the name it is doubted by. */
    public static Estimate measured(String name, double value, double halfWidth, String unit) {
        if (halfWidth < 0) {
            throw new IllegalArgumentException("the half-width of " + name + " is below nothing: " + halfWidth);
        }
        return doubted(name, value, unit, new Deviation(-halfWidth, halfWidth, true, ""));
    }

    /** A measurement of which no interval can be given. */
    public static Estimate measuredWithoutInterval(String name, double value, String unit) {
        return doubted(name, value, unit, new Deviation(-0.01 * value, 0.01 * value, false, ""));
    }

    private static Estimate doubted(String name, double value, String unit, Deviation deviation) {
        return new Estimate(value, unit, Deviations.of(name, deviation), Grounds.NONE, false);
    }

    public Estimate plus(Estimate other) {
        return with(other, sameUnit(other), Double::sum, neverNegative && other.neverNegative);
    }

    /** The difference; it may fall below nothing until it is clipped. */
    public Estimate minus(Estimate other) {
        return with(other, sameUnit(other), (one, two) -> one - two, false);
    }

    public Estimate times(double exact) {
        return with(exact(exact, ""), unit, (one, two) -> one * two, neverNegative && exact >= 0);
    }

    /** This mass times a share; the unit stays. */
    public Estimate times(Estimate share) {
        return with(share, unit, (one, two) -> one * two, neverNegative && share.neverNegative);
    }

    /** This over a share; the unit stays. */
    public Estimate dividedBy(Estimate share) {
        return ratioTo(share, unit);
    }

    /** This over another figure, in a unit of its own; a cause that would bring the divisor to nothing has no range. */
    public Estimate ratioTo(Estimate other, String newUnit) {
        if (other.best <= 0) {
            throw new ArithmeticException("nothing can be divided by " + other.best + " " + other.unit);
        }
        return with(
                other, newUnit, (one, two) -> two <= 0 ? Double.NaN : one / two, neverNegative && other.neverNegative);
    }

    private Estimate with(Estimate other, String newUnit, DoubleBinaryOperator sum, boolean positive) {
        double newBest = sum.applyAsDouble(best, other.best);
        Deviations moved = Deviations.of(deviations).with(Deviations.of(other.deviations), (mine, theirs) -> {
            double atLow = sum.applyAsDouble(best + mine.atLow(), other.best + theirs.atLow()) - newBest;
            double atHigh = sum.applyAsDouble(best + mine.atHigh(), other.best + theirs.atHigh()) - newBest;
            return joined(mine, theirs, atLow, atHigh, newBest);
        });
        return new Estimate(newBest, newUnit, moved, grounds.and(other.grounds), positive);
    }

    private static Deviation joined(Deviation mine, Deviation theirs, double atLow, double atHigh, double best) {
        boolean known = mine.rangeKnown() && theirs.rangeKnown();
        String side = mine.side().isEmpty() ? theirs.side() : mine.side();
        if (!Double.isFinite(atLow) || !Double.isFinite(atHigh)) {
            return new Deviation(-best, best, false, side);
        }
        return new Deviation(atLow, atHigh, known, side);
    }

    private String sameUnit(Estimate other) {
        if (!unit.equals(other.unit)) {
            throw new IllegalArgumentException("'" + unit + "' and '" + other.unit + "' cannot be put together");
        }
        return unit;
    }

    /**
     * The same figure as a mass that cannot be below nothing; where that bites, {@link #remarks} says so.
     *
     * <p>A low end below nothing is drawn up to 0, every downward effect in the same proportion: so a sum with other masses does
     * not reach below what they can be together.
     */
    public Estimate clippedAtZero() {
        if (best >= 0) {
            double down = quadrature(Deviation::down);
            return best - down >= 0 ? new Estimate(best, unit, deviations, grounds, true) : drawnUp(best / down);
        }
        SortedMap<String, Deviation> lifted = new TreeMap<>();
        deviations.forEach((cause, each) -> lifted.put(
                cause,
                new Deviation(
                        Math.max(0, best + each.atLow()),
                        Math.max(0, best + each.atHigh()),
                        each.rangeKnown(),
                        each.side())));
        return new Estimate(
                0, unit, lifted, grounds.noting("best value clipped at 0: it came out below nothing"), true);
    }

    private Estimate drawnUp(double factor) {
        SortedMap<String, Deviation> drawn = new TreeMap<>();
        deviations.forEach((cause, each) -> drawn.put(cause, each.rangeKnown() ? each.downTimes(factor) : each));
        return new Estimate(best, unit, drawn, grounds.noting(LOW_CLIPPED), true);
    }

    /** The low end: best less the root of the squared downward effects, not below 0 for a mass. */
    public double low() {
        double low = unclippedLow();
        return neverNegative && low <= NOTHING * Math.abs(best) ? 0 : low;
    }

    /** The high end: best plus the root of the squared upward effects. */
    public double high() {
        return best + quadrature(Deviation::up);
    }

    private double unclippedLow() {
        return best - quadrature(Deviation::down);
    }

    private double quadrature(ToDoubleFunction<Deviation> side) {
        return Math.sqrt(deviations.values().stream()
                .mapToDouble(side)
                .map(each -> each * each)
                .sum());
    }

    /** Whether the low end or the best value had to be cut at 0. */
    public boolean isClipped() {
        boolean lowClipped = grounds.notes().contains(LOW_CLIPPED) && low() <= NOTHING * Math.abs(best);
        return lowClipped
                || (neverNegative && unclippedLow() < -NOTHING * Math.abs(best))
                || grounds.notes().stream().anyMatch(each -> each.startsWith("best value clipped"));
    }

    /** Causes of doubt whose range nobody gives; the band leaves them out. */
    public SortedSet<String> rangeUnknownFor() {
        SortedSet<String> names = new TreeSet<>();
        deviations.forEach((cause, each) -> {
            if (!each.rangeKnown()) {
                names.add(cause);
            }
        });
        return Collections.unmodifiableSortedSet(names);
    }

    /** Whether any known range stands behind low and high; if not, they equal best and mean nothing. */
    public boolean hasBand() {
        return deviations.values().stream().anyMatch(Deviation::rangeKnown);
    }

    /** Whether all of the known doubt lies on one side of the best value. */
    public boolean isOneSided() {
        double nothing = 1e-9 * Math.abs(best);
        return hasBand() && (quadrature(Deviation::up) <= nothing || quadrature(Deviation::down) <= nothing);
    }

    /** The same figure under one description of how it was worked out, in place of those of its parts. */
    public Estimate by(String method) {
        return new Estimate(best, unit, deviations, grounds.by(method), neverNegative);
    }

    /** The same figure with a note to be shown beside it. */
    public Estimate noting(String note) {
        return new Estimate(best, unit, deviations, grounds.noting(note), neverNegative);
    }

    /** The same figure with the numbers of the entries behind it. */
    public Estimate behind(Collection<Long> entries) {
        return new Estimate(best, unit, deviations, grounds.behind(entries), neverNegative);
    }

    /** Everything that has to be said beside the three numbers, sentence by sentence; empty when nothing has. */
    public List<String> remarks() {
        return Figures.remarks(this);
    }

    /** The three numbers for a reader, such as "25.9 kg (5.30 to 25.9)", three digits each. */
    public String inWords() {
        return Figures.inWords(this);
    }
}
