package bedledger.projections.estimate;

import bedledger.projections.tables.Parameter;
import bedledger.projections.tables.Range;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Figures worked out from several others by an equation of any shape, by the rule of {@link Estimate#RULE}. */
public final class Derived {
    private Derived() {}

    /** Works an equation out once; see {@link #parts} and {@link Parts#work}. */
    public static Estimate from(List<Estimate> parts, String unit, ToDoubleFunction<double[]> working) {
        return parts(parts).work(unit, working);
    }

    /** Makes parts ready for several equations over the same ones. */
    public static Parts parts(List<Estimate> parts) {
        FixedSet<String> names = Deviations.NONE.causes();
        Grounds grounds = Grounds.NONE;
        for (Estimate part : parts) {
            names = names.and(Deviations.of(part.deviations()).causes());
            grounds = grounds.and(part.grounds());
        }
        double[] best = parts.stream().mapToDouble(Estimate::best).toArray();
        List<Cause> causes =
                names.stream().map(name -> Cause.of(name, parts, best)).toList();
        return new Parts(best, names, causes, grounds);
    }

    /** The parts with one cause at its low and at its high end. */
    private static final class Cause {
        private final double[] low;
        private final double[] high;
        private final boolean known;
        private final String side;

        private Cause(double[] low, double[] high, boolean known, String side) {
            this.low = low;
            this.high = high;
            this.known = known;
            this.side = side;
        }

        static Cause of(String name, List<Estimate> parts, double[] best) {
            double[] low = best.clone();
            double[] high = best.clone();
            boolean known = true;
            String side = "";
            for (int at = 0; at < best.length; at++) {
                Deviation deviation = parts.get(at).deviations().getOrDefault(name, Deviation.NONE);
                low[at] += deviation.atLow();
                high[at] += deviation.atHigh();
                known &= deviation.rangeKnown();
                side = side.isEmpty() ? deviation.side() : side;
            }
            return new Cause(low, high, known, side);
        }
    }

    /** Several figures at their best values, and at both ends of each cause of doubt. */
    public static final class Parts {
        private final double[] best;
        private final FixedSet<String> names;
        private final List<Cause> causes;
        private final Grounds grounds;

        private Parts(double[] best, FixedSet<String> names, List<Cause> causes, Grounds grounds) {
            this.best = best;
            this.names = names;
            this.causes = causes;
            this.grounds = grounds;
        }

        /** The same parts for equations of one description. */
        public Parts by(String method) {
            return new Parts(best, names, causes, grounds.by(method));
        }

        /**
         * Works an equation out at the best values, and again for each cause of doubt at its two ends.
         *
         * @param working takes the parts in their order; where it gives no number at an end, that cause has no range
         */
        public Estimate work(String unit, ToDoubleFunction<double[]> working) {
            double figure = working.applyAsDouble(best.clone());
            Deviation[] moved =
                    causes.stream().map(cause -> moved(cause, figure, working)).toArray(Deviation[]::new);
            return new Estimate(figure, unit, new Deviations(names, moved), grounds, false);
        }

        private static Deviation moved(Cause cause, double figure, ToDoubleFunction<double[]> working) {
            double atLow = working.applyAsDouble(cause.low.clone()) - figure;
            double atHigh = working.applyAsDouble(cause.high.clone()) - figure;
            return Double.isFinite(atLow) && Double.isFinite(atHigh)
                    ? new Deviation(atLow, atHigh, cause.known, cause.side)
                    : new Deviation(-figure, figure, false, cause.side);
        }
    }

    /** A parameter of a table with its range as the doubt. */
    public static Estimate of(Parameter parameter) {
        Range range = parameter.range();
        double value = parameter.value();
        Deviation deviation = range == null
                ? new Deviation(-0.01 * value, 0.01 * value, false, "")
                : new Deviation(range.low() - value, range.high() - value, true, "");
        Deviations one = Deviations.of(parameter.key(), deviation);
        String unit = parameter.unit().equals("-") ? "" : parameter.unit();
        return new Estimate(value, unit, one, Grounds.NONE.citing(parameter.citation()), false);
    }

    /** A value in doubt between two ends, under a name of its own. */
    public static Estimate between(String name, double low, double best, double high, String unit) {
        Deviations one = Deviations.of(name, new Deviation(low - best, high - best, true, ""));
        return new Estimate(best, unit, one, Grounds.NONE, false);
    }
}
