package bedledger.projections.breakdown;

import bedledger.projections.estimate.Deviation;
import bedledger.projections.estimate.Estimate;

/** Every figure at its best value, but one cause of doubt perhaps at an end of its range. */
record Assumptions(String moved, Parameter.End end) {
    static final Assumptions BEST = new Assumptions("", Parameter.End.BEST);

    double of(Parameter parameter) {
        return parameter.name().equals(moved) ? parameter.at(end) : parameter.value();
    }

    double of(Estimate estimate) {
        Deviation deviation = estimate.deviations().get(moved);
        if (deviation == null || end == Parameter.End.BEST) {
            return estimate.best();
        }
        return Math.max(0, estimate.best() + (end == Parameter.End.LOW ? deviation.atLow() : deviation.atHigh()));
    }
}
