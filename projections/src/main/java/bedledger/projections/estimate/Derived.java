package bedledger.projections.estimate;

import bedledger.projections.tables.Parameter;
import bedledger.projections.tables.Range;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/** Figures worked out from several others by an equation of any shape, by the rule of {@link Estimate#RULE}. */
public final class Derived {
    private Derived() {}

    /**
     * Works an equation out at the best values of its parts, and again for each cause of doubt at its two ends.
     *
     * @param working takes the parts in their order; where it gives no number at an end, that cause has no range
     */
    public static Estimate from(List<Estimate> parts, String unit, ToDoubleFunction<double[]> working) {
        double best =
                working.applyAsDouble(parts.stream().mapToDouble(Estimate::best).toArray());
        SortedSet<String> causes = new TreeSet<>();
        Grounds grounds = Grounds.NONE;
        for (Estimate part : parts) {
            causes.addAll(part.deviations().keySet());
            grounds = grounds.and(part.grounds());
        }
        SortedMap<String, Deviation> moved = new TreeMap<>();
        causes.forEach(cause -> moved.put(cause, moved(parts, cause, best, working)));
        return new Estimate(best, unit, moved, grounds, false);
    }

    private static Deviation moved(
            List<Estimate> parts, String cause, double best, ToDoubleFunction<double[]> working) {
        double[] low = new double[parts.size()];
        double[] high = new double[parts.size()];
        boolean known = true;
        String side = "";
        for (int at = 0; at < low.length; at++) {
            Estimate part = parts.get(at);
            Deviation deviation = part.deviations().getOrDefault(cause, Deviation.NONE);
            low[at] = part.best() + deviation.atLow();
            high[at] = part.best() + deviation.atHigh();
            known &= deviation.rangeKnown();
            side = side.isEmpty() ? deviation.side() : side;
        }
        double atLow = working.applyAsDouble(low) - best;
        double atHigh = working.applyAsDouble(high) - best;
        boolean finite = Double.isFinite(atLow) && Double.isFinite(atHigh);
        return finite ? new Deviation(atLow, atHigh, known, side) : new Deviation(-best, best, false, side);
    }

    /** A parameter of a table with its range as the doubt. */
    public static Estimate of(Parameter parameter) {
        Range range = parameter.range();
        double value = parameter.value();
        Deviation deviation = range == null
                ? new Deviation(-0.01 * value, 0.01 * value, false, "")
                : new Deviation(range.low() - value, range.high() - value, true, "");
        SortedMap<String, Deviation> one = new TreeMap<>();
        one.put(parameter.key(), deviation);
        return new Estimate(value, parameter.unit(), one, Grounds.NONE.citing(parameter.citation()), false);
    }

    /** A value in doubt between two ends, under a name of its own. */
    public static Estimate between(String name, double low, double best, double high, String unit) {
        SortedMap<String, Deviation> one = new TreeMap<>();
        one.put(name, new Deviation(low - best, high - best, true, ""));
        return new Estimate(best, unit, one, Grounds.NONE, false);
    }
}
